package sternwright.visit.problem;

import java.util.List;

/**
 * A set of visits and what is done in each, with its price and the proof of how good it is.
 *
 * @param visits in order of month, ashore before afloat
 * @param doings every step of every work, by work and month
 * @param hauledMonths months ashore that are not paid already, in order
 * @param lifts lifts not paid already
 * @param cost cost by cause
 * @param proof bound and status
 */
public record VisitPlan(
        List<MonthVisit> visits, List<Doing> doings, List<Integer> hauledMonths, int lifts, CostSplit cost, Proof proof)
        implements VisitAnswer {
    public VisitPlan {
        visits = List.copyOf(visits);
        doings = List.copyOf(doings);
        hauledMonths = List.copyOf(hauledMonths);
    }

    /** How far the plan may be above the cheapest, as a share of its cost: 0 when it is proven optimal. */
    public double gap() {
        long total = cost.total();
        return total <= 0 ? 0 : Math.max(0, (total - proof.boundCents()) / (double) total);
    }
}
