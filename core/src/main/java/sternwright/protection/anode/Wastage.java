package sternwright.protection.anode;

import java.util.List;
import java.util.Map;

/**
 * How a boat's anodes waste, month by month.
 *
 * @param months number of months computed
 * @param anodes by body
 */
public record Wastage(int months, Map<String, Course> anodes) {
    public Wastage {
        anodes = Map.copyOf(anodes);
    }

    /**
     * One anode.
     *
     * @param remaining share of the first mass left, at the start and at the end of each month
     * @param currentAtBerthA current at the berth in each month
     * @param halfGoneMonths months until half gone, with fraction; infinite where it lasts longer than computed
     * @param spentMonths months until its usable share is gone
     * @param renewals months at which it was renewed, where it was
     */
    public record Course(
            List<Double> remaining,
            List<Double> currentAtBerthA,
            double halfGoneMonths,
            double spentMonths,
            List<Double> renewals) {
        public Course {
            remaining = List.copyOf(remaining);
            currentAtBerthA = List.copyOf(currentAtBerthA);
            renewals = List.copyOf(renewals);
        }
    }
}
