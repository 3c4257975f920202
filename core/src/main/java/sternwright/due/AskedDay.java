package sternwright.due;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import sternwright.yard.SeasonDates.Window;

/** What is the same for every boat that is asked on one day: the day, the yard's halves of the year, which of them are open. */
final class AskedDay {
    private static final int DAYS_BEFORE_WINDOW = 31;

    final LocalDate today;
    final HalfYears halves;
    private final Open layUp;
    private final Open recommission;

    AskedDay(LocalDate today, HalfYears halves) {
        this.today = today;
        this.halves = halves;
        this.layUp = open(true);
        this.recommission = open(false);
    }

    /** The half that has begun and is not done, while it still makes sense; else the next one. */
    Window open(boolean layUpHalf, @Nullable LocalDate lastDone) {
        Open open = layUpHalf ? layUp : recommission;
        boolean done = lastDone != null && !lastDone.isBefore(open.doneFrom);
        return done || open.missedForGood ? open.next : open.half;
    }

    private Open open(boolean layUpHalf) {
        Window half = halves.endingFrom(layUpHalf, today.minusYears(1));
        Window next = halves.following(layUpHalf, half);
        while (!next.from().isAfter(today)) {
            half = next;
            next = halves.following(layUpHalf, half);
        }
        Window other = halves.endingFrom(!layUpHalf, half.to());
        return new Open(half, next, !today.isBefore(other.from()), half.from().minusDays(DAYS_BEFORE_WINDOW));
    }

    /** The running or last half, the one after it, whether the first is past mending, from when work counts for it. */
    private record Open(Window half, Window next, boolean missedForGood, LocalDate doneFrom) {}
}
