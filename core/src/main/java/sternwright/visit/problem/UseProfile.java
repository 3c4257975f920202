package sternwright.visit.problem;

import java.util.List;

/**
 * Predicted running hours in each month of the horizon.
 *
 * @param hoursPerMonth hours run in month 0, 1, …; one figure for every month of the horizon, each 0 or more
 */
public record UseProfile(List<Double> hoursPerMonth) {
    public UseProfile {
        hoursPerMonth = List.copyOf(hoursPerMonth);
        for (double hours : hoursPerMonth) {
            if (!(hours >= 0)) {
                throw new IllegalArgumentException("hours in a month " + hours + ": expected 0 or more");
            }
        }
    }

    /** Hours run from the start of one month to the start of a later one. */
    public double between(int fromMonth, int toMonth) {
        double sum = 0;
        for (int m = fromMonth; m < toMonth; m++) {
            sum += hoursPerMonth.get(m);
        }
        return sum;
    }
}
