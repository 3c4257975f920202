package sternwright.protection.anode;

import java.util.HashMap;
import java.util.Map;
import sternwright.protection.register.BoatBody;

/** How long the boat's anodes last when all are new: the time from one renewal to the next. */
final class AsNew {
    /** Less than this share lost in all the time looked ahead says nothing. */
    private static final double NOTHING = 0.02;

    private static final double HALF = 0.5;

    private AsNew() {}

    /**
     * Months to half gone of each anode as new.
     *
     * @param problem the boat, calibrated; what is left of its anodes is not looked at
     * @param months how far ahead; an anode that lasts longer is reckoned on at the pace it has had
     * @return by body; an anode that loses next to nothing is left out
     */
    static Map<String, Double> months(WastageProblem problem, int months) {
        Wastage wastage =
                WastageSolver.solve(problem.from(problem.startMonth(), Map.of()), months, false, Outlook.TO_RENEWAL);
        Map<String, Double> lasts = new HashMap<>();
        for (BoatBody anode : problem.atBerth().anodes()) {
            Wastage.Course course = wastage.anodes().get(anode.id());
            if (course == null) {
                continue;
            }
            double lost = 1 - course.remaining().get(months);
            if (Double.isFinite(course.halfGoneMonths())) {
                lasts.put(anode.id(), course.halfGoneMonths());
            } else if (lost > NOTHING) {
                lasts.put(anode.id(), months * HALF / lost);
            }
        }
        return lasts;
    }
}
