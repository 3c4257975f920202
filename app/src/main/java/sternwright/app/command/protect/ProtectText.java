package sternwright.app.command.protect;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import sternwright.app.command.text.Counted;
import sternwright.app.command.text.TextTable;
import sternwright.app.paper.Figures;
import sternwright.app.paper.drawing.PotentialScale;
import sternwright.finding.Severity;
import sternwright.protection.anode.AnodeForecast;
import sternwright.protection.anode.RequiredMass;
import sternwright.protection.diagnosis.Diagnosis;
import sternwright.protection.fault.FaultEffect;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.register.Assumption;
import sternwright.protection.report.Limits;
import sternwright.protection.report.PartLine;
import sternwright.protection.report.ProtectionReport;

/** The protection report for people at a terminal. */
public final class ProtectText {
    private static final int FAULTS_SHOWN = 12;
    private static final double WORTH_SHOWING = 0.02;

    private final PrintWriter out;
    private final ReferenceElectrode electrode;
    private final Figures figures;

    ProtectText(PrintWriter out, ReferenceElectrode electrode, Figures figures) {
        this.figures = figures;
        this.out = out;
        this.electrode = electrode;
    }

    void print(ProtectionReport r, boolean assumptions) {
        out.printf(
                Locale.ROOT,
                "%s (%s) on %s, berth %s: %s of %.2f ohm m at %.0f °C%n",
                r.boat().name(),
                r.boat().id(),
                figures.shortDate(r.today()),
                r.berth().name(),
                r.circuit().water().words(),
                r.circuit().water().resistivityOhmM(),
                r.circuit().water().temperatureC());
        r.owner().forEach(s -> out.println("  " + figures.dated(s)));
        parts(r.parts());
        anodes(r);
        if (r.diagnosis() != null) {
            diagnosis(r.diagnosis());
        }
        faults(r.faults());
        assumed(r.circuit().assumptions(), assumptions);
        out.println();
        Limits.cautions().forEach(c -> out.println("Caution: " + c));
    }

    private void parts(List<PartLine> parts) {
        out.println();
        out.println("Potentials in mV against " + electrode.words() + "; current from metal into water positive.");
        TextTable table = new TextTable(
                "part", "metal", "close", "far", "current mA", "running", "limit", "how it stands", "running");
        for (PartLine p : parts) {
            Double limit = p.atBerth().protectedAtV();
            table.row(
                    p.body().id(),
                    p.body().metal().name(),
                    mV(p.closeV()),
                    mV(p.farV()),
                    String.format(Locale.ROOT, "%.1f", p.currentA() * 1000),
                    mV(p.runningV()),
                    limit == null ? "" : mV(limit),
                    PotentialScale.stands(p),
                    PotentialScale.stands(p, p.underWay()));
        }
        table.print(out);
        parts.stream()
                .filter(p -> p.atBerth().source() != null && p.atBerth().severity() != Severity.FINE)
                .forEach(p ->
                        out.println("  " + p.body().id() + ": " + p.atBerth().reason() + ". By "
                                + Objects.requireNonNull(p.atBerth().source()).line() + "."));
    }

    private String mV(double silverChlorideV) {
        return String.format(Locale.ROOT, "%.0f", electrode.fromSilverChlorideV(silverChlorideV) * 1000);
    }

    private void anodes(ProtectionReport r) {
        out.println();
        TextTable table =
                new TextTable("anode", "left now", "half gone", "80 % range", "spent", "mean mA", "kg wanted");
        for (AnodeForecast f : r.life().forecasts()) {
            table.row(
                    f.body().id(),
                    String.format(Locale.ROOT, "%.0f %%", 100 * f.remainingNow()),
                    day(f.halfGone()),
                    day(f.early80()) + " to " + day(f.late80()),
                    day(f.spent()),
                    mass(r, f).isEmpty() ? "" : String.format(Locale.ROOT, "%.1f", 1000 * f.meanCurrentA()),
                    mass(r, f).isEmpty() ? "renew first" : mass(r, f));
        }
        table.print(out);
        r.life().forecasts().stream().limit(1).forEach(f -> out.println("  " + figures.dated(sentence(f.how()))));
        out.println("  " + r.alloy().metalId() + ": " + r.alloy().reason());
    }

    private static String mass(ProtectionReport r, AnodeForecast f) {
        return r.masses().stream()
                .filter(m -> m.body().id().equals(f.body().id()))
                .map(RequiredMass::massKg)
                .map(m -> String.format(Locale.ROOT, "%.2f", m))
                .findFirst()
                .orElse("");
    }

    private static String sentence(String s) {
        return s.substring(0, 1).toUpperCase(Locale.ROOT) + s.substring(1) + ".";
    }

    private String day(@Nullable LocalDate day) {
        return day == null ? "later" : figures.shortDate(day);
    }

    private void diagnosis(Diagnosis d) {
        out.println();
        out.println("What the readings say: " + figures.dated(d.summary()));
        for (Diagnosis.Verdict v : d.verdicts()) {
            if (v.probability() >= WORTH_SHOWING) {
                out.printf(
                        Locale.ROOT,
                        "  %5.1f %%  %s%n",
                        100 * v.probability(),
                        v.hypothesis().words());
            }
        }
        out.printf(Locale.ROOT, "  %5.1f %%  something else%n", 100 * d.otherProbability());
        out.println("Measure next:");
        for (Diagnosis.NextMeasurement n : d.next()) {
            out.printf(
                    Locale.ROOT,
                    "  %.2f bit, %d min: %s%n",
                    n.bits(),
                    n.minutes(),
                    n.measurement().words());
        }
    }

    private void faults(List<FaultEffect> faults) {
        out.println();
        out.println("What each fault would do, worst first:");
        faults.stream()
                .limit(FAULTS_SHOWN)
                .forEach(f -> out.println("  " + f.fault().words() + ": " + f.sentence() + "."));
        if (faults.size() > FAULTS_SHOWN) {
            out.println("  and " + (faults.size() - FAULTS_SHOWN) + " more that do less; --json lists all.");
        }
    }

    private void assumed(List<Assumption> assumptions, boolean all) {
        out.println();
        if (!all) {
            out.println(Counted.of(assumptions.size(), "figure is assumed", "figures are assumed")
                    + "; --assumptions lists them, --set KEY=VALUE puts your own.");
            return;
        }
        TextTable table = new TextTable("key", "value", "unit", "source");
        assumptions.forEach(a -> table.row(
                a.key(),
                String.format(Locale.ROOT, "%.4g", a.value()),
                a.unit(),
                a.source().line()));
        table.print(out);
    }
}
