package sternwright.app.paper.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedVisit;

/** A drawing while it is made: shapes, and words on top of them. */
final class Svg {
    private final boolean styled;
    private final StringBuilder text = new StringBuilder(1 << 14);
    private final List<Label> labels = new ArrayList<>();

    /** A drawing that carries its looks in itself, as paper needs it. */
    Svg() {
        this(true);
    }

    /**
     * A drawing.
     *
     * @param styled whether it carries its looks in itself; on a page the style sheet has them by class
     */
    Svg(boolean styled) {
        this.styled = styled;
    }

    /** Words at a place: the left end, or the middle, of their base line; they may lead somewhere. */
    private record Label(double x, double y, String cssClass, String look, String words, String address) {
        String svg() {
            String plain = "<text class=\"" + cssClass + '"' + (look.isEmpty() ? "" : " " + look) + " x=\"" + tenths(x)
                    + "\" y=\"" + tenths(y) + "\">" + escaped(words) + "</text>";
            return address.isEmpty() ? plain : "<a href=\"" + escaped(address) + "\">" + plain + "</a>";
        }
    }

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
        labels.add(new Label(x, y, cssClass, styled ? look : "", words, ""));
        return this;
    }

    /** Words that lead somewhere. */
    Svg link(String address, double x, double y, String cssClass, String look, String words) {
        labels.add(new Label(x, y, cssClass, styled ? look : "", words, address));
        return this;
    }

    /** Begins a visit; the page's script reads whose it is. */
    void open(DatedVisit visit) {
        text.append("<g data-boat=\"")
                .append(escaped(visit.boatId()))
                .append("\" data-name=\"")
                .append(escaped(visit.boatName()))
                .append("\" data-visit=\"")
                .append(escaped(visit.visit()))
                .append("\">");
    }

    /** Begins an operation of a visit that can be set on another day; the page's script reads which. */
    void open(DatedOperation operation) {
        text.append("<g class=\"b-held\" data-operation=\"")
                .append(escaped(operation.meaning().operation()))
                .append("\" data-day=\"")
                .append(operation.from().toLocalDate())
                .append("\">");
    }

    /** Ends what was begun last. */
    void close() {
        text.append("</g>");
    }

    /** What another drawing holds. */
    Svg raw(Svg other) {
        text.append(other.text);
        labels.addAll(other.labels);
        return this;
    }

    private StringBuilder open(String name, String cssClass, String look, Object... attributes) {
        text.append('<').append(name);
        if (!cssClass.isEmpty()) {
            text.append(" class=\"").append(cssClass).append('"');
        }
        if (styled && !look.isEmpty()) {
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
        return value instanceof Double d ? tenths(d) : escaped(String.valueOf(value));
    }

    /** A length to a tenth of a pixel, as short as it can be written. */
    private static String tenths(double px) {
        long tenths = Math.round(10 * px);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : Double.toString(tenths / 10.0);
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private StringBuilder whole() {
        StringBuilder whole = new StringBuilder(text);
        labels.forEach(l -> whole.append(l.svg()));
        return whole;
    }

    /** The drawing so far, in a frame of a size. */
    String framed(double x, double width, double height, double shownWidth, String label) {
        return frame(x, width, height, shownWidth, label, whole());
    }

    /**
     * The same for paper. The layout engine draws words in a drawing as outlines, which nobody can search, copy or have read aloud:
     * so the shapes are the drawing and the words stand over it as text of the page, row by row.
     */
    String printed(double width, double height, double shownWidth, String label) {
        double scale = shownWidth / width;
        StringBuilder page = new StringBuilder(text.length() + 120 * labels.size());
        page.append(String.format(
                Locale.ROOT,
                "<div class=\"drawn\" style=\"width:%.1fpx;height:%.1fpx\">%s",
                shownWidth,
                height * scale,
                frame(0, width, height, shownWidth, label, text)));
        labels.stream()
                .sorted(Comparator.comparingDouble(Label::y).thenComparingDouble(Label::x))
                .forEach(l -> page.append(String.format(
                        Locale.ROOT,
                        "<span class=\"%s\" style=\"left:%.1fpx;top:%.1fpx\">%s</span>",
                        l.cssClass,
                        l.x * scale,
                        l.y * scale,
                        escaped(l.words))));
        return page.append("</div>").toString();
    }

    private static String frame(
            double x, double width, double height, double shownWidth, String label, CharSequence shapes) {
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"%s\" alt=\"%s\" viewBox=\"%.0f 0 %.0f %.0f\""
                        + " width=\"%.0f\" height=\"%.0f\" font-family=\"'Source Serif 4'\">%s</svg>",
                escaped(label),
                escaped(label),
                x,
                width,
                height,
                shownWidth,
                height * shownWidth / width,
                shapes);
    }

    /** The drawing so far, in its own size, for a page on which its parts can be taken hold of. */
    String held(double x, double width, double height, String label, String attributes) {
        return String.format(
                Locale.ROOT,
                "<svg role=\"group\" aria-label=\"%s\" viewBox=\"%.0f 0 %.0f %.0f\" width=\"%.0f\" height=\"%.0f\"%s>%s</svg>",
                escaped(label),
                x,
                width,
                height,
                width,
                height,
                attributes,
                whole());
    }

    /** The drawing so far as a picture that takes the width it is given. */
    String picture(double width, double height, String label) {
        return String.format(
                Locale.ROOT,
                "<svg role=\"img\" aria-label=\"%s\" viewBox=\"0 0 %.0f %.0f\" width=\"%.0f\" height=\"%.0f\">%s</svg>",
                escaped(label),
                width,
                height,
                width,
                height,
                whole());
    }
}
