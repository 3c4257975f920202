package sternwright.protection.circuit;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown for a circuit that has no answer; carries every reason found, not only the first. */
public final class IllPosedCircuitException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final transient List<CircuitProblem> problems;

    /** Refuses a circuit for these reasons. */
    public IllPosedCircuitException(List<CircuitProblem> problems) {
        super(problems.stream().map(CircuitProblem::toString).collect(Collectors.joining(System.lineSeparator())));
        this.problems = List.copyOf(problems);
    }

    /** Every reason, in the order of the circuit. */
    public List<CircuitProblem> problems() {
        return problems;
    }
}
