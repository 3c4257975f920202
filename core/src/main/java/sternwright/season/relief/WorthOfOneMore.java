package sternwright.season.relief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.search.Budget;
import sternwright.season.search.SeasonSearch;
import sternwright.season.search.Watch;

/** Plans on with one more hoist, place or technician, from a plan already made, and says what it saves. */
public final class WorthOfOneMore {
    private WorthOfOneMore() {}

    /**
     * The worth of one more of everything, dearest first.
     *
     * @param plan a plan of {@code problem}
     * @param budget how long to search for each of them
     */
    public static List<OneMore> of(SeasonProblem problem, SeasonPlan plan, Supplier<Budget> budget, long seed) {
        long asItIs = searched(problem, plan, budget.get(), seed);
        List<OneMore> worth = new ArrayList<>();
        for (WithOneMore.Wider wider : WithOneMore.ofEverything(problem)) {
            worth.add(new OneMore(wider.what(), asItIs - searched(wider.season(), plan, budget.get(), seed)));
        }
        worth.sort(Comparator.comparingLong(OneMore::saves).reversed());
        return worth.stream()
                .map(w -> new OneMore(w.what(), Math.max(0, w.saves())))
                .toList();
    }

    private static long searched(SeasonProblem problem, SeasonPlan plan, Budget budget, long seed) {
        SeasonArrays a = SeasonArrays.of(problem);
        int[] starts = plan.startQ().stream().mapToInt(Integer::intValue).toArray();
        int[] better = new SeasonSearch(a, SeasonSearch.Settings.polish(seed)).improve(starts, budget, Watch.SILENT);
        return Plans.of(a, better, "with one more").cost().total();
    }
}
