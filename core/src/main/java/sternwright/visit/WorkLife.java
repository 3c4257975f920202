package sternwright.visit;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.due.Clause;
import sternwright.due.ClauseKind;
import sternwright.due.Due;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Rule;
import sternwright.visit.problem.Life;
import sternwright.visit.problem.UseProfile;

/**
 * From the clauses of a due entry to the life of a work: the interval from when it is done, and how much of it is used so that
 * the first date comes out where the due list puts it.
 */
final class WorkLife {
    /** Stands for "not again" where a rule has no interval of its own, months. */
    static final double FAR_OFF_MONTHS = 600;

    /** A safety item is planned to be done at least so many days before the end of its life. Common practice, no source. */
    private static final int DAYS_IN_HAND = 7;

    private static final double JUST_PAST = 1.001;

    private final BoatQuestion question;
    private final BoatCalendar calendar;

    WorkLife(BoatQuestion question, BoatCalendar calendar) {
        this.question = question;
        this.calendar = calendar;
    }

    /** The life of the work of a due entry. */
    Life of(Due due, UseProfile use, double annualHours) {
        double months = months(due);
        Optional<Clause> byHours = clause(due, ClauseKind.HOURS);
        double hours = byHours.map(Clause::amount).orElseGet(() -> hours(due.rule()));
        double hoursUsed = byHours.map(c -> hoursUsed(c, due, annualHours)).orElse(0.0);
        Optional<LocalDate> byDate = due.clauses().stream()
                .filter(c -> c.kind() != ClauseKind.HOURS && c.kind() != ClauseKind.UNKNOWN)
                .map(Clause::date)
                .min(Comparator.naturalOrder());
        if (months == 0 && byDate.isPresent()) {
            months = FAR_OFF_MONTHS;
        }
        double whole = months;
        double monthsUsed = byDate.map(d -> Math.max(0, whole - calendar.monthsUntil(inHand(d, due))))
                .orElse(0.0);
        return new Life(months, hours, months == 0 ? 0 : monthsUsed, hours == 0 ? 0 : hoursUsed, use);
    }

    /** A life that never ends by itself: the work is done where other rules ask for it. */
    Life none(UseProfile use) {
        return new Life(0, 0, 0, 0, use);
    }

    private static LocalDate inHand(LocalDate date, Due due) {
        return due.rule().safety() ? date.minusDays(DAYS_IN_HAND) : date;
    }

    private double hoursUsed(Clause clause, Due due, double annualHours) {
        double rest = annualHours * calendar.useUntil(inHand(clause.date(), due));
        return rest <= 0 ? clause.amount() * JUST_PAST : Math.max(0, clause.amount() - rest);
    }

    private static Optional<Clause> clause(Due due, ClauseKind kind) {
        return due.clauses().stream().filter(c -> c.kind() == kind).findFirst();
    }

    /** Months from one doing to the next: as the due list found them (for wear, what a new part is computed to last), else the rule's own with the berth and use it is for. */
    private double months(Due due) {
        double least = due.clauses().stream()
                .filter(c -> c.kind() == ClauseKind.MONTHS
                        || c.kind() == ClauseKind.LIFE
                        || c.kind() == ClauseKind.WASTAGE && c.amount() > 0)
                .mapToDouble(Clause::amount)
                .min()
                .orElse(0);
        return least > 0 ? least : months(due.rule());
    }

    private double months(Rule rule) {
        Interval interval = rule.interval();
        Integer months = shorter(interval.months(), interval.lifeMonths());
        if (months == null) {
            return 0;
        }
        double result = months;
        for (Modifier m : modifiers(rule)) {
            Integer instead = m.months();
            result = instead == null ? Math.max(1, Math.floor(result * m.factor())) : instead;
        }
        return result;
    }

    private double hours(Rule rule) {
        Double hours = rule.interval().hours();
        double result = hours == null ? 0 : hours;
        for (Modifier m : modifiers(rule)) {
            result *= m.months() == null ? m.factor() : 1;
        }
        return result;
    }

    private List<Modifier> modifiers(Rule rule) {
        return rule.modifiers().stream()
                .filter(m -> m.when().equals("hot-marina") && question.berth().hotMarina()
                        || m.when().equals("heavy-use") && question.use().heavy())
                .toList();
    }

    private static @Nullable Integer shorter(@Nullable Integer a, @Nullable Integer b) {
        return a == null ? b : b == null ? a : (Integer) Math.min(a, b);
    }
}
