package sternwright.due;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.boat.PartRef;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;

/**
 * One rule on one part: when it falls due, by which clause, and how long it can wait.
 *
 * @param boatId the boat
 * @param part the part
 * @param inForce the rule with the figures that hold and their source
 * @param state how it stands today
 * @param clauses every clause with its date, the one that came first at the head
 * @param dueOn the day it falls due
 * @param earliest the first day on which doing it wastes no life worth mentioning
 * @param lastSensible the last day it should be done; for a safety item the end of its life
 * @param lastDone when it was last done, null if not known or never
 * @param hoursAtLastDone engine hours then, null if not known
 * @param lifeUsed share of the interval that is used today; 1 when due, more when late; 1 if nothing is known
 * @param timesDone services done since the last n-th one, for rules others count
 */
public record Due(
        String boatId,
        PartRef part,
        RuleInForce inForce,
        DueState state,
        List<Clause> clauses,
        LocalDate dueOn,
        LocalDate earliest,
        LocalDate lastSensible,
        @Nullable LocalDate lastDone,
        @Nullable Double hoursAtLastDone,
        double lifeUsed,
        int timesDone) {
    /** Copies the list. */
    public Due {
        clauses = List.copyOf(clauses);
    }

    /**
     * The rule with the figures that hold.
     *
     * @return the rule
     */
    public Rule rule() {
        return inForce.rule();
    }

    /**
     * The clause that came first.
     *
     * @return the head of the clauses
     */
    public Clause first() {
        return clauses.get(0);
    }
}
