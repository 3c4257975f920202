package sternwright.visit;

import java.util.List;
import sternwright.due.Due;
import sternwright.measure.Money;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.problem.Proof;
import sternwright.visit.problem.VisitPlan;

/**
 * The visits of one boat with their proof.
 *
 * @param boatId the boat
 * @param visits in order of time
 * @param planningCost what the plan minimises: prices, loss of use, risk and life, without tax
 * @param split that cost by cause
 * @param bound no plan can cost less than this
 * @param gap how far the plan may be above the cheapest, as a share of its cost
 * @param proof status, time and branches
 * @param refused safety items and others the owner refused by signature; they are in no visit
 * @param notes what was assumed, in words
 * @param lean the plan in months and indices
 */
public record BoatPlan(
        String boatId,
        List<PlannedVisit> visits,
        Money planningCost,
        List<PriceLine> split,
        Money bound,
        double gap,
        Proof proof,
        List<Due> refused,
        List<String> notes,
        VisitPlan lean)
        implements BoatAnswer {
    /** Copies the lists. */
    public BoatPlan {
        visits = List.copyOf(visits);
        split = List.copyOf(split);
        refused = List.copyOf(refused);
        notes = List.copyOf(notes);
    }

    /**
     * What the owner pays for all visits.
     *
     * @return price without tax; zero currency units where nothing is due
     */
    public Money net() {
        Money sum = Money.zero(planningCost.currency());
        for (PlannedVisit v : visits) {
            sum = sum.plus(v.net());
        }
        return sum;
    }
}
