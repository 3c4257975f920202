package sternwright.app.command.protect;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import sternwright.protection.report.Advice;
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
                "%s (%s) on %s, berth %s: %s of %.2f ohm m at %s%n",
                r.boat().name(),
                r.boat().id(),
                figures.shortDate(r.today()),
                r.berth().name(),
                r.circuit().water().words(),
                r.circuit().water().resistivityOhmM(),
                figures.quantity(Math.rint(r.circuit().water().temperatureC()), "°C"));
        r.owner().forEach(s -> out.println("  " + figures.dated(s)));
        advice(r.advice());
        parts(r.parts());
        anodes(r);
        if (r.diagnosis() != null) {
            diagnosis(r.diagnosis());
        }
        next(r);
        faults(r.faults());
        assumed(r.circuit().assumptions(), assumptions);
        out.println();
        Limits.cautions().forEach(c -> out.println("Caution: " + c));
    }

    private void parts(List<PartLine> parts) {
        out.println();
        out.println("Potentials with the anodes new, in mV against " + electrode.words()
                + "; current from metal into water positive.");
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
        Map<String, List<String>> bySource = new LinkedHashMap<>();
        parts.stream()
                .filter(p -> p.atBerth().source() != null && p.atBerth().severity() != Severity.FINE)
                .forEach(p -> bySource.computeIfAbsent(
                                Objects.requireNonNull(p.atBerth().source()).line(), k -> new ArrayList<>())
                        .add(p.body().id() + ": " + p.atBerth().reason()));
        bySource.forEach((source, reasons) -> {
            reasons.forEach(r -> out.println("  " + r + "."));
            out.println("    By " + source + ".");
        });
    }

    private String mV(double silverChlorideV) {
        return String.format(Locale.ROOT, "%.0f", electrode.fromSilverChlorideV(silverChlorideV) * 1000);
    }

    private void anodes(ProtectionReport r) {
        out.println();
        TextTable table = new TextTable(
                "anode",
                "left now",
                "half gone",
                "80 % range",
                "spent",
                "a new one, months",
                "mean mA",
                "kg for " + years(r));
        for (AnodeForecast f : r.life().forecasts()) {
            table.row(
                    f.body().id(),
                    String.format(Locale.ROOT, "%.0f %%", 100 * f.remainingNow()),
                    day(f.halfGone()),
                    day(f.early80()) + " to " + day(f.late80()),
                    day(f.spent()),
                    lasts(f.newLastsMonths()),
                    mean(r, f),
                    mass(r, f));
        }
        table.print(out);
        r.life().forecasts().stream().limit(1).forEach(f -> out.println("  " + figures.dated(sentence(f.how()))));
        out.println(
                "  A new one: months that a new anode of the fitted kind and mass lasts to half gone; kg: what it should weigh to last the wanted time.");
        out.println("  " + r.alloy().metalId() + ": " + r.alloy().reason());
    }

    private static String years(ProtectionReport r) {
        double years =
                r.masses().stream().mapToDouble(RequiredMass::years).findFirst().orElse(1);
        return years == 1 ? "a year" : String.format(Locale.ROOT, "%.1f years", years);
    }

    private static String mean(ProtectionReport r, AnodeForecast f) {
        return r.masses().stream()
                .filter(m -> m.body().id().equals(f.body().id()))
                .map(m -> String.format(Locale.ROOT, "%.1f", 1000 * m.meanCurrentA()))
                .findFirst()
                .orElse("");
    }

    private static String lasts(@Nullable Double months) {
        return months == null ? "years" : String.format(Locale.ROOT, "%.0f", months);
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
    }

    private void next(ProtectionReport r) {
        out.println();
        out.println(
                r.diagnosis() == null ? "What to measure first, by what it tells:" : "Measure next, by what it tells:");
        for (Diagnosis.NextMeasurement n : r.measureNext()) {
            out.printf(
                    Locale.ROOT,
                    "  %.2f bit, %d min: %s (%s)%n",
                    n.bits(),
                    n.minutes(),
                    n.measurement().words(r.circuit()),
                    n.measurement().where());
        }
    }

    private void advice(List<Advice> advice) {
        out.println();
        out.println("What to do:");
        for (Advice a : advice) {
            out.println("  " + mark(a) + " " + a.found() + " " + a.act());
            if (!a.caution().isEmpty()) {
                out.println("      Caution: " + a.caution());
            }
        }
    }

    private static String mark(Advice a) {
        return switch (a.severity()) {
            case UNSAFE, ACT -> "act  ";
            case WATCH -> "watch";
            case FINE -> "     ";
        };
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
