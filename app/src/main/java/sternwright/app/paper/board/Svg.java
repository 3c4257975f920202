package sternwright.app.paper.board;

import java.util.Locale;

/** Text of a drawing while it is written. */
final class Svg {
    private final StringBuilder text = new StringBuilder(1 << 14);

    /** A shape or line without words. */
    Svg shape(String name, String cssClass, String look, Object... attributes) {
        open(name, cssClass, look, attributes).append("/>");
        return this;
    }

    /** A shape with a title that browsers show and readers read aloud. */
    Svg titled(String name, String cssClass, String look, String title, Object... attributes) {
        open(name, cssClass, look, attributes)
                .append("><title>")
                .append(escaped(title))
                .append("</title></")
                .append(name)
                .append('>');
        return this;
    }

    /** Words. */
    Svg words(double x, double y, String cssClass, String look, String words) {
        open("text", cssClass, look, "x", x, "y", y)
                .append('>')
                .append(escaped(words))
                .append("</text>");
        return this;
    }

    /** What another drawing holds. */
    Svg raw(Svg other) {
        text.append(other.text);
        return this;
    }

    private StringBuilder open(String name, String cssClass, String look, Object... attributes) {
        text.append('<').append(name);
        if (!cssClass.isEmpty()) {
            text.append(" class=\"").append(cssClass).append('"');
        }
        if (!look.isEmpty()) {
            text.append(' ').append(look);
        }
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            text.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(value(attributes[i + 1]))
                    .append('"');
        }
        return text;
    }

    private static String value(Object value) {
        return value instanceof Double d ? String.format(Locale.ROOT, "%.1f", d) : escaped(String.valueOf(value));
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** The drawing so far, in a frame of a size. */
    String framed(double x, double width, double height, double shownWidth, String label) {
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"%s\" alt=\"%s\" viewBox=\"%.0f 0 %.0f %.0f\""
                        + " width=\"%.0f\" height=\"%.0f\" font-family=\"SourceSerifDrawing, 'Source Serif 4'\">%s</svg>",
                escaped(label),
                escaped(label),
                x,
                width,
                height,
                shownWidth,
                height * shownWidth / width,
                text);
    }
}
