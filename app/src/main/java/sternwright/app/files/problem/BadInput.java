package sternwright.app.files.problem;

import java.util.List;
import java.util.stream.Collectors;

/** What came in cannot be used; nothing was written. Carries every problem, so that all can be mended at once. */
public class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    /**
     * Ends a deed because of what came in.
     *
     * @param problems at least one problem
     */
    public BadInput(List<Problem> problems) {
        super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /**
     * Ends a deed because of one thing said on the command line.
     *
     * @param where the option or argument
     * @param found what was said, as a phrase
     * @param expected what was expected, as a phrase; may be empty
     * @param advice what to do; may be empty
     * @return the exception to throw
     */
    public static BadInput of(String where, String found, String expected, String advice) {
        return new BadInput(List.of(new Problem(where, 0, "", found, expected, advice)));
    }

    /**
     * Everything that is wrong, in reading order.
     *
     * @return the problems
     */
    public final List<Problem> problems() {
        return problems;
    }

    /**
     * How many things are wrong; what would help is told beside them and is none.
     *
     * @return at least 1
     */
    public int count() {
        return problems.size();
    }
}
