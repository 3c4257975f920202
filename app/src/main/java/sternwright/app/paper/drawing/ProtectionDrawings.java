package sternwright.app.paper.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sternwright.protection.anode.AnodeForecast;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.report.JointLine;
import sternwright.protection.report.PartLine;
import sternwright.protection.report.ProtectionReport;

/** Every drawing of a protection report, each with the table behind it: the circuit, the potentials, one of each anode's life. */
public final class ProtectionDrawings {
    private ProtectionDrawings() {}

    /**
     * Draws a report.
     *
     * @param report the report
     * @param electrode what potentials are given against
     * @return the circuit, the potentials, then each anode in the order of the register
     */
    public static List<Drawing> of(ProtectionReport report, ReferenceElectrode electrode) {
        List<Drawing> all = new ArrayList<>();
        all.add(circuit(report));
        all.add(potentials(report, electrode));
        report.life().forecasts().forEach(f -> all.add(anode(f)));
        return List.copyOf(all);
    }

    /** The circuit at the berth. */
    public static Drawing circuit(ProtectionReport report) {
        return new Drawing(
                "circuit",
                "The circuit at the berth",
                CircuitDrawing.of(report),
                CircuitDrawing.narrow(report),
                List.of("joint", "resistance, ohm", "voltage across, mV", "current, mA"),
                JointLine.of(report.circuit(), report.state()).stream()
                        .filter(j -> j.joint().measurable())
                        .map(j -> List.of(
                                j.joint().name(),
                                ohms(j),
                                figure(1000 * j.acrossV()),
                                j.joint().link().conducts() ? figure(1000 * j.currentA()) : ""))
                        .toList());
    }

    /** The potentials at the berth and under way. */
    public static Drawing potentials(ProtectionReport report, ReferenceElectrode electrode) {
        return new Drawing(
                "potentials",
                "Potentials at the berth, worked out with the anodes new",
                PotentialScale.of(report, electrode),
                PotentialScale.narrow(report, electrode),
                List.of(
                        "part",
                        "close, mV against " + electrode.symbol(),
                        "far, mV",
                        "under way, mV",
                        "current, mA",
                        "how it stands"),
                report.parts().stream().map(p -> row(p, electrode)).toList());
    }

    private static List<String> row(PartLine p, ReferenceElectrode e) {
        return List.of(
                p.body().name(),
                figure(1000 * e.fromSilverChlorideV(p.closeV())),
                figure(1000 * e.fromSilverChlorideV(p.farV())),
                figure(1000 * e.fromSilverChlorideV(p.runningV())),
                figure(1000 * p.currentA()),
                PotentialScale.stands(p));
    }

    /** What is left of one anode, month by month. */
    public static Drawing anode(AnodeForecast f) {
        String svg = AnodeCurve.of(f);
        List<List<String>> rows = new ArrayList<>();
        for (int m = 0; m < f.median().size(); m++) {
            rows.add(List.of(
                    f.from().plusMonths(m).toString(),
                    figure(100 * f.median().get(m)),
                    figure(100 * f.fast().get(m)),
                    figure(100 * f.slow().get(m))));
        }
        return new Drawing(
                "anode:" + f.body().id(),
                "What is left of the " + f.body().name(),
                svg,
                svg,
                List.of("day", "left, %", "left, % (goes fast)", "left, % (goes slowly)"),
                rows);
    }

    /** Resistance of a joint in words. */
    public static String ohms(JointLine j) {
        if (!j.joint().link().conducts()) {
            return "open";
        }
        return Double.isNaN(j.ohm()) ? "isolator" : figure(j.ohm());
    }

    /** A figure with three digits at most. */
    static String figure(double value) {
        double size = Math.abs(value);
        String form = size >= 99.95 || size == 0 ? "%.0f" : size >= 9.995 ? "%.1f" : size >= 0.995 ? "%.2f" : "%.3f";
        String said = String.format(Locale.ROOT, form, value);
        return (said.matches("-0\\.?0*") ? "0" : said).replace('-', '\u2212');
    }
}
