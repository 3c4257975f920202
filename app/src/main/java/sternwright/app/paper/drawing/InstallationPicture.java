package sternwright.app.paper.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import sternwright.boat.Arrangement;
import sternwright.boat.Installation;
import sternwright.boat.Part;

/**
 * A side elevation for a page, with a sign and a letter on each part about which something is to say. Its inks are the page's own
 * ({@code var(--ink)} and so on), so that it follows light, dark and print.
 *
 * @param wide the whole elevation, for screens from about 40 rem and for paper; class {@code elevation-wide}
 * @param narrow the engine above the drive, for phones; class {@code elevation-narrow}
 * @param missing marks of parts for which there is no shape
 */
public record InstallationPicture(String wide, String narrow, List<PartMark> missing) {
    private static final double HEIGHT = 276;
    private static final double RIGHT = 680;
    private static final double PHONE = 398;

    /** The engine and what is forward of it stand right of this; the drive left of it. */
    private static final double SPLIT = 310;

    private static final MarkRows.Size WIDE = new MarkRows.Size(24, 13, 7, 6);
    private static final MarkRows.Size NARROW = new MarkRows.Size(28, 14, 8, 7);

    /** Copies the list. */
    public InstallationPicture {
        missing = List.copyOf(missing);
    }

    /**
     * A part of the elevation.
     *
     * @param from left edge
     * @param to right edge
     * @param size of its marks, in its own units
     */
    private record Window(double from, double to, MarkRows.Size size) {
        double width() {
            return to - from;
        }
    }

    /** Shapes of the drive that hang lower than this stand in the drive's window alone. */
    private static final double BELOW_HULL = 150;

    /** What is drawn: the shapes that belong to the installation, and at which point each mark aims. */
    private record Drawn(
            Document document, List<MarkRows.Aim> aims, List<PartMark> missing, List<Element> underTheDrive) {}

    /**
     * Draws an installation.
     *
     * @param installation what is drawn
     * @param marks what is said about its parts, at most one for each
     * @param label the picture in one sentence
     * @return the picture in both forms
     */
    public static InstallationPicture of(Installation installation, List<PartMark> marks, String label) {
        double left = installation.arrangement() == Arrangement.STERNDRIVE ? 100 : 0;
        Drawn drawn = drawn(installation, marks);
        Document document = drawn.document();
        Element root = document.getDocumentElement();
        int[] rows = new MarkRows(document, left + 10, 670, HEIGHT, WIDE).draw(root, drawn.aims());
        frame(root, "elevation elevation-wide", box(left, RIGHT, WIDE, rows), label);
        return new InstallationPicture(
                Elevation.written(document), narrow(installation, marks, left, label), drawn.missing());
    }

    private static String narrow(Installation installation, List<PartMark> marks, double left, String label) {
        double sternFrom = left == 0 ? 0 : 60;
        Window engine = new Window(272, 272 + PHONE, NARROW);
        Window drive = new Window(sternFrom, 340, NARROW.times((340 - sternFrom) / PHONE));
        Document document = drawn(installation, List.of()).document();
        Element root = document.getDocumentElement();
        Elevation.groups(root).forEach(root::removeChild);
        double top = 0;
        for (Window window : List.of(engine, drive)) {
            top += panel(document, root, installation, marks, window, top);
        }
        frame(root, "elevation elevation-narrow", "0 0 " + MarkRows.n(PHONE) + " " + MarkRows.n(top), label);
        return Elevation.written(document);
    }

    /** Adds one window of the elevation below the last; returns how high it is. */
    private static double panel(
            Document document,
            Element root,
            Installation installation,
            List<PartMark> marks,
            Window window,
            double top) {
        Drawn drawn = drawn(installation, marks);
        Element panel = Elevation.element(document, "svg", "x", "0", "y", MarkRows.n(top));
        boolean forward = window.to() > SPLIT + 100;
        for (Element shape : Elevation.groups(drawn.document().getDocumentElement())) {
            if (!forward || !drawn.underTheDrive().contains(shape)) {
                panel.appendChild(document.importNode(shape, true));
            }
        }
        List<MarkRows.Aim> own =
                drawn.aims().stream().filter(a -> a.x() >= SPLIT == forward).toList();
        int[] rows = new MarkRows(document, window.from() + 4, window.to() - 4, HEIGHT, window.size()).draw(panel, own);
        String box = box(window.from(), window.to(), window.size(), rows);
        double height = Double.parseDouble(box.substring(box.lastIndexOf(' ') + 1)) * PHONE / window.width();
        panel.setAttribute("viewBox", box);
        panel.setAttribute("width", MarkRows.n(PHONE));
        panel.setAttribute("height", MarkRows.n(height));
        root.appendChild(panel);
        return height;
    }

