package sternwright.visit.sample;

import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import sternwright.visit.problem.BoatMonth;
import sternwright.visit.problem.Life;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.ServicePoint;
import sternwright.visit.problem.UseProfile;
import sternwright.visit.problem.VisitDemands;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitTariff;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkPhase;
import sternwright.visit.problem.WorkRules;

/**
 * Random boats for tests and measurements: the same seed gives the same boat. Amounts are whole units of money; every figure is
 * invented.
 */
public final class GeneratedBoats {
    /** Share of the year's running hours by calendar month, January first. */
    private static final double[] SHARE = {.01, .01, .03, .08, .13, .17, .20, .19, .11, .05, .01, .01};

    private static final int[] MONTHS = {6, 12, 12, 12, 24, 24, 36, 60};
    private static final int[] HOURS = {0, 0, 100, 200, 250, 500, 1000};
    private static final int[] CYCLES = {2, 3, 5};
    private static final int POINTS = 6;
    private static final YearMonth START = YearMonth.of(2026, 9);
    private static final Set<Month> ALL = EnumSet.allOf(Month.class);

    private final Random random;
    private final int horizon;
    private final UseProfile use;
    private final boolean winterAshore;
    private final VisitProblem problem;

    private GeneratedBoats(int works, int horizon, long seed) {
        random = new Random(seed);
        this.horizon = horizon;
        use = use(60 + random.nextInt(340), horizon);
        winterAshore = random.nextDouble() < 0.7;
        List<ServicePoint> points = new ArrayList<>();
        for (int g = 0; g < POINTS; g++) {
            points.add(new ServicePoint("service point " + g, 15 + random.nextInt(46)));
        }
        List<Work> list = new ArrayList<>();
        for (int j = 0; j < works; j++) {
            list.add(work(j));
        }
        problem = new VisitProblem(
                START,
                calendar(winterAshore, horizon),
                false,
                new VisitTariff(90, 30, 350),
                points,
                list,
                List.of(),
                VisitDemands.NONE);
    }

    /** A boat with so many works over 36 months. */
    public static VisitProblem boat(int works, long seed) {
        return boat(works, 36, seed);
    }

    /** A boat with so many works over a horizon in months. */
    public static VisitProblem boat(int works, int horizon, long seed) {
        return new GeneratedBoats(works, horizon, seed).problem;
    }

    /** Hours per month from hours per year, from September on. */
    public static UseProfile use(double hoursPerYear, int horizon) {
        List<Double> hours = new ArrayList<>();
        for (int t = 0; t < horizon; t++) {
            hours.add(hoursPerYear * SHARE[START.plusMonths(t).getMonthValue() - 1]);
        }
        return new UseProfile(hours);
    }

    /** Months from September on, ashore October to April if so agreed. */
    public static List<BoatMonth> calendar(boolean winterAshore, int horizon) {
        List<BoatMonth> months = new ArrayList<>();
        for (int t = 0; t < horizon; t++) {
            int m = START.plusMonths(t).getMonthValue();
            boolean paid = winterAshore && (m >= 10 || m <= 4);
            months.add(new BoatMonth(paid, !paid, true, 60, m >= 5 && m <= 8 ? 150 : 0));
        }
        return months;
    }

    private Work work(int index) {
        int months = MONTHS[random.nextInt(MONTHS.length)];
        int hours = HOURS[random.nextInt(HOURS.length)];
        double where = random.nextDouble();
        Set<Place> places = where < 0.35
                ? Set.of(Place.ASHORE)
                : where < 0.45 ? Set.of(Place.AFLOAT) : Set.of(Place.AFLOAT, Place.ASHORE);
        double when = random.nextDouble();
        Set<Month> season = season(when, months);
        int point = random.nextInt(POINTS);
        long cost = Math.round(20 * Math.exp(random.nextDouble() * Math.log(30)));
        double share = 0.2 + 0.6 * random.nextDouble();
        long risk = Math.max(2, Math.round(cost * (0.05 + 0.55 * random.nextDouble())));
        boolean hard = random.nextDouble() < 0.3;
        boolean lenient = season.size() < 12 || !places.contains(winterAshore ? Place.ASHORE : Place.AFLOAT);
        List<WorkPhase> phases = new ArrayList<>();
        int next = 0;
        if (random.nextDouble() < 0.25) {
            int n = CYCLES[random.nextInt(CYCLES.length)];
            next = random.nextInt(n);
            boolean ashore = random.nextDouble() < 0.5 && places.contains(Place.ASHORE);
            for (int k = 0; k < n - 1; k++) {
                phases.add(new WorkPhase(places, season, cost));
            }
            phases.add(new WorkPhase(ashore ? Set.of(Place.ASHORE) : places, season, Math.round(2.5 * cost)));
        } else {
            phases.add(new WorkPhase(places, season, cost));
        }
        double age = 0.95 * random.nextDouble();
        Life life = new Life(months, hours, age * months, age * hours, use);
        WorkRules rules = WorkRules.recurring(hard && !lenient ? 3 : 12, 0.35);
        return new Work("work " + index, point, life, phases, next, share, risk, rules);
    }

    private static Set<Month> season(double draw, int months) {
        if (months == 6 || draw >= 0.35) {
            return ALL;
        }
        return draw < 0.20
                ? EnumSet.of(Month.SEPTEMBER, Month.OCTOBER, Month.NOVEMBER)
                : EnumSet.of(Month.MARCH, Month.APRIL, Month.MAY);
    }

    /** The horizon in months. */
    public int horizon() {
        return horizon;
    }
}
