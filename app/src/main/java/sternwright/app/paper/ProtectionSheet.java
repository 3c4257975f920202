package sternwright.app.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.paper.drawing.AnodeCurve;
import sternwright.app.paper.drawing.Drawing;
import sternwright.app.paper.drawing.PotentialScale;
import sternwright.app.paper.drawing.ProtectionDrawings;
import sternwright.finding.Severity;
import sternwright.finding.Source;
import sternwright.protection.anode.AnodeForecast;
import sternwright.protection.anode.RequiredMass;
import sternwright.protection.fault.FaultEffect;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.register.BoatJoint;
import sternwright.protection.report.Limits;
import sternwright.protection.report.PartLine;
import sternwright.protection.report.ProtectionReport;

/**
 * A protection report as it is printed.
 *
 * @param report the report
 * @param electrode what potentials are given against
 * @param yardName whose paper it is
 * @param invented whether the yard is a demonstration
 */
public record ProtectionSheet(
        ProtectionReport report, ReferenceElectrode electrode, String yardName, boolean invented) {
    private static final int FAULTS = 16;

    /** The circuit. */
    public Drawing circuit() {
        return ProtectionDrawings.circuit(report);
    }

    /** The potentials on their millivolt scale. */
    public Drawing potentials() {
        return ProtectionDrawings.potentials(report, electrode);
    }

    /** The course of each anode. */
    public List<String> curves() {
        return report.life().forecasts().stream().map(AnodeCurve::of).toList();
    }

    /** A potential in millivolts against the electrode shown. */
    public String millivolts(double silverChlorideV) {
        return Long.toString(Math.round(electrode.fromSilverChlorideV(silverChlorideV) * 1000))
                .replace('-', '\u2212');
    }

    /** How a part stands at the berth, and under way where that differs. */
    public String stands(PartLine p) {
        String here = PotentialScale.stands(p);
        String there = PotentialScale.stands(p, p.underWay());
        return here.equals(there) ? here : here + "; under way " + there;
    }

    /** A limit in millivolts, empty where there is none. */
    public String limit(@Nullable Double silverChlorideV) {
        return silverChlorideV == null ? "" : millivolts(silverChlorideV);
    }

    /** A current in milliamperes. */
    public String milliamps(double amps) {
        double shown = Math.abs(amps) < 5e-5 ? 0 : amps * 1000;
        return String.format(Locale.ROOT, "%.1f", shown).replace('-', '\u2212');
    }

    /**
     * A unit or a formula as the pure core writes it, with the signs that are printed.
     *
     * @param plain such as m2 or 0.315 x rho
     * @return such as m\u00b2 or 0.315 \u00d7 \u03c1
     */
    public static String signs(String plain) {
        return plain.replaceAll("\\bohm\\b", "\u03a9")
                .replaceAll("\\bm2\\b", "m\u00b2")
                .replaceAll("\\brho\\b", "\u03c1")
                .replace(" x ", " \u00d7 ")
                .replaceAll("(?<![0-9A-Za-z])-(?=[0-9])", "\u2212");
    }

    /** A figure with three digits. */
    public String figure(double value) {
        double size = Math.abs(value);
        String form = size >= 100 ? "%.0f" : size >= 10 ? "%.1f" : size >= 1 ? "%.2f" : "%.3g";
        return String.format(Locale.ROOT, form, value).replace('-', '\u2212');
    }

    /** Why parts ask for something at the berth, by the source of the limit. */
    public Map<String, List<String>> reasons() {
        Map<String, List<String>> bySource = new LinkedHashMap<>();
        for (PartLine p : report.parts()) {
            Source source = p.atBerth().source();
            if (source != null && p.atBerth().severity() != Severity.FINE) {
                bySource.computeIfAbsent(source.line(), k -> new ArrayList<>())
                        .add(Words.sentence(p.body().name()) + ": "
                                + p.atBerth().reason().replaceAll("(?<= )-(?=\\d)", "\u2212"));
            }
        }
        return bySource;
    }

    /** The faults that do most. */
    public List<FaultEffect> faults() {
        return report.faults().stream().limit(FAULTS).toList();
    }

    /** Joints that must stay open and do. */
    public String isolations() {
        return String.join(
                "; ",
                report.circuit().joints().stream()
                        .filter(j -> !j.link().conducts())
                        .map(BoatJoint::name)
                        .toList());
    }

    /** The mass an anode would need. */
    public String mass(AnodeForecast f) {
        return report.masses().stream()
                .filter(m -> m.body().id().equals(f.body().id()))
                .map(RequiredMass::words)
                .findFirst()
                .orElse("");
    }

    /** Whether an anode is half gone already. */
    public boolean now(AnodeForecast f) {
        LocalDate half = f.halfGone();
        return half != null && !half.isAfter(report.today());
    }

    /** Mean current over the year that a new one gives. */
    public String newCurrent(AnodeForecast f) {
        return report.masses().stream()
                .filter(m -> m.body().id().equals(f.body().id()))
                .map(m -> milliamps(m.meanCurrentA()) + " mA")
                .findFirst()
                .orElse("");
    }

    /** Water in one line. */
    public String water() {
        return report.circuit().water().words() + " of "
                + figure(report.circuit().water().resistivityOhmM())
                + " \u03a9\u00a0m at " + short1(report.circuit().water().temperatureC()) + " °C (practical salinity "
                + short1(report.circuit().water().salinity()) + ")";
    }

    /** A figure of the berth, known to a tenth at best. */
    private static String short1(double value) {
        return Figures.of(Locale.UK).number(Math.round(10 * value) / 10.0);
    }

    /** What the model cannot see. */
    public List<String> limits() {
        return Limits.ofTheModel();
    }

    /** How readings are taken. */
    public List<String> howToMeasure() {
        return Limits.howToMeasure();
    }

    /** What can hurt. */
    public List<String> cautions() {
        return Limits.cautions();
    }
}
