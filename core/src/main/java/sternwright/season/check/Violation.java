package sternwright.season.check;

/**
 * One way in which a plan breaks the season's rules.
 *
 * @param kind which rule
 * @param message what, where and what was expected, for a person
 */
public record Violation(Kind kind, String message) {
    /** The rules. */
    public enum Kind {
        /** An operation has no start, or the plan is of another season. */
        INCOMPLETE,
        /** Before the earliest or after the latest date, or off the axis. */
        WINDOW,
        /** On a day on which it may not start. */
        TIDE,
        /** Two operations too near or too far apart. */
        LAG,
        /** More lifts than the hoists can do. */
        HOIST,
        /** More boats than places. */
        PLACE,
        /** More work than people, overtime included. */
        PEOPLE,
        /** More of a pool than there is. */
        POOL,
        /** The stated cost is not the cost. */
        COST
    }
}
