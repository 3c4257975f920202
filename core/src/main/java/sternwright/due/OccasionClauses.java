package sternwright.due;

import java.time.LocalDate;
import java.time.MonthDay;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Winter;
import sternwright.service.Occasion;
import sternwright.yard.SeasonDates.Window;

/** Works that belong to every lay-up, recommission or visit, and the one that must be done before the first frost. */
final class OccasionClauses {
    private final BoatFacts facts;

    OccasionClauses(BoatFacts facts) {
        this.facts = facts;
    }

    /** The window in which the occasion wants the work, null if the occasion does not arise for this boat. */
    @Nullable
    Window window(Occasion occasion, @Nullable LocalDate lastDone) {
        return switch (occasion) {
            case EVERY_VISIT -> new Window(facts.today, facts.today);
            case EVERY_LAY_UP -> facts.day.open(true, lastDone);
            case EVERY_RECOMMISSION -> facts.day.open(false, lastDone);
            case EVERY_LAY_UP_BEFORE_FROST -> beforeFrost(lastDone);
        };
    }

    private @Nullable Window beforeFrost(@Nullable LocalDate lastDone) {
        MonthDay frost = facts.berth.firstFrost();
        if (frost == null || facts.boat.winter() == Winter.IN_USE) {
            return null;
        }
        Window layUp = facts.day.open(true, lastDone);
        LocalDate night = frost.atYear(layUp.from().getYear());
        if (night.isBefore(layUp.from())) {
            night = frost.atYear(layUp.from().getYear() + 1);
        }
        return new Window(layUp.from(), night);
    }
}
