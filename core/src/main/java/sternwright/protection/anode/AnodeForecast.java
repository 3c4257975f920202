package sternwright.protection.anode;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.protection.register.BoatBody;

/**
 * When an anode is half gone and when it is spent.
 *
 * @param body the anode
 * @param from the day the forecast starts
 * @param remainingNow share of the new mass on that day
 * @param halfGone median day on which it is half gone, null where later than computed
 * @param early80 lower end of the 80 % range
 * @param late80 upper end, null where later than computed
 * @param spent median day on which its usable share is gone, null where later
 * @param newLastsMonths months that a new one of its kind lasts to half gone on this boat, fitted on the same day; null where it would lose
 *     next to nothing in the time looked ahead
 * @param meanCurrentA mean current at the berth over the first year, A
 * @param median share left at the end of each month, the start first
 * @param fast the same at the high end of the demand
 * @param slow the same at the low end
 * @param how in words: predicted or measured, and from what
 */
public record AnodeForecast(
        BoatBody body,
        LocalDate from,
        double remainingNow,
        @Nullable LocalDate halfGone,
        @Nullable LocalDate early80,
        @Nullable LocalDate late80,
        @Nullable LocalDate spent,
        @Nullable Double newLastsMonths,
        double meanCurrentA,
        List<Double> median,
        List<Double> fast,
        List<Double> slow,
        String how) {
    private static final double DAYS_A_MONTH = 30.4375;

    public AnodeForecast {
        median = List.copyOf(median);
        fast = List.copyOf(fast);
        slow = List.copyOf(slow);
    }

    /**
     * Forecasts every anode of a boat from a day on.
     *
     * @param problem the boat; its start month is that of the day
     * @param calibration demand and its spread
     * @param from the day
     * @param months how far ahead
     * @param outlook how far each anode is followed
     */
    public static List<AnodeForecast> of(
            WastageProblem problem, DemandCalibration calibration, LocalDate from, int months, Outlook outlook) {
        Wastage median = course(problem.with(calibration.demand(), calibration.loss()), months, outlook);
        Wastage fast = course(problem.with(calibration.high(), calibration.highLoss()), months, outlook);
        Wastage slow = course(problem.with(calibration.low(), calibration.lowLoss()), months, outlook);
        Map<String, Double> asNew = AsNew.months(problem.with(calibration.demand(), calibration.loss()), months);
        List<AnodeForecast> list = new ArrayList<>();
        for (BoatBody anode : problem.atBerth().anodes()) {
            Wastage.Course m = course(median, anode);
            list.add(new AnodeForecast(
                    anode,
                    from,
                    m.remaining().get(0),
                    date(from, m.halfGoneMonths()),
                    date(from, course(fast, anode).halfGoneMonths()),
                    date(from, course(slow, anode).halfGoneMonths()),
                    date(from, m.spentMonths()),
                    asNew.get(anode.id()),
                    mean(m.currentAtBerthA()),
                    m.remaining(),
                    course(fast, anode).remaining(),
                    course(slow, anode).remaining(),
                    how(calibration)));
        }
        return list;
    }

    private static Wastage course(WastageProblem problem, int months, Outlook outlook) {
        return WastageSolver.solve(problem, months, false, outlook);
    }

    private static Wastage.Course course(Wastage wastage, BoatBody anode) {
        Wastage.Course course = wastage.anodes().get(anode.id());
        if (course == null) {
            throw new IllegalStateException("no course of " + anode.id());
        }
        return course;
    }

    private static double mean(List<Double> current) {
        return current.stream().limit(12).mapToDouble(c -> c).average().orElse(0);
    }

    private static @Nullable LocalDate date(LocalDate from, double months) {
        return Double.isInfinite(months) ? null : from.plusDays(Math.round(months * DAYS_A_MONTH));
    }

    private static String how(DemandCalibration calibration) {
        if (calibration.spells() == 0) {
            return "predicted from the boat's metals, areas and water; good to a factor of two until its own anodes have been weighed"
                    + (calibration.loss() > 1 ? "; twice as fast in a hot marina" : "");
        }
        return String.format(
                Locale.ROOT,
                "measured: by %d weighing%s of its own anodes, wear is %.2f of what metals and water alone foretell",
                calibration.spells(),
                calibration.spells() == 1 ? "" : "s",
                calibration.demand());
    }
}
