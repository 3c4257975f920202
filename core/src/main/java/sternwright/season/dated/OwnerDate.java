package sternwright.season.dated;

import java.time.LocalDate;

/**
 * A date that an owner or a supplier has set for one boat.
 *
 * @param boatId the boat
 * @param kind what is meant
 * @param work for {@link Kind#PART_IN} the id of the rule that waits for the part, else empty
 * @param date the date
 * @param note free text
 */
public record OwnerDate(String boatId, Kind kind, String work, LocalDate date, String note) {
    /** What a date means. */
    public enum Kind {
        /** The owner gives the boat up on this day, not before. */
        OUT_FROM,
        /** The owner wants to be afloat on this day, and not long before. */
        AFLOAT_BY,
        /** A part is here on this day; the work that waits for it is not before. */
        PART_IN,
        /** The boat stands ashore since this day. */
        ASHORE_SINCE,
        /** Something is wrong with the boat from this day on: out of the water at once, or seen to where it stands. */
        EMERGENCY
    }
}
