package sternwright.app.files.problem;

import java.util.Collection;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Gathers every problem of every file; files may be read at the same time. */
public final class Problems {
    private final ConcurrentLinkedQueue<Problem> noted = new ConcurrentLinkedQueue<>();

    /**
     * Notes one problem.
     *
     * @param problem the problem
     */
    public void note(Problem problem) {
        noted.add(problem);
    }

    /**
     * Notes several problems.
     *
     * @param problems the problems
     */
    public void noteAll(Collection<Problem> problems) {
        noted.addAll(problems);
    }

    /**
     * Whether nothing is wrong so far.
     *
     * @return true if no problem was noted
     */
    public boolean none() {
        return noted.isEmpty();
    }

    /**
     * All problems in reading order: by file, line and field; each once.
     *
     * @return the problems
     */
    public List<Problem> inOrder() {
        return noted.stream().distinct().sorted().toList();
    }

    /**
     * Ends the deed if anything is wrong.
     *
     * @throws BadInput with every problem noted so far
     */
    public void stopIfAny() {
        if (!none()) {
            throw new BadInput(inOrder());
        }
    }
}
