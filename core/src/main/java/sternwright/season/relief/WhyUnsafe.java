package sternwright.season.relief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sternwright.season.Due;
import sternwright.season.Operation;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.search.FirstPlan;

/**
 * Why not every boat can be safe against frost in time. A planner prices a frost date, since a late plan is better than none; here the
 * dates are taken for hard, and what clashes then is named.
 */
public final class WhyUnsafe {
    private WhyUnsafe() {}

    /**
     * Looks for a plan in which every boat is safe in time, as far as her own dates allow it.
     *
     * @param problem the season
     * @param proofSeconds time the exact solver may take for each question it is asked
     * @return why there is none; empty if one was found
     */
    public static Optional<NoSeason> of(SeasonProblem problem, long seed, double proofSeconds) {
        SeasonProblem safe = safe(problem);
        List<Integer> without = FirstPlan.fill(new Timetable(SeasonArrays.of(safe), 0), seed);
        return without.isEmpty()
                ? Optional.empty()
                : Optional.of(WhyNoSeason.of(safe, without, true, seed, proofSeconds));
    }

    private static SeasonProblem safe(SeasonProblem problem) {
        SeasonArrays a = SeasonArrays.of(problem);
        List<Operation> operations = new ArrayList<>();
        for (int i = 0; i < a.n; i++) {
            Operation o = problem.operations().get(i);
            Due due = o.due();
            boolean frost = due.kind() == Due.Kind.FROST && due.latePerQ() > 0;
            boolean can = a.earliest[i] + o.lengthQ() <= due.byQ();
            operations.add(frost && can ? o.within(o.earliestQ(), Math.min(o.latestEndQ(), due.byQ())) : o);
        }
        return problem.operations(operations);
    }
}
