package sternwright.bench.protection;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import sternwright.protection.circuit.Circuit;

/** The peer: many operating points in one ngspice process, its start and parsing taken off by a run of one. */
final class Ngspice {
    private Ngspice() {}

    /** Seconds of one solve, empty where ngspice is not installed. */
    static OptionalDouble secondsASolve(Circuit circuit, int times) {
        double one = seconds(circuit, 1);
        double many = seconds(circuit, times + 1);
        return Double.isNaN(one) || Double.isNaN(many)
                ? OptionalDouble.empty()
                : OptionalDouble.of((many - one) / times);
    }

    private static double seconds(Circuit circuit, int times) {
        try {
            Path file = Files.createTempFile("protection", ".cir");
            try {
                Files.writeString(file, Netlist.of(circuit, times));
                long start = System.nanoTime();
                Process process = new ProcessBuilder("ngspice", "-b", file.toString())
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
                if (!process.waitFor(10, TimeUnit.MINUTES) || process.exitValue() != 0) {
                    process.destroy();
                    return Double.NaN;
                }
                return (System.nanoTime() - start) * 1e-9;
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException notInstalled) {
            return Double.NaN;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Double.NaN;
        }
    }

    /** A ratio in words. */
    static String ratio(OptionalDouble peer, double ours) {
        return peer.isEmpty()
                ? "ngspice is not installed: no ratio"
                : String.format(
                        Locale.ROOT,
                        "ngspice %.1f us a solve, %.0f times ours",
                        peer.getAsDouble() * 1e6,
                        peer.getAsDouble() / ours);
    }
}
