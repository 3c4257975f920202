package sternwright.protection.anode;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sternwright.protection.register.BoatBody;

/**
 * The demand of a boat fitted to its weighed anodes.
 *
 * <p>Before any weighing, wastage is foretold with an 80 % range of about a factor 2 either way: most of it is the oxygen demand, which
 * scales the current of a boat by itself, the rest is loss that demand does not explain (resistances, a marina on the shore earth).
 * Both are lognormal. Each spell of weighing pulls the demand towards the value at which the computed loss of all anodes weighed equals
 * the measured one; what a demand of a quarter to four cannot explain goes to the loss.
 *
 * @param demand median factor on the oxygen limits
 * @param logSpread standard deviation of its logarithm for the coming year
 * @param loss median factor on the mass lost
 * @param lossSpread standard deviation of its logarithm
 * @param spells number of spells it rests on
 */
public record DemandCalibration(double demand, double logSpread, double loss, double lossSpread, int spells) {
    /** Standard deviation of the logarithm of wastage before any weighing: an 80 % range of a factor of two and a bit. */
    private static final double UNMEASURED = 0.58;

    /** Share of the spread that lies in the demand; the rest in the loss, for boats whose current hangs on resistances. */
    private static final double OF_DEMAND = 0.43;

    private static final double PRIOR_DEMAND = 0.48;
    private static final double PRIOR_LOSS = 0.25;
    private static final double OF_ONE_SPELL = 0.25;
    private static final double YEAR_TO_YEAR = 0.2;
    private static final double LARGEST_DEMAND = 4;
    private static final double LARGEST_LOSS = 6;
    private static final int ROUNDS = 8;
    private static final double CLOSE = 0.02;
    private static final int SPELLS_USED = 4;

    /** A spell in which less than this share of new anodes was to be expected tells nothing of the demand. */
    private static final double LEAST_FORETOLD = 0.005;

    private static final double NORMAL_80 = 1.2816;

    /** Wastage in a hot marina before any weighing: half the interval (common practice, no source). */
    private static final double HOT_MARINA_LOSS = 2;

    /** What is known without any weighing, in a hot marina or not. */
    public static DemandCalibration none(boolean hotMarina) {
        DemandCalibration plain = none();
        return hotMarina ? new DemandCalibration(1, plain.logSpread, HOT_MARINA_LOSS, plain.lossSpread, 0) : plain;
    }

    /** What is known without any weighing. */
    public static DemandCalibration none() {
        return new DemandCalibration(1, OF_DEMAND * UNMEASURED, 1, (1 - OF_DEMAND) * UNMEASURED, 0);
    }

    /** Demand at the lower end of the 80 % range: anodes last longest. */
    public double low() {
        return demand * Math.exp(-NORMAL_80 * logSpread);
    }

    /** Demand at the upper end of the 80 % range: anodes go soonest. */
    public double high() {
        return demand * Math.exp(NORMAL_80 * logSpread);
    }

    /** Loss to go with {@link #low}. */
    public double lowLoss() {
        return loss * Math.exp(-NORMAL_80 * lossSpread);
    }

    /** Loss to go with {@link #high}. */
    public double highLoss() {
        return loss * Math.exp(NORMAL_80 * lossSpread);
    }

    /** Fits the demand to the latest weighings; those of one spell count together. */
    public static DemandCalibration fit(WastageProblem problem, List<Weighing> weighings) {
        Map<List<LocalDate>, List<Weighing>> spells = new LinkedHashMap<>();
        for (Weighing w : weighings) {
            spells.computeIfAbsent(List.of(w.from(), w.to()), k -> new ArrayList<>())
                    .add(w);
        }
        if (spells.isEmpty()) {
            return none();
        }
        List<List<Weighing>> latest = List.copyOf(spells.values());
        latest = latest.subList(Math.max(0, latest.size() - SPELLS_USED), latest.size());
        double each = 1 / (OF_ONE_SPELL * OF_ONE_SPELL);
        double demandPrecision = 1 / (PRIOR_DEMAND * PRIOR_DEMAND);
        double lossPrecision = 1 / (PRIOR_LOSS * PRIOR_LOSS);
        double demand = 0;
        double loss = 0;
        int counted = 0;
        for (List<Weighing> spell : latest) {
            double k = demandOf(problem, spell);
            double foretold = lost(before(problem, spell).withDemand(k), spell);
            if (foretold < LEAST_FORETOLD * newKg(problem, spell)) {
                continue;
            }
            demandPrecision += each;
            counted++;
            lossPrecision += each;
            demand += Math.log(k) * each;
            double ratio = measuredKg(problem, spell) / foretold;
            loss += Math.log(Math.max(1 / LARGEST_LOSS, Math.min(LARGEST_LOSS, ratio))) * each;
        }
        double spread = Math.sqrt(1 / demandPrecision + YEAR_TO_YEAR * YEAR_TO_YEAR);
        return new DemandCalibration(
                Math.exp(demand / demandPrecision),
                OF_DEMAND * spread,
                Math.exp(loss / lossPrecision),
                (1 - OF_DEMAND) * spread,
                counted);
    }

    private static double newKg(WastageProblem problem, List<Weighing> spell) {
        return spell.stream().mapToDouble(w -> massKg(problem, w.body())).sum();
    }

    private static double measuredKg(WastageProblem problem, List<Weighing> spell) {
        double measured = 0;
        for (Weighing w : spell) {
            measured += w.lost() * massKg(problem, w.body());
        }
        return measured;
    }

    private static WastageProblem before(WastageProblem problem, List<Weighing> spell) {
        Map<String, Double> left = new HashMap<>();
        spell.forEach(w -> left.put(w.body(), w.leftBefore()));
        return problem.from(spell.get(0).from().getMonthValue(), left);
    }

    /** Demand at which the anodes of a spell lose together what they lost. */
    private static double demandOf(WastageProblem problem, List<Weighing> spell) {
        double measured = measuredKg(problem, spell);
        WastageProblem then = before(problem, spell);
        double most = Math.log(LARGEST_DEMAND);
        double x = 0;
        // Loss goes nearly in proportion to demand, so stepping by the ratio in logarithms converges in a few rounds.
        for (int n = 0; n < ROUNDS; n++) {
            double ratio = measured / Math.max(1e-12, lost(then.withDemand(Math.exp(x)), spell));
            double next = Math.max(-most, Math.min(most, x + Math.log(Math.max(1e-6, ratio))));
            if (Math.abs(next - x) < CLOSE) {
                return Math.exp(next);
            }
            x = next;
        }
        return Math.exp(x);
    }

    /** Mass that the anodes of a spell lose in it, kg, as computed. */
    static double lost(WastageProblem problem, List<Weighing> spell) {
        double months = spell.get(0).months();
        Wastage wastage = WastageSolver.solve(problem, (int) Math.ceil(months), false);
        double sum = 0;
        for (Weighing w : spell) {
            Wastage.Course course = wastage.anodes().get(w.body());
            if (course != null) {
                sum += (w.leftBefore() - at(course.remaining(), months)) * massKg(problem, w.body());
            }
        }
        return sum;
    }

    private static double at(List<Double> remaining, double months) {
        int whole = Math.min((int) months, remaining.size() - 1);
        int next = Math.min(whole + 1, remaining.size() - 1);
        return remaining.get(whole) + (months - whole) * (remaining.get(next) - remaining.get(whole));
    }

    private static double massKg(WastageProblem problem, String body) {
        BoatBody anode = problem.atBerth().body(body);
        Double mass = anode.massKg();
        return mass == null ? 0 : mass;
    }
}
