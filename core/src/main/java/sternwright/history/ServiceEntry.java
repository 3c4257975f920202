package sternwright.history;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.boat.PartRef;

/**
 * One line of a boat's history.
 *
 * @param date the day
 * @param part the part worked on
 * @param ruleId the rule that was carried out or refused; for {@link Outcome#HAPPENED} what happened, such as {@code grounding}
 * @param outcome what the entry says
 * @param hours engine hours counted over meter changes, null if not read
 * @param who who did it, or who signed the refusal
 * @param readings what was measured
 * @param note free text, may be empty
 */
public record ServiceEntry(
        LocalDate date,
        PartRef part,
        String ruleId,
        Outcome outcome,
        @Nullable Double hours,
        String who,
        List<TakenReading> readings,
        String note) {
    /** Copies the list. */
    public ServiceEntry {
        readings = List.copyOf(readings);
    }

    /**
     * A plain entry of work done.
     *
     * @param date the day
     * @param part the part
     * @param ruleId the rule
     * @param hours engine hours, null if not read
     * @return the entry without readings
     */
    public static ServiceEntry done(LocalDate date, PartRef part, String ruleId, @Nullable Double hours) {
        return new ServiceEntry(date, part, ruleId, Outcome.DONE, hours, "", List.of(), "");
    }
}
