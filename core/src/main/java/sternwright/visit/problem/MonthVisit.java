package sternwright.visit.problem;

import java.util.List;

/**
 * One visit of the plan.
 *
 * @param month month of the horizon
 * @param place afloat or ashore
 * @param works what is done, by index of work
 */
public record MonthVisit(int month, Place place, List<MonthWork> works) {
    public MonthVisit {
        works = List.copyOf(works);
    }

    /** Its month and place. */
    public VisitSlot slot() {
        return new VisitSlot(month, place);
    }
}