    private static String box(double from, double to, MarkRows.Size size, int[] rows) {
        double above = size.step() * Math.max(0, rows[0] - 1) + size.height();
        double below = size.step() * Math.max(0, rows[1] - 1) + size.height();
        double top = rows[0] == 0 ? 8 : 16 - above;
        double bottom = rows[1] == 0 ? HEIGHT - 34 : HEIGHT - 24 + below;
        return MarkRows.n(from) + " " + MarkRows.n(top) + " " + MarkRows.n(to - from) + " " + MarkRows.n(bottom - top);
    }

    private static Drawn drawn(Installation installation, List<PartMark> marks) {
        Document document = Elevation.shapes();
        Element root = document.getDocumentElement();
        String arrangement = installation.arrangement().name().toLowerCase(Locale.ROOT);
        Set<String> kinds = installation.parts().stream().map(Part::kind).collect(Collectors.toSet());
        Map<String, List<PartMark>> byKind = new LinkedHashMap<>();
        marks.forEach(m -> byKind.computeIfAbsent(
                        installation.part(m.partId()).map(Part::kind).orElse(m.partId()), k -> new ArrayList<>())
                .add(m));
        List<MarkRows.Aim> aims = new ArrayList<>();
        List<Element> under = new ArrayList<>();
        for (Element shape : Elevation.groups(root)) {
            List<String> of = Elevation.words(shape, "data-kinds");
            if (!Elevation.fits(shape, arrangement)
                    || (!of.isEmpty() && of.stream().noneMatch(kinds::contains))) {
                root.removeChild(shape);
                continue;
            }
            List<PartMark> here = new ArrayList<>();
            for (String kind : of) {
                List<PartMark> found = byKind.remove(kind);
                here.addAll(found == null ? List.of() : found);
            }
            ink(shape, here);
            if (!of.isEmpty() && underTheDrive(shape.getAttribute("data-at"))) {
                under.add(shape);
            }
            for (int i = 0; i < here.size(); i++) {
                aims.add(MarkRows.Aim.of(shape.getAttribute("data-at"), i, here.get(i)));
            }
            List.of("data-kinds", "data-in", "data-at").forEach(shape::removeAttribute);
        }
        return new Drawn(
                document, aims, byKind.values().stream().flatMap(List::stream).toList(), under);
    }

    private static boolean underTheDrive(String at) {
        int comma = at.indexOf(',');
        return Double.parseDouble(at.substring(0, comma)) < SPLIT
                && Double.parseDouble(at.substring(comma + 1)) > BELOW_HULL;
    }

    private static void ink(Element shape, List<PartMark> here) {
        boolean hull = shape.getAttribute("class").equals("hull");
        boolean late = here.stream().anyMatch(m -> m.sign() == PartMark.Sign.OVERDUE);
        shape.setAttribute("fill", hull ? "none" : late ? "var(--tint)" : "var(--sheet)");
        shape.setAttribute("stroke", late ? "var(--accent)" : here.isEmpty() ? "var(--soft)" : "var(--ink)");
        shape.setAttribute("stroke-linejoin", "round");
        if (!shape.hasAttribute("stroke-width")) {
            shape.setAttribute("stroke-width", hull ? "1.6" : here.isEmpty() ? "0.8" : "1.4");
        }
        shape.setAttribute("class", hull ? "hull" : "part");
    }

    private static void frame(Element root, String css, String box, String label) {
        root.setAttribute("viewBox", box);
        root.setAttribute("class", css);
        root.setAttribute("role", "group");
        root.setAttribute("aria-label", label);
        root.setAttribute("font-family", "'Source Serif 4',Georgia,serif");
    }
}
