package sternwright.app.desk.protect;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sternwright.app.files.circuit.CircuitFile;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.IllPosedCircuitException;
import sternwright.protection.circuit.Link;
import sternwright.protection.solver.BodyState;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;

/**
 * A circuit from a file, solved.
 *
 * @param file the circuit
 * @param state its solution
 */
public record SolveCircuit(CircuitFile file, CircuitState state) {
    /**
     * Reads and solves a circuit.
     *
     * @param path the file
     * @return the solution
     * @throws BadInput with every reason, where the file or the circuit cannot be used
     */
    public static SolveCircuit of(Path path) {
        CircuitFile file = CircuitFile.read(path);
        try {
            return new SolveCircuit(file, CircuitSolver.solve(file.circuit()));
        } catch (IllPosedCircuitException e) {
            List<Problem> problems = e.problems().stream()
                    .map(p -> new Problem(path.toString(), 0, p.where(), p.what(), "", p.advice() + "."))
                    .toList();
            throw new BadInput(problems);
        }
    }

    /**
     * Every figure under the names of the circuit file's own schema.
     *
     * @return maps by body and link
     */
    public Map<String, Object> figures() {
        Map<String, Double> metal = new LinkedHashMap<>();
        Map<String, Double> near = new LinkedHashMap<>();
        Map<String, Double> current = new LinkedHashMap<>();
        Map<String, Double> anodic = new LinkedHashMap<>();
        Map<String, Double> links = new LinkedHashMap<>();
        for (Body b : file.circuit().bodies()) {
            BodyState s = state.body(b.id());
            metal.put(b.id(), s.metalV());
            near.put(b.id(), s.interfaceV());
            current.put(b.id(), s.currentA());
            anodic.put(b.id(), s.anodicCurrentA());
        }
        for (Link l : file.circuit().links()) {
            links.put(l.id(), state.linkCurrentA(l.id()));
        }
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("name", file.name());
        all.put("metalPotentialV", metal);
        all.put("interfacePotentialV", near);
        all.put("bodyCurrentA", current);
        all.put("anodicPartialCurrentA", anodic);
        all.put("linkCurrentA", links);
        all.put("residualA", state.residualA());
        all.put("steps", state.steps());
        return all;
    }
}
