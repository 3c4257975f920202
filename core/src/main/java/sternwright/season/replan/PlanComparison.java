package sternwright.season.replan;

import java.util.ArrayList;
import java.util.List;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;

/**
 * Two plans of one season side by side.
 *
 * @param first one plan
 * @param second the other
 * @param otherDay operations that start on another day
 */
public record PlanComparison(SeasonPlan first, SeasonPlan second, List<Difference> otherDay) {
    /**
     * An operation on two days.
     *
     * @param operation index of the operation
     * @param firstQ start in the first plan
     * @param secondQ start in the second
     */
    public record Difference(int operation, int firstQ, int secondQ) {}

    /** Copies the list. */
    public PlanComparison {
        otherDay = List.copyOf(otherDay);
    }

    /** Compares two plans; operations that only the second has are left out. */
    public static PlanComparison of(SeasonProblem problem, SeasonPlan first, SeasonPlan second) {
        List<Difference> differences = new ArrayList<>();
        int both = Math.min(first.startQ().size(), second.startQ().size());
        for (int i = 0; i < both; i++) {
            int one = first.startQ().get(i);
            int two = second.startQ().get(i);
            if (problem.yard().axis().dayOf(one) != problem.yard().axis().dayOf(two)) {
                differences.add(new Difference(i, one, two));
            }
        }
        return new PlanComparison(first, second, differences);
    }
}
