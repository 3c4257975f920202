package sternwright.due;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Winter;
import sternwright.service.Occasion;
import sternwright.yard.SeasonDates;
import sternwright.yard.SeasonDates.Window;

/** Works that belong to every lay-up, recommission or visit, and the one that must be done before the first frost. */
final class OccasionClauses {
    private static final int DAYS_BEFORE_WINDOW = 31;

    private final BoatFacts facts;

    OccasionClauses(BoatFacts facts) {
        this.facts = facts;
    }

    /** The window in which the occasion wants the work, empty if the occasion does not arise for this boat. */
    Optional<Window> window(Occasion occasion, @Nullable LocalDate lastDone) {
        return switch (occasion) {
            case EVERY_VISIT -> Optional.of(new Window(facts.today, facts.today));
            case EVERY_LAY_UP -> Optional.of(open(true, lastDone));
            case EVERY_RECOMMISSION -> Optional.of(open(false, lastDone));
            case EVERY_LAY_UP_BEFORE_FROST -> beforeFrost(lastDone);
        };
    }

    private Optional<Window> beforeFrost(@Nullable LocalDate lastDone) {
        MonthDay frost = facts.berth.firstFrost();
        if (frost == null || facts.boat.winter() == Winter.IN_USE) {
            return Optional.empty();
        }
        Window layUp = open(true, lastDone);
        LocalDate night = frost.atYear(layUp.from().getYear());
        if (night.isBefore(layUp.from())) {
            night = frost.atYear(layUp.from().getYear() + 1);
        }
        return Optional.of(new Window(layUp.from(), night));
    }

    /** The half that has begun and is not done, while it still makes sense; else the next one. */
    private Window open(boolean layUp, @Nullable LocalDate lastDone) {
        SeasonDates season = facts.season;
        LocalDate yearAgo = facts.today.minusYears(1);
        Window half = layUp ? season.layUpEndingFrom(yearAgo) : season.recommissionEndingFrom(yearAgo);
        Window next = following(half, layUp);
        while (!next.from().isAfter(facts.today)) {
            half = next;
            next = following(half, layUp);
        }
        Window other = layUp ? season.recommissionEndingFrom(half.to()) : season.layUpEndingFrom(half.to());
        boolean missedForGood = !facts.today.isBefore(other.from());
        boolean done = lastDone != null && !lastDone.isBefore(half.from().minusDays(DAYS_BEFORE_WINDOW));
        return done || missedForGood ? next : half;
    }

    private Window following(Window half, boolean layUp) {
        LocalDate after = half.to().plusDays(1);
        return layUp ? facts.season.layUpEndingFrom(after) : facts.season.recommissionEndingFrom(after);
    }
}
