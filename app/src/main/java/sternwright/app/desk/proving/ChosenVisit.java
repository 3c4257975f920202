package sternwright.app.desk.proving;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sternwright.app.files.problem.BadInput;
import sternwright.service.Place;
import sternwright.visit.BoatPlan;
import sternwright.visit.planned.PlannedVisit;

/**
 * One visit of a boat's plan, as an address names it.
 *
 * @param boatId the boat
 * @param months how far was planned
 * @param from the first day of the visit
 * @param place where it is
 * @param agreed whether it is a visit as agreed, and not as proposed
 * @param looked mark of the plan that was looked at, empty for the newest
 */
public record ChosenVisit(String boatId, int months, LocalDate from, Place place, boolean agreed, String looked) {
    private static final int MOST_MONTHS = 120;

    /**
     * The visit that an address or a form names.
     *
     * @param said boat, months, from and place, as they stand there
     * @return the name of the visit
     * @throws BadInput if one of them is missing or cannot be read
     */
    public static ChosenVisit read(Map<String, String> said) {
        String place = said.getOrDefault("place", "");
        try {
            int months = Integer.parseInt(said.getOrDefault("months", "24"));
            if (months >= 1 && months <= MOST_MONTHS && (place.equals("afloat") || place.equals("ashore"))) {
                return new ChosenVisit(
                        said.getOrDefault("boat", ""),
                        months,
                        LocalDate.parse(said.getOrDefault("from", "")),
                        Place.valueOf(place.toUpperCase(Locale.ROOT)),
                        said.getOrDefault("agreed", "").equals("true"),
                        said.getOrDefault("plan", ""));
            }
        } catch (NumberFormatException | DateTimeParseException e) {
            // said below, together with what is out of range
        }
        throw BadInput.of(
                "visit",
                "boat, first day, place or reach cannot be read",
                "a visit of a plan, such as boat=heron, from=2027-03-01, place=ashore, months=24",
                "Press the button on the page of the boat’s visits.");
    }

    /**
     * The visit in a plan.
     *
     * @param plan the plan
     * @return empty if the plan has no such visit any more
     */
    public Optional<PlannedVisit> in(BoatPlan plan) {
        return plan.visits().stream()
                .filter(v -> v.from().equals(from) && v.place() == place)
                .findFirst();
    }
}
