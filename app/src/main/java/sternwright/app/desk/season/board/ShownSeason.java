package sternwright.app.desk.season.board;

import java.lang.ref.Reference;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.files.problem.Problem;
import sternwright.season.dated.answer.DatedSeason;

/**
 * The plan the yard works by, as a board shows it.
 *
 * @param version of {@code season.csv}
 * @param ground changes whenever the plan or what it rests on changes
 * @param by who published it, empty where nobody knows
 * @param at when
 * @param visitsOf the day its visits rest on
 * @param dated the plan in the yard's words; without loads, costs and judgement before it was judged
 * @param standing how far the judges are
 * @param wrong what stands against the plan as the yard is now
 * @param remarks what a person should know
 * @param planned the judged season with all it rests on; given up when memory is short
 */
public record ShownSeason(
        String version,
        String ground,
        String by,
        Instant at,
        LocalDate visitsOf,
        DatedSeason dated,
        Standing standing,
        List<Problem> wrong,
        List<String> remarks,
        Reference<PlannedSeason> planned) {
    /** Copies the lists. */
    public ShownSeason {
        wrong = List.copyOf(wrong);
        remarks = List.copyOf(remarks);
    }

    /** How far the judges are. */
    public enum Standing {
        /** Being judged; what is shown stands in the plan as it was published. */
        JUDGING,
        /** Passed by both judges as the yard is now. */
        HOLDS,
        /** The yard has changed so that the plan cannot be kept as it is. */
        BROKEN
    }

    /**
     * The judged season with all it rests on.
     *
     * @return empty before it was judged, where it does not hold, or when memory was short
     */
    public Optional<PlannedSeason> whole() {
        return Optional.ofNullable(planned.get());
    }
}
