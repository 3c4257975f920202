package sternwright.season.dated;

/**
 * Something for which no season can be planned.
 *
 * @param what where it stands
 * @param subject id of the boat, hoist or person; empty if it is none of them
 * @param found what is wrong, as a phrase
 * @param advice what to do, as a sentence
 */
public record SeasonFault(Where what, String subject, String found, String advice) {
    /** Which of the yard's facts is at fault. */
    public enum Where {
        /** A boat against the yard's resources. */
        BOAT,
        /** Hoists, places, people. */
        RESOURCES,
        /** The tide table. */
        TIDES,
        /** Owners' and suppliers' dates. */
        DATES,
        /** Promises. */
        PROMISES,
        /** A planned visit. */
        VISIT
    }
}
