package sternwright.app.desk.recording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.boat.Boat;
import sternwright.history.BoatHistory;
import sternwright.history.Finding;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.job.reading.Judgement;
import sternwright.job.reading.ReadingJudge;
import sternwright.measure.unit.Unit;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;

/**
 * Brings readings to the unit their rule asks for and judges them by its limits. A reading that the work's own rule does not
 * ask for is judged by another rule on the same part that does.
 */
public final class ReadingSense {
    private final DueWork work;
    private final Boat boat;
    private final BoatHistory before;

    /**
     * The readings of a boat.
     *
     * @param work the rules in force
     * @param boat the boat
     * @param before what is written down of her
     */
    public ReadingSense(DueWork work, Boat boat, BoatHistory before) {
        this.work = work;
        this.boat = boat;
        this.before = before;
    }

    /** The rule that asks for a reading, with what it asks. */
    private record Question(Rule rule, ReadingAsked asked) {}

    /**
     * An entry with its readings in the units asked.
     *
     * @param e the entry
     * @param where where it was said
     * @param wrong takes readings in a unit that does not fit, or that cannot be
     * @return the entry; use it only if nothing is wrong
     */
    public ServiceEntry inUnitsAsked(ServiceEntry e, EntrySense.Where where, List<Problem> wrong) {
        List<TakenReading> readings = new ArrayList<>();
        for (TakenReading r : e.readings()) {
            Question question = question(e, r);
            readings.add(question == null ? r : inUnit(r, question.asked, where, wrong));
        }
        return e.judged(readings, e.findings());
    }

    private TakenReading inUnit(TakenReading r, ReadingAsked asked, EntrySense.Where where, List<Problem> wrong) {
        String unit = r.unit().isEmpty() ? work.units().shown(0, asked.unit()).unit() : r.unit();
        OptionalDouble value = Unit.convert(r.value(), unit, asked.unit());
        if (value.isEmpty()) {
            String found = r.name() + " is given in \"" + r.unit() + "\"";
            wrong.add(where.problem("readings", found, known(asked), "Convert it, or leave the unit out."));
            return r;
        }
        boolean answer = asked.unit().equals("1");
        if (answer && value.getAsDouble() != 0 && value.getAsDouble() != 1) {
            String found = r.name() + " is " + MeterSense.plain(r.value());
            wrong.add(where.problem("readings", found, "yes or no (1 or 0)", ""));
        }
        return new TakenReading(r.name(), rounded(value.getAsDouble(), r), asked.unit());
    }

    /** A converted figure is no more exact than what was read: six digits are plenty. */
    private static double rounded(double value, TakenReading r) {
        return value == r.value() || value == 0
                ? value
                : new java.math.BigDecimal(value)
                        .round(new java.math.MathContext(6))
                        .doubleValue();
    }

    private static String known(ReadingAsked asked) {
        return Unit.bySymbol(asked.unit())
                .map(u -> Unit.of(u.quantity()).stream().map(Unit::symbol).collect(Collectors.joining(", ")))
                .orElse(asked.unit().equals("1") ? "yes or no, without a unit" : asked.unit());
    }

    /**
     * An entry with its readings judged and the verdicts kept as findings.
     *
     * @param e the entry, its readings in the units asked
     * @return the entry; what happened to a boat and what was refused is not judged
     */
    public ServiceEntry judged(ServiceEntry e) {
        if (e.outcome() == Outcome.HAPPENED || e.readings().isEmpty()) {
            return e;
        }
        List<Finding> findings = new ArrayList<>();
        for (TakenReading r : e.readings()) {
            Question q = question(e, r);
            if (q != null) {
                Judgement verdict = ReadingJudge.judge(q.asked, r, last(e, r), q.rule);
                findings.add(new Finding(
                        r.name(),
                        verdict.severity(),
                        verdict.why() + " Limit: " + verdict.source().line() + "."));
            }
        }
        return e.judged(e.readings(), findings);
    }

    /**
     * Readings that no rule on the part asks for: they are kept, and said, because a slip of the pen looks the same.
     *
     * @param e the entry
     * @return a sentence for each
     */
    public List<String> remarks(ServiceEntry e) {
        if (e.outcome() == Outcome.HAPPENED) {
            return List.of();
        }
        List<String> names = work.rules(boat, e.part()).stream()
                .sorted(ownFirst(e))
                .flatMap(r -> r.readings().stream())
                .map(ReadingAsked::name)
                .distinct()
                .toList();
        return e.readings().stream()
                .filter(r -> !names.contains(r.name()))
                .map(r -> "reading " + r.name() + " is not asked for by " + e.ruleId()
                        + "; it was kept without a verdict. " + KnownNames.advice(r.name(), names))
                .toList();
    }

    private @Nullable Question question(ServiceEntry e, TakenReading r) {
        if (e.outcome() == Outcome.HAPPENED) {
            return null;
        }
        return work.rules(boat, e.part()).stream()
                .sorted(ownFirst(e))
                .flatMap(rule -> rule.readings().stream()
                        .filter(a -> a.name().equals(r.name()))
                        .map(a -> new Question(rule, a)))
                .findFirst()
                .orElse(null);
    }

    private static Comparator<Rule> ownFirst(ServiceEntry e) {
        return Comparator.comparing(rule -> !rule.id().equals(e.ruleId()));
    }

    /** The newest reading of that name on the part before the entry's day. */
    private @Nullable TakenReading last(ServiceEntry e, TakenReading r) {
        Optional<TakenReading> last = before.entries().stream()
                .filter(old -> old.part().equals(e.part()) && old.date().isBefore(e.date()))
                .flatMap(old -> old.readings().stream())
                .filter(old -> old.name().equals(r.name()))
                .reduce((a, b) -> b);
        return last.orElse(null);
    }
}
