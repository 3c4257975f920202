package sternwright.app.paper.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Signs on parts, each with a letter in a row above or below the drawing and a thin line to it. Sign, line and letter are one link,
 * large enough for a finger (WCAG 2.2, success criterion 2.5.8: 24 by 24 pixels).
 */
final class MarkRows {
    /** What aims lower than this is lettered below the drawing. */
    private static final double MIDDLE = 106;

    private static final double FIRST_ROW = 16;
    private static final double SIGN = 12;

    private final Document document;
    private final double left;
    private final double right;
    private final double height;
    private final Size size;

    /**
     * How large marks are, in units of the drawing.
     *
     * @param height of the frame of a letter
     * @param font of the letter
     * @param radius of the sign on the part
     * @param gap between frames
     */
    record Size(double height, double font, double radius, double gap) {
        Size times(double factor) {
            return new Size(height * factor, font * factor, radius * factor, gap * factor);
        }

        double step() {
            return height + gap;
        }

        double width(String key) {
            return height + font * (0.55 + 0.68 * key.length());
        }
    }

    /** A mark and the point on its part; the second mark of one shape stands beside the first. */
    record Aim(double x, double y, int beside, PartMark mark) {
        static Aim of(String at, int beside, PartMark mark) {
            int comma = at.indexOf(',');
            return new Aim(
                    Double.parseDouble(at.substring(0, comma)),
                    Double.parseDouble(at.substring(comma + 1)),
                    beside,
                    mark);
        }
    }

    MarkRows(Document document, double left, double right, double height, Size size) {
        this.document = document;
        this.left = left;
        this.right = right;
        this.height = height;
        this.size = size;
    }

    /**
     * Adds the marks.
     *
     * @return how many rows of letters there are above and below
     */
    int[] draw(Element root, List<Aim> aims) {
        List<Aim> above = aims.stream().filter(a -> a.y() < MIDDLE).toList();
        List<Aim> below = aims.stream().filter(a -> a.y() >= MIDDLE).toList();
        double up = FIRST_ROW - size.height / 2;
        double down = height - 24 + size.height / 2;
        return new int[] {rows(root, above, up, -size.step()), rows(root, below, down, size.step())};
    }

    private int rows(Element root, List<Aim> all, double y, double step) {
        List<Aim> aims = new ArrayList<>(all);
        aims.sort(
                Comparator.comparingDouble(Aim::x).thenComparingInt(Aim::beside).thenComparingDouble(Aim::y));
        double wanted = aims.stream()
                .mapToDouble(a -> size.width(a.mark().key()) + size.gap)
                .sum();
        int rows = (int) Math.ceil(wanted / (0.94 * (right - left)));
        for (int r = rows - 1; r >= 0; r--) {
            List<Aim> own = new ArrayList<>();
            for (int i = r; i < aims.size(); i += rows) {
                own.add(aims.get(i));
            }
            double[] centres = Callouts.spread(
                    own.stream().mapToDouble(Aim::x).toArray(),
                    own.stream().mapToDouble(a -> size.width(a.mark().key())).toArray(),
                    left,
                    right,
                    size.gap);
            for (int i = 0; i < own.size(); i++) {
                root.appendChild(link(own.get(i), centres[i], y + r * step));
            }
        }
        return rows;
    }

    private Element link(Aim aim, double x, double y) {
        PartMark mark = aim.mark();
        double at = aim.x() + aim.beside() * (2 * size.radius + 1);
        Element link = Elevation.element(document, "a", "href", mark.href(), "class", "part-mark");
        link.setAttribute("aria-label", mark.key() + ", " + mark.words());
        Element title = Elevation.element(document, "title");
        title.setTextContent(mark.key() + ", " + mark.words());
        link.appendChild(title);
        link.appendChild(Elevation.element(
                document,
                "path",
                "fill",
                "none",
                "stroke",
                mark.sign().ink(),
                "stroke-width",
                "0.7",
                "d",
                "M" + n(x) + "," + n(y) + " L" + n(at) + "," + n(aim.y())));
        link.appendChild(Elevation.element(
                document, "circle", "cx", n(at), "cy", n(aim.y()), "r", n(size.radius + 1.2), "fill", "var(--sheet)"));
        link.appendChild(sign(mark.sign(), at, aim.y(), 2 * size.radius));
        letter(link, mark, x, y);
        return link;
    }

    private void letter(Element link, PartMark mark, double x, double y) {
        double width = size.width(mark.key());
        double inner = size.font * 0.85;
        link.appendChild(Elevation.element(
                document,
                "rect",
                "x",
                n(x - width / 2),
                "y",
                n(y - size.height / 2),
                "width",
                n(width),
                "height",
                n(size.height),
                "rx",
                n(size.height / 2),
                "fill",
                "var(--sheet)",
                "stroke",
                mark.sign().ink(),
                "stroke-width",
                "1"));
        link.appendChild(sign(mark.sign(), x - width / 2 + size.height * 0.5, y, inner));
        Element text = Elevation.element(
                document,
                "text",
                "x",
                n(x - width / 2 + size.height * 0.5 + inner * 0.8),
                "y",
                n(y + size.font * 0.34),
                "font-size",
                n(size.font),
                "font-weight",
                "600",
                "fill",
                "var(--ink)");
        text.setTextContent(mark.key());
        link.appendChild(text);
    }

    private Element sign(PartMark.Sign sign, double x, double y, double across) {
        double scale = across / SIGN;
        return Elevation.element(
                document,
                "path",
                "fill",
                sign.ink(),
                "fill-rule",
                "evenodd",
                "transform",
                "translate(" + n(x - across / 2) + " " + n(y - across / 2) + ") scale(" + n(scale) + ")",
                "d",
                sign.outline());
    }

    /** A number of the drawing, two decimals at most. */
    static String n(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
