package sternwright.season.planner;

import java.util.List;
import sternwright.season.Bound;
import sternwright.season.SeasonPlan;

/**
 * A season planned.
 *
 * @param plan the plan, proved by the judge
 * @param bound what no plan can cost less than
 * @param firstCost cost of the first plan, before the search
 */
public record SeasonAnswer(SeasonPlan plan, Bound bound, long firstCost) {
    /** The part of the cost not proved necessary, 0 to 1. */
    public double gap() {
        return bound.gap(plan.cost().total());
    }

    /** A fault of the planner: a plan that its judge refuses. It is reported, never shown as a plan. */
    public static final class RefusedByJudge extends IllegalStateException {
        private static final long serialVersionUID = 1L;

        RefusedByJudge(List<?> violations) {
            super(
                    "the planner made a plan that its independent check refuses; please report this with the yard's files: "
                            + violations);
        }
    }

    /** No plan was found that keeps every limit. */
    public static final class NoPlan extends IllegalStateException {
        private static final long serialVersionUID = 1L;
        private final transient List<Integer> operations;

        NoPlan(List<Integer> operations, String message) {
            super(message);
            this.operations = List.copyOf(operations);
        }

        /** Operations that found no place. */
        public List<Integer> operations() {
            return operations;
        }
    }
}
