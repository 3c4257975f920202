package sternwright.app.command.protect;

import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.text.Json;
import sternwright.app.command.text.TextTable;
import sternwright.app.desk.protect.SolveCircuit;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Link;
import sternwright.protection.solver.BodyState;

/** Solves a protection circuit from a file. */
@Command(
        name = "circuit",
        description = {
            "Solve a protection circuit written down in a file (JSON, schema protection-case-1).",
            "Gives the potential of every body, far off and close to it, and every current."
        },
        sortOptions = false)
public final class CircuitCommand extends Deed {
    @Parameters(paramLabel = "FILE", arity = "1", description = "The circuit.")
    Path file = Path.of("");

    @Override
    public Integer call() {
        SolveCircuit solved = SolveCircuit.of(file);
        if (program().json()) {
            Json.print(solved.figures(), out());
        } else {
            print(solved);
        }
        return ExitStatus.DONE;
    }

    private void print(SolveCircuit solved) {
        String title = solved.file().title();
        out().println(solved.file().name() + (title.isEmpty() ? "" : ": " + title));
        out().println(
                        "Potentials in V against silver/silver chloride in seawater; current from metal into water positive.");
        out().println();
        TextTable bodies = new TextTable("body", "metal", "far off V", "close V", "current A", "dissolving A");
        for (Body b : solved.file().circuit().bodies()) {
            BodyState s = solved.state().body(b.id());
            bodies.row(
                    b.id(),
                    b.material(),
                    volts(s.metalV()),
                    volts(s.interfaceV()),
                    amps(s.currentA()),
                    amps(s.anodicCurrentA()));
        }
        bodies.print(out());
        out().println();
        TextTable links = new TextTable("link", "from", "to", "current A");
        for (Link l : solved.file().circuit().links()) {
            links.row(l.id(), l.a(), l.b(), l.conducts() ? amps(solved.state().linkCurrentA(l.id())) : "open");
        }
        links.print(out());
        out().println();
        out().printf(
                        Locale.ROOT,
                        "Largest imbalance of current at any joint %.1e A after %d steps.%n",
                        solved.state().residualA(),
                        solved.state().steps());
    }

    private static String volts(double v) {
        return String.format(Locale.ROOT, "%10.6f", v);
    }

    private static String amps(double a) {
        return String.format(Locale.ROOT, "%13.6e", a);
    }
}
