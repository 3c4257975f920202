package sternwright.app.desk.due;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import sternwright.due.Clause;
import sternwright.due.ClauseKind;
import sternwright.due.Due;
import sternwright.due.Reasons;

/**
 * One line of a due list, flat, as tables, sheets and other programs want it.
 *
 * @param boat the boat
 * @param installation the installation
 * @param part the part
 * @param rule id of the rule
 * @param work what is to be done
 * @param state how it stands
 * @param dueOn the day it falls due
 * @param early80 lower end of the 80 % range where engine hours or wear are forecast and lead
 * @param late80 upper end of that range
 * @param earliest first sensible day
 * @param lastSensible last sensible day
 * @param lastDone when it was last done, empty if not known
 * @param clause the clause that came first
 * @param hoursDueOn the day by engine hours, where a clause counts them
 * @param hoursEarly80 lower end of its 80 % range
 * @param hoursLate80 upper end of its 80 % range
 * @param safety a safety item
 * @param half half of the year
 * @param place where it can be done
 * @param minutes working minutes with fair access
 * @param reason why, in one sentence
 * @param scope how far the figure that was used reaches
 * @param source where that figure comes from
 */
@JsonInclude(JsonInclude.Include.ALWAYS)
@JsonPropertyOrder({"boat", "installation", "part", "rule", "work", "state", "dueOn"})
public record DueLine(
        String boat,
        String installation,
        String part,
        String rule,
        String work,
        String state,
        LocalDate dueOn,
        @Nullable LocalDate early80,
        @Nullable LocalDate late80,
        LocalDate earliest,
        LocalDate lastSensible,
        @Nullable LocalDate lastDone,
        String clause,
        @Nullable LocalDate hoursDueOn,
        @Nullable LocalDate hoursEarly80,
        @Nullable LocalDate hoursLate80,
        boolean safety,
        String half,
        String place,
        double minutes,
        String reason,
        String scope,
        String source) {
    /**
     * The line of a due.
     *
     * @param due what is due
     * @param reasons says why, in the reader's language
     * @return the line
     */
    public static DueLine of(Due due, Reasons reasons) {
        Clause first = due.first();
        Clause hours = due.clauses().stream()
                .filter(c -> c.kind() == ClauseKind.HOURS)
                .findFirst()
                .orElse(null);
        return new DueLine(
                due.boatId(),
                due.part().installationId(),
                due.part().partId(),
                due.rule().id(),
                due.rule().work(),
                due.state().words(),
                due.dueOn(),
                first.early80(),
                first.late80(),
                due.earliest(),
                due.lastSensible(),
                due.lastDone(),
                first.kind().name().toLowerCase(Locale.ROOT),
                hours == null ? null : hours.date(),
                hours == null ? null : hours.early80(),
                hours == null ? null : hours.late80(),
                due.rule().safety(),
                due.rule().half().words(),
                due.rule().place().words(),
                due.rule().minutes(),
                reasons.sentence(due),
                due.inForce().scope().words(),
                due.inForce().sources());
    }
}
