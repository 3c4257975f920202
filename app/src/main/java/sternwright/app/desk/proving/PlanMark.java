package sternwright.app.desk.proving;

import java.util.Locale;
import java.util.stream.Collectors;
import sternwright.visit.BoatPlan;
import sternwright.visit.planned.PlannedVisit;

/** A short mark of a plan: plans of the same works in the same visits have the same one, on every machine. */
public final class PlanMark {
    private PlanMark() {}

    /**
     * The mark.
     *
     * @param plan the plan
     * @return up to eight letters and figures, as they can stand in an address
     */
    public static String of(BoatPlan plan) {
        return Integer.toHexString(plan.visits().stream()
                .map(PlanMark::words)
                .collect(Collectors.joining("\n"))
                .hashCode());
    }

    private static String words(PlannedVisit visit) {
        return visit.works().stream()
                .map(w -> w.part() + ":" + w.inForce().rule().id())
                .sorted()
                .collect(Collectors.joining(
                        " ", visit.from() + " " + visit.place().name().toLowerCase(Locale.ROOT) + " ", ""));
    }
}
