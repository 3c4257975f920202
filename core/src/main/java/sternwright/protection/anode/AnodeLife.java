package sternwright.protection.anode;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.due.WearDate;
import sternwright.history.BoatHistory;
import sternwright.protection.register.BerthWater;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.register.CircuitFromRegister;

/**
 * Anode life of a boat from register and history: calibrated where its anodes were weighed, predicted where not.
 *
 * @param forecasts one for each anode
 * @param calibration the demand and how well it is known
 * @param stillFull anodes that lost almost nothing in their last weighed spell where they should have wasted
 * @param wastageRatios by anode, mass lost in its last weighed spell over what was foretold without any weighing
 */
public record AnodeLife(
        List<AnodeForecast> forecasts,
        DemandCalibration calibration,
        List<StillFull> stillFull,
        Map<String, Double> wastageRatios) {
    /** Months looked ahead. */
    public static final int MONTHS_AHEAD = 60;

    private static final double STILL_FULL = 0.95;
    private static final double SHOULD_HAVE_LOST = 0.12;

    /**
     * A full anode after a season.
     *
     * @param anode the anode
     * @param words what was weighed and what was to be expected, in one sentence
     */
    public record StillFull(BoatBody anode, String words) {}

    public AnodeLife {
        forecasts = List.copyOf(forecasts);
        stillFull = List.copyOf(stillFull);
        wastageRatios = Map.copyOf(wastageRatios);
    }

    /**
     * Computes the life of every anode from this month on.
     *
     * @param builder builds the circuits
     * @param boat the boat
     * @param berth where it lies
     * @param condition overrides, shore lead and age of the paint; the month is today's
     * @param year running hours and months afloat
     * @param history what was done and weighed
     * @param today the day
     */
    public static AnodeLife of(
            CircuitFromRegister builder,
            Boat boat,
            Berth berth,
            CircuitCondition condition,
            BoatYear year,
            BoatHistory history,
            LocalDate today) {
        CircuitCondition now = condition.in(today.getMonth());
        BoatCircuit rest = builder.build(boat, berth, now);
        WastageProblem problem = problem(rest, builder.build(boat, berth, now.underWay()), berth, now, year);
        AnodeLog log = AnodeLog.of(boat, rest, history, today);
        DemandCalibration calibration = calibration(problem, berth, log);
        Map<Weighing, Double> expected = new LinkedHashMap<>();
        lastOfEach(log.weighings()).values().forEach(w -> expected.put(w, expectedLoss(problem, w)));
        return new AnodeLife(
                forecasts(problem, calibration, log, from(log, today), Outlook.TO_THE_END),
                calibration,
                stillFull(rest, expected),
                ratios(expected));
    }

    /** What the weighing itself tells, in sentences. */
    public List<String> findings() {
        return stillFull.stream().map(StillFull::words).toList();
    }

    /**
     * Only the days of renewal, for the due list of many boats: the same days, for less work. They are the same on every day of a
     * month until something is written down of the boat.
     */
    public static Map<PartRef, WearDate> renewals(
            CircuitFromRegister builder,
            Boat boat,
            Berth berth,
            CircuitCondition condition,
            BoatYear year,
            BoatHistory history,
            LocalDate today) {
        CircuitCondition now = condition.in(today.getMonth());
        BoatCircuit rest = builder.build(boat, berth, now);
        if (rest.anodes().isEmpty()) {
            return Map.of();
        }
        WastageProblem problem = problem(rest, builder.build(boat, berth, now.underWay()), berth, now, year);
        AnodeLog log = AnodeLog.of(boat, rest, history, today);
        DemandCalibration calibration = calibration(problem, berth, log);
        return wearDates(forecasts(problem, calibration, log, from(log, today), Outlook.TO_RENEWAL));
    }

    /**
     * The day forecasts start on: the first of the month, or the last day on which something was known of an anode if that is later.
     * Wear is followed in whole months; starting on each day anew would only move the answers to and fro, though nothing has happened.
     */
    private static LocalDate from(AnodeLog log, LocalDate today) {
        LocalDate first = today.withDayOfMonth(1);
        return log.known().values().stream()
                .filter(d -> d.isAfter(first))
                .max(LocalDate::compareTo)
                .orElse(first);
    }

    private static DemandCalibration calibration(WastageProblem problem, Berth berth, AnodeLog log) {
        List<Weighing> spells = usable(log.weighings());
        return spells.isEmpty() ? DemandCalibration.none(berth.hotMarina()) : DemandCalibration.fit(problem, spells);
    }

    private static List<AnodeForecast> forecasts(
            WastageProblem problem, DemandCalibration calibration, AnodeLog log, LocalDate today, Outlook outlook) {
        WastageProblem calibrated = problem.with(calibration.demand(), calibration.loss());
        Map<LocalDate, Map<String, Double>> byDay = new HashMap<>();
        log.known()
                .forEach((body, day) -> byDay.computeIfAbsent(day, d -> new HashMap<>())
                        .put(body, log.left().getOrDefault(body, 1.0)));
        Map<String, Double> left = new HashMap<>();
        byDay.forEach((day, shares) -> left.putAll(wasted(calibrated, day, shares, today)));
        return AnodeForecast.of(problem.from(today.getMonthValue(), left), calibration, today, MONTHS_AHEAD, outlook);
    }

    /** The problem of a boat in its month. */
    public static WastageProblem problem(
            BoatCircuit rest, BoatCircuit run, Berth berth, CircuitCondition condition, BoatYear year) {
        List<BerthWater> water = BerthWater.year(berth, condition.overrides());
        double a = condition.overrides().getOrDefault("coating.a", CoatingBreakdown.CATEGORY_II.a());
        double b = condition.overrides().getOrDefault("coating.b-per-year", CoatingBreakdown.CATEGORY_II.bPerYear());
        return new WastageProblem(
                rest,
                run,
                water.stream().map(BerthWater::resistivityOhmM).toList(),
                water.stream().map(BerthWater::temperatureC).toList(),
                year,
                condition.month().getValue(),
                condition.coatingYears(),
                Double.POSITIVE_INFINITY,
                new CoatingBreakdown(a, b),
                Map.of(),
                1,
                1);
    }

    /** Shares left today of anodes known on one day some time ago. */
    private static Map<String, Double> wasted(
            WastageProblem problem, LocalDate day, Map<String, Double> shares, LocalDate today) {
        int whole = (int) Math.min(MONTHS_AHEAD, Math.round(ChronoUnit.DAYS.between(day, today) / 30.4375));
        if (whole == 0) {
            return shares;
        }
        Wastage since = WastageSolver.solve(problem.from(day.getMonthValue(), shares), whole, false);
        Map<String, Double> left = new HashMap<>();
        shares.forEach((body, share) -> {
            Wastage.Course course = since.anodes().get(body);
            left.put(body, course == null ? share : course.remaining().get(whole));
        });
        return left;
    }

    /** An anode that lost nothing is not connected: its weighing says nothing of the demand. */
    private static List<Weighing> usable(List<Weighing> all) {
        return all.stream().filter(w -> w.lost() > 0.02 && w.leftAfter() > 0.1).toList();
    }

    private static Map<String, Weighing> lastOfEach(List<Weighing> weighings) {
        Map<String, Weighing> last = new LinkedHashMap<>();
        weighings.forEach(w -> last.put(w.body(), w));
        return last;
    }

    private static Map<String, Double> ratios(Map<Weighing, Double> expected) {
        Map<String, Double> ratios = new HashMap<>();
        expected.forEach((w, share) -> {
            if (share > SHOULD_HAVE_LOST / 2) {
                ratios.put(w.body(), w.lost() / share);
            }
        });
        return ratios;
    }

    /** Share of its mass that an anode should have lost in a spell by the drawing board. */
    private static double expectedLoss(WastageProblem problem, Weighing w) {
        Double mass = problem.atBerth().body(w.body()).massKg();
        WastageProblem then = problem.from(w.from().getMonthValue(), Map.of(w.body(), w.leftBefore()));
        return DemandCalibration.lost(then, List.of(w)) / (mass == null ? 1 : mass);
    }

    /** The last spell of each anode in which it lost almost nothing where it should have wasted. */
    private static List<StillFull> stillFull(BoatCircuit boat, Map<Weighing, Double> expected) {
        List<StillFull> findings = new ArrayList<>();
        expected.forEach((w, share) -> {
            if (w.leftAfter() >= STILL_FULL * w.leftBefore() && share > SHOULD_HAVE_LOST) {
                BoatBody anode = boat.body(w.body());
                findings.add(new StillFull(
                        anode,
                        "The " + anode.name() + " has lost almost nothing in " + Math.round(w.months()) + " months ("
                                + Math.round(100 * w.leftBefore()) + " % then, " + Math.round(100 * w.leftAfter())
                                + " % on " + w.to() + ") where about " + Math.round(100 * share)
                                + " % of a new one should have gone: it is not connected, or is painted over."));
            }
        });
        return findings;
    }

    /** Days of renewal for the due list: half gone, with the 80 % range. */
    public Map<PartRef, WearDate> wearDates() {
        return wearDates(forecasts);
    }

    private static Map<PartRef, WearDate> wearDates(List<AnodeForecast> forecasts) {
        Map<PartRef, WearDate> dates = new HashMap<>();
        for (AnodeForecast f : forecasts) {
            PartRef ref = f.body().ref();
            LocalDate half = f.halfGone();
            if (ref != null && half != null) {
                LocalDate early = f.early80();
                dates.put(
                        ref, new WearDate(half, early == null ? half : early, latest(f), f.newLastsMonths(), f.how()));
            }
        }
        return dates;
    }

    private static LocalDate latest(AnodeForecast f) {
        @Nullable LocalDate late = f.late80();
        return late == null ? f.from().plusMonths(MONTHS_AHEAD) : late;
    }
}
