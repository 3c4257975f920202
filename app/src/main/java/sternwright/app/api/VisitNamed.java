package sternwright.app.api;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.proving.ChosenVisit;

/**
 * A visit of a plan, by which a card or an estimate is made.
 *
 * @param boat id of the boat
 * @param from first day of the visit
 * @param place afloat or ashore
 * @param months how far was planned, 24 if missing
 * @param agreed true for a visit as agreed
 */
public record VisitNamed(
        @Nullable String boat,
        @Nullable LocalDate from,
        @Nullable String place,
        @Nullable Integer months,
        @Nullable Boolean agreed) {
    ChosenVisit chosen() {
        return ChosenVisit.read(Map.of(
                "boat", Objects.requireNonNullElse(boat, ""),
                "from", Objects.toString(from, ""),
                "place", Objects.requireNonNullElse(place, ""),
                "months", Objects.toString(months, "24"),
                "agreed", Objects.toString(agreed, "false")));
    }
}
