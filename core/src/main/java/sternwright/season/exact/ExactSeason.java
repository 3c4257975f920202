package sternwright.season.exact;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import java.util.List;
import java.util.stream.IntStream;
import sternwright.season.SeasonPlan;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;

/** Solves a whole season as one model. */
public final class ExactSeason {
    private final SeasonArrays a;
    private final ExactModel model;

    /** What came of it. */
    public enum Outcome {
        /** The best plan, proved. */
        OPTIMAL,
        /** A plan. */
        FOUND,
        /** Proved that there is no plan. */
        NONE,
        /** The time was not enough to say. */
        UNKNOWN
    }

    /**
     * An answer.
     *
     * @param outcome what came of it
     * @param starts starts of the plan, empty if there is none
     * @param bound lower bound on the cost
     */
    public record Answer(Outcome outcome, List<Integer> starts, double bound) {
        /** Copies the list. */
        public Answer {
            starts = List.copyOf(starts);
        }
    }

    /** Sees every better plan. */
    @FunctionalInterface
    public interface Found {
        /** Called with its cost and the bound at that moment. */
        void found(double cost, double bound);
    }

    /** A model of {@code a}. */
    public ExactSeason(SeasonArrays a) {
        Loader.loadNativeLibraries();
        this.a = a;
        model = new ExactModel(a);
    }

    /** Whether there is a plan at all. */
    public Answer feasible(double seconds, int workers) {
        if (model.windowEmpty()) {
            return new Answer(Outcome.NONE, List.of(), 0);
        }
        return solve(model.constraints(), seconds, workers, (cost, bound) -> {});
    }

    /** The best plan it finds, beginning from {@code hint}. */
    public Answer best(SeasonPlan hint, double seconds, int workers, Found found) {
        model.constraints();
        return solve(model.objective(hint), seconds, workers, found);
    }

    private Answer solve(CpModel cp, double seconds, int workers, Found found) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds);
        solver.getParameters().setNumWorkers(workers);
        solver.getParameters().setRandomSeed(1);
        CpSolverStatus status = solver.solve(cp, new CpSolverSolutionCallback() {
            @Override
            public void onSolutionCallback() {
                found.found(objectiveValue(), bestObjectiveBound());
            }
        });
        return switch (status) {
            case OPTIMAL -> new Answer(Outcome.OPTIMAL, starts(solver), solver.bestObjectiveBound());
            case FEASIBLE -> new Answer(Outcome.FOUND, starts(solver), solver.bestObjectiveBound());
            case INFEASIBLE -> new Answer(Outcome.NONE, List.of(), 0);
            case MODEL_INVALID ->
                throw new IllegalStateException("the exact solver refuses the model: " + cp.validate());
            default -> new Answer(Outcome.UNKNOWN, List.of(), solver.bestObjectiveBound());
        };
    }

    private List<Integer> starts(CpSolver solver) {
        return IntStream.range(0, a.n)
                .map(i -> (int) solver.value(model.start(i)))
                .boxed()
                .toList();
    }

    /** The plan with an answer's starts. */
    public SeasonPlan plan(Answer answer) {
        return Plans.of(a, answer.starts().stream().mapToInt(Integer::intValue).toArray(), "one constraint model");
    }
}
