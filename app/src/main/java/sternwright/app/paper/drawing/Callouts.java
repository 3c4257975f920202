package sternwright.app.paper.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Number marks in two rows, above and below the drawing, with a thin line to what they mean; no two marks overlap. */
final class Callouts {
    private static final double GAP = 6;
    private static final double ROW = 15;

    /** From one row to the next, further out. */
    static final int STEP = 22;

    private final double left;
    private final double right;
    private final double height;

    /** A mark and the point it aims at. */
    record Aim(double x, double y, String text) {
        static Aim of(String at, List<Integer> numbers) {
            int comma = at.indexOf(',');
            return new Aim(
                    Double.parseDouble(at.substring(0, comma)),
                    Double.parseDouble(at.substring(comma + 1)),
                    join(numbers));
        }

        double width() {
            return Math.max(20, 10 + 6.2 * text.length());
        }
    }

    Callouts(double left, double right, double height) {
        this.left = left;
        this.right = right;
        this.height = height;
    }

    static String join(List<Integer> numbers) {
        return numbers.stream().sorted().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /**
     * Adds the marks.
     *
     * @return how many rows there are above and below; one each unless they would run out of the drawing
     */
    int[] draw(Document document, Element root, List<Aim> aims) {
        List<Aim> above = new ArrayList<>(aims.stream().filter(a -> a.y() < 106).toList());
        List<Aim> below =
                new ArrayList<>(aims.stream().filter(a -> a.y() >= 106).toList());
        return new int[] {rows(document, root, above, ROW, -STEP), rows(document, root, below, height - ROW, STEP)};
    }

    private int rows(Document document, Element root, List<Aim> aims, double y, double step) {
        aims.sort(Comparator.comparingDouble(Aim::x).thenComparing(Aim::y));
        double wanted = aims.stream().mapToDouble(a -> a.width() + GAP).sum();
        int rows = (int) Math.max(1, Math.ceil(wanted / (0.9 * (right - left))));
        for (int r = rows - 1; r >= 0; r--) {
            List<Aim> own = new ArrayList<>();
            for (int i = r; i < aims.size(); i += rows) {
                own.add(aims.get(i));
            }
            row(document, root, own, y + r * step);
        }
        return rows;
    }

    private void row(Document document, Element root, List<Aim> aims, double y) {
        double[] centres = spread(aims);
        for (int i = 0; i < aims.size(); i++) {
            root.appendChild(leader(document, aims.get(i), centres[i], y));
        }
        for (int i = 0; i < aims.size(); i++) {
            root.appendChild(mark(document, aims.get(i), centres[i], y));
        }
    }

    private double[] spread(List<Aim> aims) {
        return spread(
                aims.stream().mapToDouble(Aim::x).toArray(),
                aims.stream().mapToDouble(Aim::width).toArray(),
                left,
                right,
                GAP);
    }

    /** Centres as near to their aims as the widths allow: pushed right in one sweep, back left in another. */
    static double[] spread(double[] aims, double[] widths, double left, double right, double gap) {
        int n = aims.length;
        double[] x = new double[n];
        double edge = left;
        for (int i = 0; i < n; i++) {
            double half = widths[i] / 2;
            x[i] = Math.max(aims[i], edge + half);
            edge = x[i] + half + gap;
        }
        edge = right;
        for (int i = n - 1; i >= 0; i--) {
            double half = widths[i] / 2;
            x[i] = Math.min(x[i], edge - half);
            edge = x[i] - half - gap;
        }
        return x;
    }

    private static Element leader(Document document, Aim aim, double x, double y) {
        Element g = Elevation.element(document, "g", "class", "leader", "stroke", "#86291a", "stroke-width", "0.6");
        g.appendChild(Elevation.element(
                document, "path", "fill", "none", "d", "M" + x + "," + y + " L" + aim.x() + "," + aim.y()));
        g.appendChild(Elevation.element(
                document,
                "circle",
                "cx",
                String.valueOf(aim.x()),
                "cy",
                String.valueOf(aim.y()),
                "r",
                "1.6",
                "fill",
                "#86291a"));
        return g;
    }

    private static Element mark(Document document, Aim aim, double x, double y) {
        Element g = Elevation.element(document, "g", "class", "callout");
        g.appendChild(Elevation.element(
                document,
                "rect",
                "x",
                String.valueOf(x - aim.width() / 2),
                "y",
                String.valueOf(y - 9),
                "width",
                String.valueOf(aim.width()),
                "height",
                "18",
                "rx",
                "9",
                "fill",
                "#ffffff",
                "stroke",
                "#86291a",
                "stroke-width",
                "1"));
        Element text = Elevation.element(
                document,
                "text",
                "x",
                String.valueOf(x),
                "y",
                String.valueOf(y + 3.8),
                "text-anchor",
                "middle",
                "fill",
                "#86291a");
        text.setTextContent(aim.text());
        g.appendChild(text);
        return g;
    }
}
