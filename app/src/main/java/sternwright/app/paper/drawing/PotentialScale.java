package sternwright.app.paper.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Severity;
import sternwright.protection.judgement.MetalJudgement;
import sternwright.protection.judgement.Protection;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.register.BoatJoint;
import sternwright.protection.report.PartLine;
import sternwright.protection.report.ProtectionReport;

/**
 * The parts of a boat on a millivolt scale: one row a part with its protected band, a dot where it lies at the berth, a ring where it
 * lies under way, a square for its metal as seen from far off, wires between the squares of joined parts.
 */
public final class PotentialScale {
    private static final int TOP = 46;
    private static final String INK = "#544d44";
    private static final String BAND = "#d9e3d3";
    private static final String ACCENT = "#86291a";

    /** A sheet or a phone held upright: on the latter the words stand above each row. */
    private record Form(String name, int width, int left, int right, int row, boolean wordsAbove) {
        static final Form SHEET = new Form("scale wide-only", 720, 186, 574, 30, false);
        static final Form PHONE = new Form("scale narrow-only", 340, 18, 322, 56, true);
    }

    private final ProtectionReport report;
    private final ReferenceElectrode electrode;
    private final Form form;
    private final StringBuilder out = new StringBuilder();
    private final Map<String, Integer> rows = new HashMap<>();
    private double lowV;
    private double highV;

    private PotentialScale(ProtectionReport report, ReferenceElectrode electrode, Form form) {
        this.report = report;
        this.electrode = electrode;
        this.form = form;
    }

    /**
     * Draws a report's potentials for a sheet.
     *
     * @param report the report
     * @param electrode what the scale is read against
     * @return the drawing, ready to stand in a page
     */
    public static String of(ProtectionReport report, ReferenceElectrode electrode) {
        return new PotentialScale(report, electrode, Form.SHEET).draw();
    }

    /**
     * Draws the same for a phone.
     *
     * @param report the report
     * @param electrode what the scale is read against
     * @return the drawing, ready to stand in a page
     */
    public static String narrow(ProtectionReport report, ReferenceElectrode electrode) {
        return new PotentialScale(report, electrode, Form.PHONE).draw();
    }

