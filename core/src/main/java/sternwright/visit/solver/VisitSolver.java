package sternwright.visit.solver;

import org.jspecify.annotations.Nullable;
import sternwright.visit.problem.VisitAnswer;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;

/** Finds the cheapest visits of one boat: a plan at once, then the proof. */
public final class VisitSolver {
    private VisitSolver() {}

    /**
     * The plan at once: greedy, bettered visit by visit, with a first bound.
     *
     * @param problem what must be decided
     * @param limits time, branches and gap; the branches are not used
     */
    public static VisitAnswer first(VisitProblem problem, SolveLimits limits) {
        return answer(problem, limits, null, false);
    }

    /**
     * The plan with its proof: searches until nothing is cheaper, the gap is reached or the limits end it.
     *
     * @param problem what must be decided
     * @param limits time, branches and gap
     */
    public static VisitAnswer solve(VisitProblem problem, SolveLimits limits) {
        return answer(problem, limits, null, true);
    }

    /**
     * The same, starting from a plan already known to meet the problem.
     *
     * @param problem what must be decided
     * @param limits time, branches and gap
     * @param known a plan that keeps every rule of the problem
     */
    public static VisitAnswer solve(VisitProblem problem, SolveLimits limits, VisitPlan known) {
        return answer(problem, limits, PlanWriter.read(known, problem), true);
    }

    private static VisitAnswer answer(
            VisitProblem problem, SolveLimits limits, @Nullable Schedule known, boolean prove) {
        BranchAndBound search = new BranchAndBound(new PathModel(problem), limits);
        search.first(known);
        if (prove) {
            search.run();
        }
        if (search.found()) {
            return new PlanWriter(problem).write(search.best(), search.proof());
        }
        Clash clash = new Clash(problem, limits);
        Schedule any = known == null ? clash.anyPlan() : null;
        if (any == null) {
            return clash.find();
        }
        VisitPlan plan = new PlanWriter(problem).write(any, search.proof());
        return answer(problem, limits, PlanWriter.read(plan, problem), prove);
    }
}
