package sternwright.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import sternwright.service.Half;
import sternwright.service.Rule;
import sternwright.yard.SeasonDates.Window;

/**
 * From a due date to the days between which the work is sensible.
 *
 * <p>Work may be done somewhat before it is due without wasting life worth mentioning, and somewhat after; a work that belongs
 * to lay-up or recommission goes into that window if the window touches this stretch. Both shares: common practice, no source.
 */
final class Windows {
    /** A work may be done this share of its interval early. */
    static final double EARLY_SHARE = 0.15;

    /** A work that is no safety item may be done this share of its interval late. */
    static final double LATE_SHARE = 0.10;

    private final HalfYears halves;

    Windows(HalfYears halves) {
        this.halves = halves;
    }

    /** The sensible stretch around a due date; {@code base} is where the interval began, null if not known. */
    Window around(Rule rule, LocalDate dueOn, @Nullable LocalDate base) {
        long interval = base == null ? 0 : Math.max(0, ChronoUnit.DAYS.between(base, dueOn));
        LocalDate earliest = dueOn.minusDays(Math.round(EARLY_SHARE * interval));
        LocalDate last = rule.safety() ? dueOn : dueOn.plusDays(Math.round(LATE_SHARE * interval));
        if (rule.half() == Half.ANY) {
            return new Window(earliest, last);
        }
        boolean layUp = rule.half() == Half.LAY_UP;
        Window first = halves.endingFrom(layUp, earliest);
        if (first.from().isAfter(last)) {
            return new Window(earliest, last);
        }
        Window latest = first;
        for (Window next = halves.following(layUp, first);
                !next.from().isAfter(last);
                next = halves.following(layUp, next)) {
            latest = next;
        }
        LocalDate from = first.from().isAfter(earliest) ? earlierOf(first.from(), dueOn) : first.from();
        LocalDate to = rule.safety() ? earlierOf(latest.to(), last) : laterOf(latest.to(), dueOn);
        return new Window(from, laterOf(to, from));
    }

    private static LocalDate earlierOf(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    private static LocalDate laterOf(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }
}
