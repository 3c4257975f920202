package sternwright.bench.protection;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import sternwright.boat.ShorePower;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.diagnosis.Diagnoser;
import sternwright.protection.diagnosis.Diagnosis;
import sternwright.protection.diagnosis.Measurement;
import sternwright.protection.diagnosis.Observation;
import sternwright.protection.diagnosis.Quantity;
import sternwright.protection.diagnosis.Setting;
import sternwright.protection.fault.Fault;
import sternwright.protection.fault.FaultKind;
import sternwright.protection.fault.FaultList;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;

/**
 * Full diagnosis of a twin-sterndrive boat: every single fault and every pair against readings, and the next measurement.
 *
 * <p>Command: {@code bench/run diagnosis}.
 */
public final class DiagnosisBench {
    private DiagnosisBench() {}

    /**
     * Runs the measurement.
     *
     * @param args none
     */
    public static void main(String[] args) {
        BoatCircuit boat = BenchBoats.builder()
                .build(
                        BenchBoats.boat(0),
                        BenchBoats.berth(ShorePower.GALVANIC_ISOLATOR),
                        CircuitCondition.atBerth(Month.JULY));
        List<Fault> faults = FaultList.of(boat);
        List<Observation> readings = readings(boat, faults);
        System.out.printf(
                "%d faults, %d pairs, %d readings%n",
                faults.size(), faults.size() * (faults.size() - 1) / 2, readings.size());
        double best = Double.POSITIVE_INFINITY;
        for (int round = 0; round < 8; round++) {
            long start = System.nanoTime();
            Diagnosis d = new Diagnoser(boat, faults).diagnose(readings);
            double seconds = (System.nanoTime() - start) * 1e-9;
            best = Math.min(best, seconds);
            if (round == 0) {
                System.out.printf("first, cold machine %.2f s: %s%n", seconds, d.summary());
            }
        }
        System.out.printf("best of eight %.3f s (goal 1 s)%n", best);
        long variants = faults.stream().mapToLong(f -> f.variants().size()).sum();
        OptionalDouble peer = Ngspice.secondsASolve(boat.circuit(), 300);
        if (peer.isPresent()) {
            double all = peer.getAsDouble() * variants * (variants - 1) / 2;
            System.out.printf(
                    "ngspice for one solve of every pair of severities: %.1f s, %.0f times%n", all, all / best);
        } else {
            System.out.println("ngspice is not installed: no ratio");
        }
    }

    /** What a meter would read with one bonding wire off. */
    private static List<Observation> readings(BoatCircuit boat, List<Fault> faults) {
        Fault wire = faults.stream()
                .filter(f -> f.kind() == FaultKind.ANODE_LOOSE)
                .findFirst()
                .orElseThrow();
        Circuit faulty = wire.applyTo(boat.circuit());
        CircuitState state = CircuitSolver.solve(faulty);
        List<Observation> readings = new ArrayList<>();
        for (String part : List.of("leg", "propeller", "leg-anode", "transom-unit", "transom-anode")) {
            for (String side : List.of("port", "starboard")) {
                String body = side + "/" + part;
                readings.add(Observation.of(
                        new Measurement(Quantity.POTENTIAL_CLOSE, body, Setting.USUAL),
                        state.body(body).interfaceV()));
            }
        }
        return readings;
    }
}
