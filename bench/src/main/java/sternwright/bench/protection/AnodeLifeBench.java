package sternwright.bench.protection;

import java.time.Month;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import sternwright.boat.Berth;
import sternwright.boat.ShorePower;
import sternwright.protection.anode.AnodeLife;
import sternwright.protection.anode.BoatYear;
import sternwright.protection.anode.WastageProblem;
import sternwright.protection.anode.WastageSolver;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.register.CircuitFromRegister;

/**
 * Five years of monthly anode life for many boats, at the berth and under way, from the register on; ngspice's time for as many solves of
 * such circuits, measured in the same run, stands beside it.
 *
 * <p>Command: {@code bench/run anode-life [boats]}.
 */
public final class AnodeLifeBench {
    private static final int MONTHS = 60;

    private AnodeLifeBench() {}

    /**
     * Runs the measurement.
     *
     * @param args number of boats, 1,000 if not given
     */
    public static void main(String[] args) {
        int boats = args.length > 0 ? Integer.parseInt(args[0]) : 1000;
        run(Math.min(boats, 200));
        long start = System.nanoTime();
        double renewals = run(boats);
        double seconds = (System.nanoTime() - start) * 1e-9;
        System.out.printf(
                "%d boats, %d months, berth and under way: %.2f s on %d cores (goal 10 s for 1,000); %.1f renewals a boat%n",
                boats, MONTHS, seconds, Runtime.getRuntime().availableProcessors(), renewals / boats);
        BoatCircuit one = BenchBoats.builder()
                .build(BenchBoats.boat(0), BenchBoats.berth(ShorePower.EARTHED), CircuitCondition.atBerth(Month.APRIL));
        OptionalDouble peer = Ngspice.secondsASolve(one.circuit(), 300);
        if (peer.isPresent()) {
            double all = peer.getAsDouble() * boats * MONTHS * 2;
            System.out.printf(
                    "ngspice for as many solves of a twin-drive circuit: %.1f s, %.0f times%n", all, all / seconds);
        } else {
            System.out.println("ngspice is not installed: no ratio");
        }
    }

    /** Number of renewals over all boats. */
    private static double run(int boats) {
        CircuitFromRegister builder = BenchBoats.builder();
        CircuitCondition april = CircuitCondition.atBerth(Month.APRIL);
        BoatYear year = new BoatYear(Collections.nCopies(12, 8.0), Collections.nCopies(12, 1.0));
        return IntStream.range(0, boats)
                .parallel()
                .mapToDouble(n -> {
                    Berth berth = BenchBoats.berth(n % 3 == 0 ? ShorePower.EARTHED : ShorePower.GALVANIC_ISOLATOR);
                    BoatCircuit rest = builder.build(BenchBoats.boat(n), berth, april);
                    BoatCircuit run = builder.build(BenchBoats.boat(n), berth, april.underWay());
                    WastageProblem problem = AnodeLife.problem(rest, run, berth, april, year);
                    return WastageSolver.solve(problem, MONTHS, true).anodes().values().stream()
                            .map(c -> c.renewals())
                            .mapToInt(List::size)
                            .sum();
                })
                .sum();
    }
}
