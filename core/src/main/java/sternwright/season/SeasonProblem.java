package sternwright.season;

import java.util.List;

/**
 * A season to plan, in the lean form that the planners eat: names for people, indices and quarters for the sums.
 *
 * @param yard what the yard has
 * @param visits visits of boats
 * @param halves parts of visits that are planned as one
 * @param operations the work
 * @param lags distances between operations
 * @param stays boats on hard standing
 * @param promises dates already given
 * @param weights what lateness of promises, overtime and unevenness cost
 */
public record SeasonProblem(
        Yard yard,
        List<Visit> visits,
        List<Half> halves,
        List<Operation> operations,
        List<Lag> lags,
        List<Stay> stays,
        List<Promise> promises,
        Weights weights) {
    /** Copies the lists. */
    public SeasonProblem {
        visits = List.copyOf(visits);
        halves = List.copyOf(halves);
        operations = List.copyOf(operations);
        lags = List.copyOf(lags);
        stays = List.copyOf(stays);
        promises = List.copyOf(promises);
    }

    /** Name of the boat on which operation {@code operation} is done. */
    public String boatOf(int operation) {
        return visits.get(halves.get(operations.get(operation).half()).visit()).boat();
    }

    /** Boat and work in one phrase, for messages: "Teal: lift". */
    public String phrase(int operation) {
        return boatOf(operation) + ": " + operations.get(operation).name();
    }

    /** The same season in another yard. */
    public SeasonProblem in(Yard other) {
        return new SeasonProblem(other, visits, halves, operations, lags, stays, promises, weights);
    }

    /** The same season with other operations, which must keep their order. */
    public SeasonProblem operations(List<Operation> others) {
        return new SeasonProblem(yard, visits, halves, others, lags, stays, promises, weights);
    }

    /** The same season with other promises. */
    public SeasonProblem promising(List<Promise> others) {
        return new SeasonProblem(yard, visits, halves, operations, lags, stays, others, weights);
    }
}
