package sternwright.visit.check;

/**
 * One thing that is wrong with a plan.
 *
 * @param kind what sort of thing
 * @param work index of the work, -1 where it is the plan as a whole
 * @param words in words
 */
public record VisitFault(Kind kind, int work, String words) {
    /** Sorts of faults. */
    public enum Kind {
        /** It cannot be done so: no visit is possible then, or not in that place. */
        IMPOSSIBLE,
        /** Past its last limit, or not done at all by then. */
        LATE,
        /** Not done in a stretch in which it must be, such as before the first frost. */
        SPAN,
        /** History unknown, and not done at the first visit that fits. */
        FIRST_VISIT,
        /** Done again before enough of its life is used, or more than once. */
        EARLY,
        /** Outside the half of the year it belongs to. */
        SEASON,
        /** Does not follow the work that leads to it. */
        FOLLOW_ON,
        /** Against what was asked besides the rules. */
        DEMAND,
        /** The figures of the plan are wrong. */
        FIGURES
    }
}
