package sternwright.season.replan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sternwright.season.Promise;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;

/** The dates an owner is told when a plan is published. */
public final class Promises {
    private Promises() {}

    /** Every lift and launch, and of work without a hoist the first of each half, as planned. */
    public static List<Promise> of(SeasonProblem problem, SeasonPlan plan) {
        Set<Integer> hoisted = new HashSet<>();
        for (int i = 0; i < plan.startQ().size(); i++) {
            if (problem.operations().get(i).liftClass() >= 0) {
                hoisted.add(
                        problem.halves().get(problem.operations().get(i).half()).visit());
            }
        }
        List<Promise> promises = new ArrayList<>();
        Set<Integer> told = new HashSet<>();
        for (int i = 0; i < plan.startQ().size(); i++) {
            int half = problem.operations().get(i).half();
            boolean lift = problem.operations().get(i).liftClass() >= 0;
            if (lift || !hoisted.contains(problem.halves().get(half).visit()) && told.add(half)) {
                promises.add(new Promise(i, plan.startQ().get(i)));
            }
        }
        return promises;
    }
}
