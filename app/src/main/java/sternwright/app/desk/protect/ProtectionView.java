package sternwright.app.desk.protect;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import sternwright.protection.anode.AnodeForecast;
import sternwright.protection.diagnosis.Diagnosis;
import sternwright.protection.fault.FaultEffect;
import sternwright.protection.judgement.MetalJudgement;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.register.Assumption;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.report.Advice;
import sternwright.protection.report.Limits;
import sternwright.protection.report.PartLine;
import sternwright.protection.report.PocketCheck;
import sternwright.protection.report.ProtectionReport;

/**
 * A protection report for other programs: figures with their units in the name, nothing that computes.
 *
 * @param boat the boat
 * @param date the day
 * @param electrode what potentials are given against
 * @param water what water it is
 * @param resistivityOhmM its resistivity
 * @param temperatureC its temperature
 * @param owner how the boat stands, in plain words
 * @param advice what to do, most pressing first
 * @param parts the parts
 * @param anodes anode life
 * @param alloy alloy that suits the water
 * @param alloyReason why
 * @param faults faults by harm
 * @param diagnosis what the readings say, null without readings
 * @param measureNext what to measure next, most telling first
 * @param pocket pocket formulas beside the network
 * @param assumptions figures that the register did not give
 * @param findings what the weighing tells
 * @param residualA largest imbalance of current in the solution
 * @param howToMeasure how readings are taken
 * @param limits what the model cannot see
 * @param cautions what can hurt
 */
public record ProtectionView(
        String boat,
        LocalDate date,
        String electrode,
        String water,
        double resistivityOhmM,
        double temperatureC,
        List<String> owner,
        List<Advice> advice,
        List<Part> parts,
        List<Anode> anodes,
        String alloy,
        String alloyReason,
        List<Fault> faults,
        @Nullable Findings diagnosis,
        List<Next> measureNext,
        List<PocketCheck> pocket,
        List<Figure> assumptions,
        List<String> findings,
        double residualA,
        List<String> howToMeasure,
        List<String> limits,
        List<String> cautions) {
    /** One part. */
    public record Part(
            String part,
            String name,
            String metal,
            double closeV,
            double farV,
            double currentA,
            double runningV,
            String state,
            String severity,
            @Nullable Double protectedAtV,
            @Nullable Double notBelowV,
            String reason,
            String source,
            String runningState) {}

    /** One anode. */
    public record Anode(
            String part,
            String name,
            double remaining,
            @Nullable LocalDate halfGone,
            @Nullable LocalDate early80,
            @Nullable LocalDate late80,
            @Nullable LocalDate spent,
            @Nullable Double newLastsMonths,
            double meanCurrentA,
            @Nullable Double massKg,
            @Nullable Double massWantedKg,
            String how) {}

    /** One fault. */
    public record Fault(String fault, String kind, String where, String words, double harm, String effect) {}

    /** What the readings say. */
    public record Findings(
            String summary,
            double soundProbability,
            double otherProbability,
            boolean nothingExplains,
            List<Verdict> verdicts,
            List<Next> next) {}

    /** One explanation. */
    public record Verdict(List<String> faults, double probability) {}

    /** One measurement to take. */
    public record Next(String place, String measurement, double bits, int minutes) {}

    /** One assumed figure. */
    public record Figure(String key, String words, double value, String unit, String source, boolean overridden) {}

    /** The view of a report with potentials against an electrode. */
    public static ProtectionView of(ProtectionReport r, ReferenceElectrode electrode) {
        return new ProtectionView(
                r.boat().id(),
                r.today(),
                electrode.symbol(),
                r.circuit().water().words(),
                r.circuit().water().resistivityOhmM(),
                r.circuit().water().temperatureC(),
                r.owner(),
                r.advice(),
                r.parts().stream().map(p -> part(p, electrode)).toList(),
                r.life().forecasts().stream().map(f -> anode(f, r)).toList(),
                r.alloy().metalId(),
                r.alloy().reason(),
                r.faults().stream().map(ProtectionView::fault).toList(),
                r.diagnosis() == null ? null : findings(r.diagnosis(), r.circuit()),
                next(r.measureNext(), r.circuit()),
                r.pocket(),
                r.circuit().assumptions().stream().map(ProtectionView::figure).toList(),
                r.life().findings(),
                r.state().residualA(),
                Limits.howToMeasure(),
                Limits.ofTheModel(),
                Limits.cautions());
    }

    private static Part part(PartLine p, ReferenceElectrode e) {
        MetalJudgement j = p.atBerth();
        Double at = j.protectedAtV();
        Double below = j.notBelowV();
        return new Part(
                p.body().id(),
                p.body().name(),
                p.body().metal().name(),
                e.fromSilverChlorideV(p.closeV()),
                e.fromSilverChlorideV(p.farV()),
                p.currentA(),
                e.fromSilverChlorideV(p.runningV()),
                j.state().words(),
                j.severity().name().toLowerCase(Locale.ROOT),
                at == null ? null : (Double) e.fromSilverChlorideV(at),
                below == null ? null : (Double) e.fromSilverChlorideV(below),
                j.reason(),
                j.source() == null ? "" : j.source().line(),
                p.underWay().state().words());
    }

    private static Anode anode(AnodeForecast f, ProtectionReport r) {
        @Nullable
        Double mass = r.masses().stream()
                .filter(m -> m.body().id().equals(f.body().id()))
                .map(m -> (Double) m.massKg())
                .findFirst()
                .orElse(null);
        return new Anode(
                f.body().id(),
                f.body().name(),
                f.remainingNow(),
                f.halfGone(),
                f.early80(),
                f.late80(),
                f.spent(),
                f.newLastsMonths(),
                f.meanCurrentA(),
                f.body().massKg(),
                mass,
                f.how());
    }

    private static Fault fault(FaultEffect f) {
        return new Fault(
                f.fault().id(),
                f.fault().kind().words(),
                f.fault().where(),
                f.fault().words(),
                f.harm(),
                f.sentence());
    }

    private static Findings findings(Diagnosis d, BoatCircuit boat) {
        return new Findings(
                d.summary(),
                d.soundProbability(),
                d.otherProbability(),
                d.nothingExplains(),
                d.verdicts().stream()
                        .map(v -> new Verdict(
                                v.hypothesis().faults().stream()
                                        .map(f -> f.words())
                                        .toList(),
                                v.probability()))
                        .toList(),
                next(d.next(), boat));
    }

    private static List<Next> next(List<Diagnosis.NextMeasurement> all, BoatCircuit boat) {
        return all.stream()
                .map(n -> new Next(n.measurement().where(), n.measurement().words(boat), n.bits(), n.minutes()))
                .toList();
    }

    private static Figure figure(Assumption a) {
        return new Figure(a.key(), a.words(), a.value(), a.unit(), a.source().line(), a.overridden());
    }
}