    private String draw() {
        List<PartLine> parts = report.parts();
        for (int n = 0; n < parts.size(); n++) {
            rows.put(parts.get(n).body().id(), n);
        }
        range(parts);
        int height = TOP + form.row * parts.size() + 12;
        String alt = escape(words(parts));
        out.append(format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"%s\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%.0f\""
                        + " font-family=\"SourceSerifDrawing, 'Source Serif 4'\" font-size=\"12\" role=\"img\" aria-label=\"%s\" alt=\"%s\">",
                form.name,
                form.width,
                height,
                form.wordsAbove ? form.width : 637,
                form.wordsAbove ? height : height * 637.0 / form.width,
                alt,
                alt));
        axis(height);
        parts.forEach(this::band);
        report.circuit().joints().forEach(this::wire);
        parts.forEach(this::row);
        return out.append("</svg>").toString();
    }

    private void range(List<PartLine> parts) {
        List<Double> all = new ArrayList<>();
        for (PartLine p : parts) {
            all.addAll(List.of(p.closeV(), p.farV(), p.runningV()));
            MetalJudgement j = p.atBerth();
            addIfThere(all, j.protectedAtV());
            addIfThere(all, j.notBelowV());
        }
        lowV = Math.floor(5 * (all.stream().mapToDouble(v -> v).min().orElse(-1.2) - 0.05)) / 5;
        highV = Math.ceil(5 * (all.stream().mapToDouble(v -> v).max().orElse(-0.2) + 0.05)) / 5;
    }

    private static void addIfThere(List<Double> all, @Nullable Double v) {
        if (v != null) {
            all.add(v);
        }
    }

    private double x(double silverChlorideV) {
        return form.left + (silverChlorideV - lowV) / (highV - lowV) * (form.right - form.left);
    }

    private double y(String body) {
        Integer row = rows.get(body);
        return TOP + form.row * ((row == null ? 0 : row) + (form.wordsAbove ? 0.7 : 0.5));
    }

    private void axis(int height) {
        double step = form.wordsAbove || highV - lowV > 1.2 ? 0.2 : 0.1;
        double offset = electrode.offsetV();
        double first = Math.ceil((lowV - offset) / step - 1e-9) * step;
        for (double shown = first; shown + offset <= highV + 1e-9; shown += step) {
            double at = x(shown + offset);
            out.append(format(
                    "<path class=\"rule\" stroke=\"#d5ccbd\" stroke-width=\"0.6\" d=\"M%.1f,%d V%d\"/>",
                    at, TOP - 6, height - 10));
            out.append(format(
                    "<text class=\"soft\" fill=\"%s\" font-size=\"10.5\" text-anchor=\"middle\" x=\"%.1f\" y=\"%d\">%s</text>",
                    INK, at, TOP - 11, minus(Math.round(shown * 1000))));
        }
        out.append(format(
                "<text class=\"soft\" fill=\"%s\" font-size=\"10.5\" x=\"%d\" y=\"15\">mV against %s%s</text>",
                INK,
                form.wordsAbove ? 0 : form.left,
                escape(electrode.words()),
                form.wordsAbove ? "" : "; protected band shaded"));
        if (!form.wordsAbove) {
            out.append(format(
                    "<text class=\"soft\" fill=\"%s\" font-size=\"10.5\" x=\"0\" y=\"%d\">part</text>", INK, TOP - 11));
            out.append(format(
                    "<text class=\"soft\" fill=\"%s\" font-size=\"10.5\" x=\"%d\" y=\"15\">at the berth, current</text>",
                    INK, form.right + 14));
        }
    }

    /** Where the metal is protected: from its limit down to where too much begins, or to the end of the scale. */
    private void band(PartLine p) {
        Double at = p.atBerth().protectedAtV();
        if (at == null) {
            return;
        }
        Double below = p.atBerth().notBelowV();
        double from = Math.max(lowV, below == null ? lowV : below);
        double to = Math.min(highV, at);
        if (to > from) {
            out.append(format(
                    "<rect class=\"band\" fill=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%d\"/>",
                    BAND, x(from), y(p.body().id()) - 9, x(to) - x(from), 18));
        }
    }

    private void wire(BoatJoint joint) {
        String a = joint.link().a();
        String b = joint.link().b();
        if (!rows.containsKey(a) || !rows.containsKey(b)) {
            return;
        }
        boolean open = !joint.link().conducts();
        if (open) {
            return;
        }
        double xa = x(report.state().body(a).metalV());
        double xb = x(report.state().body(b).metalV());
        double span = Math.abs(y(a) - y(b)) / form.row;
        double bulge = span <= 1 ? 0 : 6 * Math.min(6, span);
        out.append(format(
                "<path class=\"wire\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.1\" d=\"M%.1f,%.1f C%.1f,%.1f %.1f,%.1f %.1f,%.1f\"/>",
                INK, xa, y(a), xa + bulge, y(a) + (y(b) - y(a)) / 4, xb + bulge, y(b) - (y(b) - y(a)) / 4, xb, y(b)));
    }

    private void row(PartLine p) {
        double at = y(p.body().id());
        boolean wrong = p.atBerth().severity() != Severity.FINE;
        out.append(format(
                "<path class=\"drop\" stroke=\"%s\" stroke-width=\"0.8\" stroke-dasharray=\"2 2\" d=\"M%.1f,%.1f H%.1f\"/>",
                INK, x(p.farV()), at, x(p.closeV())));
        out.append(format(
                "<rect class=\"metal\" fill=\"#ffffff\" stroke=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"6\" height=\"6\"/>",
                INK, x(p.farV()) - 3, at - 3));
        out.append(format(
                "<circle class=\"running\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.3\" cx=\"%.1f\" cy=\"%.1f\" r=\"4.5\"/>",
                INK, x(p.runningV()), at));
        out.append(format(
                "<circle class=\"%s\" fill=\"%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"4.5\"/>",
                wrong ? "here wrong" : "here", wrong ? ACCENT : "#1c1813", x(p.closeV()), at));
        words(p, at, wrong);
    }

    private void words(PartLine p, double at, boolean wrong) {
        String name = (form.wordsAbove && wrong ? "\u25b2 " : "") + p.body().name();
        String stands = (!form.wordsAbove && wrong ? "\u25b2 " : "") + stands(p);
        String figures = minus(Math.round(electrode.fromSilverChlorideV(p.closeV()) * 1000)) + " mV, "
                + milliamps(p.currentA()) + " mA";
        String kind = wrong ? "wrong" : "ink";
        String ink = wrong ? ACCENT : "#1c1813";
        if (form.wordsAbove) {
            text(kind, ink, 12, 0, at - 26, "start", name);
            text("soft", INK, 10.5, 0, at - 13, "start", stands);
            text("soft", INK, 10.5, form.width, at - 13, "end", figures);
        } else {
            text("ink", "#1c1813", 12, 0, at + 4, "start", name);
            text(kind, ink, 11, form.right + 14, at - 1, "start", stands);
            text("soft", INK, 10, form.right + 14, at + 11, "start", figures);
        }
    }

    private void text(String kind, String fill, double size, double x, double y, String anchor, String said) {
        out.append(format(
                "<text class=\"%s\" fill=\"%s\" font-size=\"%.1f\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>",
                kind, fill, size, x, y, anchor, escape(said)));
    }

    static String millivolts(double volts) {
        return ProtectionDrawings.figure(volts * 1000);
    }

    static String milliamps(double amps) {
        double mA = Math.abs(amps) < 5e-5 ? 0 : amps * 1000;
        return (mA == 0
                        ? "0"
                        : Math.abs(mA) < 9.95 ? String.format(Locale.ROOT, "%.1f", mA) : Long.toString(Math.round(mA)))
                .replace('-', '\u2212');
    }

    private String words(List<PartLine> parts) {
        StringBuilder s = new StringBuilder("Potentials at the berth with the anodes new, against ");
        s.append(electrode.words()).append(": ");
        for (PartLine p : parts) {
            s.append(p.body().name())
                    .append(' ')
                    .append(Math.round(electrode.fromSilverChlorideV(p.closeV()) * 1000))
                    .append(" mV, ")
                    .append(stands(p))
                    .append("; ");
        }
        return s.toString();
    }

    /** How a part stands at the berth, in few words. */
    public static String stands(PartLine p) {
        return stands(p, p.atBerth());
    }

    /** How a part stands by a judgement: a noble metal above its limit lasts by itself. */
    public static String stands(PartLine p, MetalJudgement j) {
        if (p.body().anode()) {
            return "anode";
        }
        return j.state() == Protection.UNDER && j.severity() == Severity.FINE
                ? "lasts by itself"
                : j.state().words();
    }

    private static String minus(long value) {
        return Long.toString(value).replace('-', '\u2212');
    }

    static String format(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    static String escape(String s) {
        return s.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
