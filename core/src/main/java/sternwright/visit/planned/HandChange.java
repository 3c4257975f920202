package sternwright.visit.planned;

import sternwright.boat.PartRef;

/** What a person changes in a plan. */
public sealed interface HandChange {
    /**
     * A work is done in another visit; one is added if there is none yet. Works of the same visit that must follow it go with it
     * where they can.
     *
     * @param part the part
     * @param ruleId the rule
     * @param from the visit it is in now
     * @param to the visit it shall be in
     */
    record MoveWork(PartRef part, String ruleId, VisitAt from, VisitAt to) implements HandChange {}

    /**
     * A work is taken out of a visit and done in none.
     *
     * @param part the part
     * @param ruleId the rule
     * @param from the visit it is in now
     */
    record LeaveWork(PartRef part, String ruleId, VisitAt from) implements HandChange {}

    /**
     * A visit with all its works is held in another month or place; it joins the visit that is there already.
     *
     * @param from the visit
     * @param to its new month and place
     */
    record MoveVisit(VisitAt from, VisitAt to) implements HandChange {}

    /**
     * A visit is not held. Each of its works goes to the nearest visit that can take it.
     *
     * @param at the visit
     */
    record DropVisit(VisitAt at) implements HandChange {}

    /**
     * A visit is held; it has no works until some are moved into it.
     *
     * @param at its month and place
     */
    record AddVisit(VisitAt at) implements HandChange {}
}
