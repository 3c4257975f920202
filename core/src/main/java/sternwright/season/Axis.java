package sternwright.season;

/**
 * The time axis: working days only, cut into equal parts of a day called quarters.
 *
 * @param weeks working weeks, at least 1
 * @param daysPerWeek working days in a week, at least 1
 * @param quartersPerDay parts of a working day, at least 1 (4 gives quarter-days of about two hours)
 */
public record Axis(int weeks, int daysPerWeek, int quartersPerDay) {
    /** Refuses an empty axis. */
    public Axis {
        if (weeks < 1 || daysPerWeek < 1 || quartersPerDay < 1) {
            throw new IllegalArgumentException("axis needs at least one week, day and quarter, got " + weeks
                    + " weeks of " + daysPerWeek + " days of " + quartersPerDay + " quarters");
        }
    }

    /** Quarters on the whole axis. */
    public int quarters() {
        return weeks * daysPerWeek * quartersPerDay;
    }

    /** Working days on the whole axis. */
    public int days() {
        return weeks * daysPerWeek;
    }

    /** Quarters in one week. */
    public int quartersPerWeek() {
        return daysPerWeek * quartersPerDay;
    }

    /** The working day, from 0, in which quarter {@code quarter} lies. */
    public int dayOf(int quarter) {
        return quarter / quartersPerDay;
    }

    /** The week, from 0, in which quarter {@code quarter} lies. */
    public int weekOf(int quarter) {
        return quarter / quartersPerWeek();
    }
}
