package sternwright.bench.protection;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import sternwright.app.files.circuit.CircuitFile;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.Reaction;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;

/**
 * The reference network of 20 bodies, cold and as a list of faults from a warm start, beside ngspice in the same run on one core each;
 * then the growth to 10,000 bodies.
 *
 * <p>Command: {@code bench/run circuit [file]}.
 */
public final class CircuitBench {
    private static final String FILE = "core/src/test/resources/reference/protection/circuits/12-random-20.json";
    private static double sink;

    private CircuitBench() {}

    /**
     * Runs the measurement.
     *
     * @param args a circuit file; left out the reference network of 20 bodies, seen from the repository's root
     */
    public static void main(String[] args) {
        Circuit circuit =
                CircuitFile.read(Path.of(args.length > 0 ? args[0] : FILE)).circuit();
        OptionalDouble peer = Ngspice.secondsASolve(circuit, 1000);
        double cold = cold(circuit);
        System.out.printf(
                "%d bodies, %d links, one thread%n",
                circuit.bodies().size(), circuit.links().size());
        System.out.printf(
                "cold start        %7.2f us a solve; %s   (goal 50 times)%n", cold * 1e6, Ngspice.ratio(peer, cold));
        double warm = faults(circuit, false);
        System.out.printf(
                "fault list, warm  %7.2f us a solve; %s   (goal 150 times)%n", warm * 1e6, Ngspice.ratio(peer, warm));
        double built = faults(circuit, true);
        System.out.printf(
                "fault list, circuit built anew each time %7.2f us; %s%n", built * 1e6, Ngspice.ratio(peer, built));
        growth();
        if (Double.isNaN(sink)) {
            throw new IllegalStateException("no numbers came out");
        }
    }

    private static double cold(Circuit circuit) {
        CircuitSolver solver = new CircuitSolver(circuit);
        return best(() -> {
            for (int i = 0; i < 5000; i++) {
                sink += solver.solve().body(0).metalV();
            }
            return 5000;
        });
    }

    /** Each link opened in turn, started from the sound state. */
    private static double faults(Circuit circuit, boolean anew) {
        CircuitState sound = CircuitSolver.solve(circuit);
        List<Circuit> faulty = circuit.links().stream()
                .map(l -> circuit.withLink(new Link.OpenJoint(l.id(), l.a(), l.b())))
                .toList();
        List<CircuitSolver> solvers = faulty.stream().map(CircuitSolver::new).toList();
        return best(() -> {
            for (int i = 0; i < 200; i++) {
                for (int k = 0; k < faulty.size(); k++) {
                    CircuitSolver solver = anew ? new CircuitSolver(faulty.get(k)) : solvers.get(k);
                    sink += solver.solve(sound).residualA();
                }
            }
            return 200 * faulty.size();
        });
    }

    private static void growth() {
        System.out.println("bodies   prepare ms   solve ms   us a body   ngspice ms a solve");
        for (int n : new int[] {100, 1000, 10_000}) {
            Circuit chain = chain(n);
            double prepare = best(() -> {
                sink += new CircuitSolver(chain).circuit().bodies().size();
                return 1;
            });
            CircuitSolver solver = new CircuitSolver(chain);
            double solve = best(() -> {
                sink += solver.solve().residualA();
                return 1;
            });
            OptionalDouble peer = n > 1000 ? OptionalDouble.empty() : Ngspice.secondsASolve(chain, n > 100 ? 3 : 30);
            String spice = peer.isEmpty() ? "-" : String.format(Locale.ROOT, "%.1f", peer.getAsDouble() * 1e3);
            System.out.printf(
                    "%6d %12.2f %10.2f %11.2f   %s%n",
                    n, prepare * 1e3, solve * 1e3, (prepare + solve) * 1e6 / n, spice);
        }
    }

    /** Bodies bonded to one of the three before them, every tenth an anode. */
    static Circuit chain(int n) {
        SplittableRandom random = new SplittableRandom(7);
        List<Body> bodies = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int b = 0; b < n; b++) {
            double free = b % 10 == 0 ? -1.05 : -0.65;
            List<Reaction> curve = List.of(
                    Reaction.anodic(free, 0.05, 0.05),
                    Reaction.cathodic(free, 0.1, 0.12, 0.15),
                    Reaction.cathodic(-1.0, 0.003, 0.12, Reaction.NO_LIMIT));
            bodies.add(new Body("b" + b, "metal", 0.1, 1, 0.2, curve));
            if (b > 0) {
                int other = b - 1 - random.nextInt(Math.min(b, 3));
                links.add(new Link.Resistor("l" + b, "b" + b, "b" + other, random.nextDouble(0.001, 0.1)));
            }
        }
        return new Circuit(bodies, links);
    }

    /** Something that is measured; says how many it did. */
    private interface Work {
        int run();
    }

    /** Best of several rounds after a warm-up, seconds for one. */
    private static double best(Work work) {
        double best = Double.POSITIVE_INFINITY;
        for (int round = 0; round < 12; round++) {
            long start = System.nanoTime();
            int done = work.run();
            best = Math.min(best, (System.nanoTime() - start) * 1e-9 / done);
        }
        return best;
    }
}
