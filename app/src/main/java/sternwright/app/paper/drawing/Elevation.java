package sternwright.app.paper.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import sternwright.boat.Arrangement;
import sternwright.boat.Installation;
import sternwright.boat.Part;

/**
 * A side elevation with callouts.
 *
 * @param svg the drawing, ready to stand in a page
 * @param missing labels of parts the drawing has no shape for
 */
public record Elevation(String svg, List<String> missing) {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String INK = "#544d44";
    private static final String ACCENT = "#86291a";
    private static final int HEIGHT = 276;

    /** Copies the list. */
    public Elevation {
        missing = List.copyOf(missing);
    }

    /**
     * Draws an installation.
     *
     * @param installation what is drawn
     * @param labels what to write beside a part, by part id; parts of one shape share a callout
     * @param alt the drawing in words
     * @return the drawing
     */
    public static Elevation of(Installation installation, Map<String, List<Integer>> labels, String alt) {
        Document document = shapes();
        Element root = document.getDocumentElement();
        String arrangement = installation.arrangement().name().toLowerCase(Locale.ROOT);
        Set<String> kinds = installation.parts().stream().map(Part::kind).collect(Collectors.toSet());
        Map<String, List<Integer>> byKind = byKind(installation, labels);
        List<Callouts.Aim> aims = new ArrayList<>();
        for (Element shape : groups(root)) {
            List<String> of = words(shape, "data-kinds");
            if (!fits(shape, arrangement) || (!of.isEmpty() && of.stream().noneMatch(kinds::contains))) {
                root.removeChild(shape);
                continue;
            }
            List<Integer> numbers = new ArrayList<>();
            for (String kind : of) {
                List<Integer> found = byKind.remove(kind);
                numbers.addAll(found == null ? List.of() : found);
            }
            ink(shape, !numbers.isEmpty());
            if (!numbers.isEmpty()) {
                aims.add(Callouts.Aim.of(shape.getAttribute("data-at"), numbers));
            }
            List.of("data-kinds", "data-in", "data-at").forEach(shape::removeAttribute);
        }
        int left = installation.arrangement() == Arrangement.STERNDRIVE ? 100 : 0;
        int[] rows = new Callouts(left + 12, 668, HEIGHT).draw(document, root, aims);
        frame(root, left, rows, alt);
        List<String> missing = byKind.entrySet().stream()
                .map(e -> e.getKey().replace('-', ' ') + " " + Callouts.join(e.getValue()))
                .toList();
        return new Elevation(written(document), missing);
    }

    private static Map<String, List<Integer>> byKind(Installation installation, Map<String, List<Integer>> labels) {
        Map<String, List<Integer>> byKind = new LinkedHashMap<>();
        labels.forEach((id, numbers) -> byKind.computeIfAbsent(
                        installation.part(id).map(Part::kind).orElse(id), k -> new ArrayList<>())
                .addAll(numbers));
        return byKind;
    }

    /** Whether a shape belongs to an arrangement. */
    static boolean fits(Element shape, String arrangement) {
        List<String> in = words(shape, "data-in");
        return in.isEmpty() || in.contains(arrangement);
    }

    /** Presentation attributes carry the look into the PDF; a browser's sheet leads over them by class. */
    private static void ink(Element shape, boolean worked) {
        boolean hull = shape.getAttribute("class").equals("hull");
        shape.setAttribute("class", hull ? "hull" : worked ? "part worked" : "part");
        shape.setAttribute("fill", hull ? "none" : worked ? "#f6e4dd" : "#ffffff");
        shape.setAttribute("stroke", worked ? ACCENT : INK);
        shape.setAttribute("stroke-linejoin", "round");
        if (!shape.hasAttribute("stroke-width")) {
            shape.setAttribute("stroke-width", hull ? "1.6" : worked ? "1.3" : "0.8");
        }
    }

    private static void frame(Element root, int left, int[] rows, String alt) {
        int top = -Callouts.STEP * (rows[0] - 1);
        int height = HEIGHT - top + Callouts.STEP * (rows[1] - 1);
        root.setAttribute("viewBox", left + " " + top + " " + (680 - left) + " " + height);
        root.setAttribute("class", "elevation");
        root.setAttribute("role", "img");
        root.setAttribute("aria-label", alt);
        root.setAttribute("alt", alt);
        root.setAttribute("font-family", "Source Serif 4");
        root.setAttribute("font-size", "11");
    }

    /** The shapes of the drawing. */
    static List<Element> groups(Element root) {
        List<Element> found = new ArrayList<>();
        for (Node n = root.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (n instanceof Element e && e.getTagName().equals("g")) {
                found.add(e);
            }
        }
        return found;
    }

    /** The words of an attribute. */
    static List<String> words(Element shape, String attribute) {
        String value = shape.getAttribute(attribute);
        return value.isBlank() ? List.of() : List.of(value.trim().split("\\s+"));
    }

    /** A new element of the drawing. */
    static Element element(Document document, String name, String... attributes) {
        Element e = document.createElementNS(SVG, name);
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            e.setAttribute(attributes[i], attributes[i + 1]);
        }
        return e;
    }

    /** Every shape of every arrangement. */
    static Document shapes() {
        try (InputStream in = Elevation.class.getResourceAsStream("elevation.svg")) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: elevation.svg is missing in its jar");
            }
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setIgnoringComments(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder().parse(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("elevation.svg cannot be read", e);
        }
    }

    /** The text of a drawing. */
    static String written(Document document) {
        try {
            Transformer transformer = TransformerFactory.newInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter out = new StringWriter();
            transformer.transform(new DOMSource(document.getDocumentElement()), new StreamResult(out));
            return out.toString().replaceAll(">\\s+<", "><");
        } catch (TransformerException e) {
            throw new IllegalStateException("the drawing cannot be written", e);
        }
    }
}
