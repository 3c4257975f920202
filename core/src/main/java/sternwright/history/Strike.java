package sternwright.history;

import java.time.LocalDate;

/**
 * Why a line of the history does not hold. The line itself stays as it was written.
 *
 * @param on the day on which it was struck
 * @param who who struck it
 * @param why what was wrong with it
 */
public record Strike(LocalDate on, String who, String why) {
    /** Refuses a strike without a person or a reason: nobody could tell later what happened. */
    public Strike {
        if (who.isBlank() || why.isBlank()) {
            throw new IllegalArgumentException("a struck line needs who struck it and why");
        }
    }
}
