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
 * @param findings what the readings meant on that day; empty where nobody judged them
 */
public record ServiceEntry(
        LocalDate date,
        PartRef part,
        String ruleId,
        Outcome outcome,
        @Nullable Double hours,
        String who,
        List<TakenReading> readings,
        String note,
        List<Finding> findings) {
    /** Copies the lists. */
    public ServiceEntry {
        readings = List.copyOf(readings);
        findings = List.copyOf(findings);
    }

    /**
     * An entry whose readings nobody judged.
     *
     * @param date the day
     * @param part the part worked on
     * @param ruleId the rule, or what happened
     * @param outcome what the entry says
     * @param hours engine hours, null if not read
     * @param who who did it, or who signed the refusal
     * @param readings what was measured
     * @param note free text, may be empty
     */
    public ServiceEntry(
            LocalDate date,
            PartRef part,
            String ruleId,
            Outcome outcome,
            @Nullable Double hours,
            String who,
            List<TakenReading> readings,
            String note) {
        this(date, part, ruleId, outcome, hours, who, readings, note, List.of());
    }

    /**
     * The same entry with other hours.
     *
     * @param counted engine hours counted over meter changes, null if not read
     * @return the entry
     */
    public ServiceEntry withHours(@Nullable Double counted) {
        return new ServiceEntry(date, part, ruleId, outcome, counted, who, readings, note, findings);
    }

    /**
     * The same entry with its readings judged.
     *
     * @param taken the readings in the units they are judged in
     * @param judged what they mean
     * @return the entry
     */
    public ServiceEntry judged(List<TakenReading> taken, List<Finding> judged) {
        return new ServiceEntry(date, part, ruleId, outcome, hours, who, taken, note, judged);
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
