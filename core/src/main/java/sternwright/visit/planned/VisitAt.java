package sternwright.visit.planned;

import java.time.YearMonth;
import sternwright.service.Place;

/**
 * A visit by its month and place; a plan has at most one of each.
 *
 * @param month the month
 * @param place {@link Place#AFLOAT} or {@link Place#ASHORE}
 */
public record VisitAt(YearMonth month, Place place) implements Comparable<VisitAt> {
    /** Refuses a place that is not one. */
    public VisitAt {
        if (place == Place.EITHER) {
            throw new IllegalArgumentException("a visit is afloat or ashore, not either");
        }
    }

    /**
     * Month and place of a planned visit.
     *
     * @param visit the visit
     * @return by what it is named
     */
    public static VisitAt of(PlannedVisit visit) {
        return new VisitAt(YearMonth.from(visit.from()), visit.place());
    }

    /**
     * Month and place of a planned visit in a plan: the last days of a running month belong to the month the plan begins with.
     *
     * @param visit the visit
     * @param firstMonth the month the plan begins with
     * @return by what it is named in the plan
     */
    public static VisitAt of(PlannedVisit visit, YearMonth firstMonth) {
        VisitAt at = of(visit);
        return at.month().isBefore(firstMonth) ? new VisitAt(firstMonth, at.place()) : at;
    }

    @Override
    public int compareTo(VisitAt other) {
        int byMonth = month.compareTo(other.month);
        return byMonth != 0 ? byMonth : place.compareTo(other.place);
    }
}
