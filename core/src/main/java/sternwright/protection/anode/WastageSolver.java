package sternwright.protection.anode;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.protection.circuit.Body;
import sternwright.protection.metal.AnodeAlloy;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;

/**
 * Steps a boat's anodes through the months: solves the circuit at the berth and under way, weighs both by their hours, takes the charge
 * from the anodes' mass, shrinks them, ages the paint.
 *
 * <p>An anode shrinks in its own shape: area goes with mass to the power 2/3, resistance to the water with mass to the power -1/3. Mass is
 * lost by the larger of the current given over the practical capacity and the dissolving current over Faraday's; the second is what
 * wastes magnesium that gives nothing. Within a step the mass is taken half a step ahead by the last step's loss, which makes the
 * method of second order without further solving.
 */
public final class WastageSolver {
    /** Usable share of a short flush anode (DNV-RP-B401, Table 10-8). */
    public static final double UTILISATION = 0.80;

    private static final double HALF = 0.5;
    private static final double GONE_AREA = 1e-6;

    private final WastageProblem problem;
    private final boolean renewAtHalf;
    private final List<BoatBody> anodes;
    private final Map<String, AnodeState> states = new HashMap<>();
    private final Condition berth;
    private final Condition running;

    private WastageSolver(WastageProblem problem, boolean renewAtHalf) {
        this.problem = problem;
        this.renewAtHalf = renewAtHalf;
        anodes = problem.atBerth().anodes();
        for (BoatBody a : anodes) {
            states.put(a.id(), new AnodeState(a, problem.remaining().getOrDefault(a.id(), 1.0)));
        }
        berth = new Condition(problem.atBerth(), problem.demand());
        running = new Condition(problem.underWay(), problem.demand());
    }

    /**
     * Computes the wastage.
     *
     * @param problem the boat
     * @param months how far ahead
     * @param renewAtHalf whether an anode is renewed when half gone; else it wastes until spent
     */
    public static Wastage solve(WastageProblem problem, int months, boolean renewAtHalf) {
        return solve(problem, months, renewAtHalf, Outlook.TO_THE_END);
    }

    /** The same, with the circuit solved only as long as an anode is to be followed; after that masses stand still. */
    static Wastage solve(WastageProblem problem, int months, boolean renewAtHalf, Outlook outlook) {
        WastageSolver solver = new WastageSolver(problem, renewAtHalf);
        for (int m = 0; m < months; m++) {
            if (renewAtHalf || solver.anyLeft(outlook.until())) {
                solver.month(m);
            } else {
                int rest = m;
                solver.states.values().forEach(s -> s.step(0, 0, rest));
            }
        }
        Map<String, Wastage.Course> courses = new HashMap<>();
        solver.states.forEach((id, s) -> courses.put(id, s.course()));
        return new Wastage(months, courses);
    }

    private boolean anyLeft(double until) {
        return states.values().stream().anyMatch(s -> s.left > until);
    }

    private void month(int m) {
        int calendar = Math.floorMod(problem.startMonth() - 1 + m, 12);
        double age = (problem.coatingYears() + m / 12.0) % problem.repaintEveryYears();
        double bare = problem.breakdown().at(age);
        double rho = problem.resistivityOhmM().get(calendar);
        double restHours = problem.year().berthHours(calendar);
        double runHours = Math.min(
                problem.year().runningHours().get(calendar),
                BoatYear.HOURS_A_MONTH * problem.year().afloatShare().get(calendar));
        CircuitState rest = restHours > 0 ? berth.solve(rho, bare, states) : null;
        CircuitState run = runHours > 0 ? running.solve(rho, bare, states) : null;
        double temperature = problem.temperatureC().get(calendar);
        for (AnodeState s : states.values()) {
            double lost = (rest == null ? 0 : s.lossKgPerHour(rest, temperature) * restHours)
                    + (run == null ? 0 : s.lossKgPerHour(run, temperature) * runHours);
            s.step(lost, rest == null ? 0 : rest.body(s.body.id()).currentA(), m);
        }
    }

