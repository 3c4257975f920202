package sternwright.season;

import java.util.List;

/**
 * A season with every operation on the axis.
 *
 * @param startQ start of each operation, in quarters, in the order of the problem's operations
 * @param cost what it costs
 * @param how how it was made, in one phrase
 */
public record SeasonPlan(List<Integer> startQ, Cost cost, String how) {
    /** Copies the list. */
    public SeasonPlan {
        startQ = List.copyOf(startQ);
    }

    /** End of operation {@code operation} of {@code problem}, in quarters. */
    public int endQ(SeasonProblem problem, int operation) {
        return startQ.get(operation) + problem.operations().get(operation).lengthQ();
    }
}
