package sternwright.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import sternwright.service.Half;
import sternwright.service.Rule;
import sternwright.yard.SeasonDates;
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

    private final SeasonDates season;

    Windows(SeasonDates season) {
        this.season = season;
    }

    /** The sensible stretch around a due date; {@code base} is where the interval began, null if not known. */
    Window around(Rule rule, LocalDate dueOn, @Nullable LocalDate base) {
        long interval = base == null ? 0 : Math.max(0, ChronoUnit.DAYS.between(base, dueOn));
        LocalDate earliest = dueOn.minusDays(Math.round(EARLY_SHARE * interval));
        LocalDate last = rule.safety() ? dueOn : dueOn.plusDays(Math.round(LATE_SHARE * interval));
        if (rule.half() == Half.ANY) {
            return new Window(earliest, last);
        }
        Window half =
                rule.half() == Half.LAY_UP ? season.layUpEndingFrom(earliest) : season.recommissionEndingFrom(earliest);
        if (half.from().isAfter(last)) {
            return new Window(earliest, last);
        }
        LocalDate from = half.from().isAfter(earliest) ? earlierOf(half.from(), dueOn) : half.from();
        LocalDate to = rule.safety() ? earlierOf(half.to(), last) : half.to();
        return new Window(from, to.isBefore(dueOn) && !rule.safety() ? laterOf(to, dueOn) : laterOf(to, from));
    }

    private static LocalDate earlierOf(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    private static LocalDate laterOf(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }
}
