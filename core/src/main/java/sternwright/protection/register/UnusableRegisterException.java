package sternwright.protection.register;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown where no circuit can be built; carries every reason, so that all can be mended at once. */
public final class UnusableRegisterException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final transient List<RegisterProblem> problems;

    /** Refuses for these reasons. */
    public UnusableRegisterException(List<RegisterProblem> problems) {
        super(problems.stream().map(RegisterProblem::toString).collect(Collectors.joining(System.lineSeparator())));
        this.problems = List.copyOf(problems);
    }

    /** Every reason. */
    public List<RegisterProblem> problems() {
        return problems;
    }
}
