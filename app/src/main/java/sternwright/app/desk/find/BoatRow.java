package sternwright.app.desk.find;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.PartRef;
import sternwright.due.DueState;
import sternwright.service.Place;

/**
 * One boat of a list.
 *
 * @param boatId the boat
 * @param name as painted on the stern
 * @param owner whose it is
 * @param berthId where it lies
 * @param berth the berth as people say it
 * @param arrangements of its installations, each once
 * @param lengthM length overall, m
 * @param state the worst of what is due, refused works apart; {@link DueState#COMING} if nothing is due
 * @param overdue works past their last sensible date
 * @param due works due now
 * @param unknown works of which nobody knows when they were last done
 * @param next what falls due first; null if nothing ever does
 */
public record BoatRow(
        String boatId,
        String name,
        String owner,
        String berthId,
        String berth,
        List<Arrangement> arrangements,
        double lengthM,
        DueState state,
        int overdue,
        int due,
        int unknown,
        @Nullable Next next) {
    /** Copies the list. */
    public BoatRow {
        arrangements = List.copyOf(arrangements);
    }

    /**
     * What falls due first.
     *
     * @param ruleId the rule
     * @param work what is to be done
     * @param part on which part
     * @param dueOn the day
     * @param state how it stands
     * @param place where it can be done
     * @param safety a safety item
     */
    public record Next(
            String ruleId, String work, PartRef part, LocalDate dueOn, DueState state, Place place, boolean safety) {}
}