    /** One anode on its way. */
    private final class AnodeState {
        private final BoatBody body;
        private final AnodeAlloy alloy;
        private final double massKg;
        private double left;
        private double lastLoss;
        private double halfGone = Double.POSITIVE_INFINITY;
        private double spent = Double.POSITIVE_INFINITY;
        private final List<Double> remaining = new ArrayList<>();
        private final List<Double> current = new ArrayList<>();
        private final List<Double> renewals = new ArrayList<>();

        AnodeState(BoatBody body, double left) {
            this.body = body;
            AnodeAlloy given = body.metal().alloy();
            Double mass = body.massKg();
            if (given == null || mass == null || !(mass > 0)) {
                throw new IllegalArgumentException(
                        "anode " + body.id() + " has no mass: write mass-kg of the new anode into the boat's file");
            }
            alloy = given;
            massKg = mass;
            this.left = left;
            remaining.add(left);
            if (left <= HALF) {
                halfGone = 0;
            }
            if (left <= 1 - UTILISATION) {
                spent = 0;
            }
        }

        /** Share of the mass in the middle of the coming step. */
        double middle() {
            return left <= 1 - UTILISATION ? 0 : Math.max(1 - UTILISATION, left - lastLoss / 2);
        }

        double lossKgPerHour(CircuitState state, double temperatureC) {
            double given = Math.max(0, state.body(body.id()).currentA()) / alloy.capacityAhPerKg(temperatureC);
            double dissolved = state.body(body.id()).anodicCurrentA() / alloy.theoreticalAhPerKg();
            return Math.max(given, dissolved) * problem.loss();
        }

        void step(double lostKg, double currentA, int month) {
            double loss = left <= 1 - UTILISATION ? 0 : lostKg / massKg;
            double next = Math.max(0, left - loss);
            if (halfGone == Double.POSITIVE_INFINITY && next <= HALF && loss > 0) {
                halfGone = month + (left - HALF) / loss;
            }
            if (spent == Double.POSITIVE_INFINITY && next <= 1 - UTILISATION && loss > 0) {
                spent = month + (left - (1 - UTILISATION)) / loss;
            }
            if (renewAtHalf && next <= HALF) {
                renewals.add(month + (loss > 0 ? Math.max(0, (left - HALF) / loss) : 0));
                next = 1 - Math.max(0, HALF - next);
            }
            lastLoss = loss;
            left = next;
            remaining.add(next);
            current.add(currentA);
        }

        Wastage.Course course() {
            return new Wastage.Course(remaining, current, halfGone, spent, renewals);
        }
    }

    /** The circuit at the berth or under way, with its last state to start from. */
    private static final class Condition {
        private final BoatCircuit boat;
        private final List<Body> base;
        private final CircuitSolver solver;
        private final double[] area;
        private final double[] ohm;
        private @Nullable CircuitState last;

        Condition(BoatCircuit boat, double demand) {
            this.boat = boat;
            solver = new CircuitSolver(demand == 1 ? boat.circuit() : Demand.times(boat, demand));
            base = solver.circuit().bodies();
            area = new double[base.size()];
            ohm = new double[base.size()];
        }

        CircuitState solve(double rho, double bare, Map<String, AnodeState> anodes) {
            double scale = rho / boat.water().resistivityOhmM();
            for (int n = 0; n < area.length; n++) {
                Body b = base.get(n);
                AnodeState anode = anodes.get(b.id());
                if (anode == null) {
                    double coated = boat.bodies().get(n).coatedShare();
                    area[n] = b.areaM2() * (coated > 0 ? 1 - coated + coated * bare : b.bareFraction());
                    ohm[n] = b.waterOhm() * scale;
                } else {
                    double m = anode.middle();
                    area[n] = b.bareAreaM2() * (m > 0 ? Math.cbrt(m * m) : GONE_AREA);
                    ohm[n] = b.waterOhm() * scale / Math.cbrt(Math.max(m, 0.01));
                }
            }
            CircuitSolver now = solver.adjusted(area, ohm, scale);
            CircuitState state = last == null ? now.solve() : now.solve(last);
            last = state;
            return state;
        }
    }
}
