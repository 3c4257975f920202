package sternwright.app.web.protection;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.Problem;
import sternwright.app.paper.Words;
import sternwright.app.paper.drawing.ProtectionDrawings;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.State;
import sternwright.boat.Boat;
import sternwright.protection.anode.AnodeForecast;
import sternwright.protection.diagnosis.Diagnosis;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.report.Advice;
import sternwright.protection.report.Limits;
import sternwright.protection.report.ProtectionReport;

/** Words a protection report for the page. */
final class ProtectionText {
    private static final int FAULTS = 16;
    private static final double WORTH_SAYING = 0.01;
    private static final int VERDICTS = 10;

    private final Page page;
    private final ReferenceElectrode electrode;

    ProtectionText(Page page, ReferenceElectrode electrode) {
        this.page = page;
        this.electrode = electrode;
    }

    ProtectionView view(
            Boat boat, boolean shore, @Nullable ProtectionReport report, List<Problem> problems, TypedReadings typed) {
        Field lead = Field.plain("shore", page.say("protection.lead"), shore ? "in" : "out")
                .of(List.of(
                        new Field.Choice("in", page.say("protection.lead.in")),
                        new Field.Choice("out", page.say("protection.lead.out"))));
        return new ProtectionView(
                boat.id(),
                boat.name(),
                report == null ? "" : where(report),
                problems,
                lead,
                report == null ? null : report(report, typed));
    }

    private String where(ProtectionReport r) {
        return page.say(
                "protection.where",
                r.berth().name(),
                r.circuit().water().words(),
                number(tenth(r.circuit().water().resistivityOhmM())),
                number(tenth(r.circuit().water().temperatureC())));
    }

    private ProtectionView.Report report(ProtectionReport r, TypedReadings typed) {
        Diagnosis diagnosis = r.diagnosis();
        return new ProtectionView.Report(
                r.owner(),
                r.advice().stream().map(this::todo).toList(),
                ProtectionDrawings.of(r, electrode),
                r.life().forecasts().stream().map(this::anode).toList(),
                page.say(
                        "protection.alloy",
                        r.alloy().metalId().replace('-', ' '),
                        r.alloy().reason(),
                        r.alloy().source().line()),
                r.faults().stream()
                        .limit(FAULTS)
                        .map(f -> new ProtectionView.Pair(
                                Words.sentence(f.fault().words()), Words.sentence(f.sentence())))
                        .toList(),
                diagnosis == null ? null : findings(diagnosis),
                r.measureNext().stream().map(n -> next(n, r)).toList(),
                typed.rows(page, r),
                typed.electrodeField(page),
                Limits.howToMeasure(),
                Limits.ofTheModel(),
                Limits.cautions());
    }

    private ProtectionView.Todo todo(Advice a) {
        State state = switch (a.severity()) {
            case FINE -> new State(page.say("protection.fine"), State.Mark.TICK, State.Tone.SOFT);
            case WATCH -> new State(page.say("protection.watch"), State.Mark.DISC, State.Tone.WATCH);
            case ACT -> new State(page.say("protection.act"), State.Mark.TRIANGLE, State.Tone.ACT);
            case UNSAFE -> new State(page.say("protection.unsafe"), State.Mark.TRIANGLE, State.Tone.ACT);
        };
        return new ProtectionView.Todo(state, a.found(), a.act(), a.caution());
    }

    private ProtectionView.Anode anode(AnodeForecast f) {
        Double months = f.newLastsMonths();
        return new ProtectionView.Anode(
                Words.sentence(f.body().name()),
                page.say("protection.percent", Math.round(100 * f.remainingNow())),
                day(f.halfGone()),
                page.say("protection.range", day(f.early80()), day(f.late80())),
                months == null ? page.say("protection.years") : page.say("protection.months", Math.round(months)));
    }

    private String day(@Nullable LocalDate day) {
        return day == null ? page.say("protection.beyond") : page.figures().shortDate(day);
    }

    private ProtectionView.Findings findings(Diagnosis d) {
        List<ProtectionView.Pair> verdicts = new java.util.ArrayList<>(d.verdicts().stream()
                .filter(v -> v.probability() >= WORTH_SAYING)
                .limit(VERDICTS)
                .map(v -> new ProtectionView.Pair(
                        Words.sentence(v.hypothesis().words()),
                        page.say("protection.percent", Math.round(100 * v.probability()))))
                .toList());
        verdicts.add(new ProtectionView.Pair(
                page.say("protection.other"), page.say("protection.percent", Math.round(100 * d.otherProbability()))));
        return new ProtectionView.Findings(d.summary(), verdicts);
    }

    private ProtectionView.Pair next(Diagnosis.NextMeasurement n, ProtectionReport r) {
        return new ProtectionView.Pair(
                Words.sentence(n.measurement().words(r.circuit())),
                page.say(
                        "protection.tells",
                        number(Math.round(100 * n.bits()) / 100.0),
                        page.figures().time(n.minutes())));
    }

    /** A berth's water is known to a tenth at best. */
    private static double tenth(double value) {
        return Math.round(10 * value) / 10.0;
    }

    private String number(double value) {
        return page.figures().number(value);
    }
}
