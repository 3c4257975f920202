package sternwright.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.visit.check.VisitCheck;
import sternwright.visit.problem.VisitAnswer;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.sample.GeneratedBoats;
import sternwright.visit.solver.SolveLimits;
import sternwright.visit.solver.VisitSolver;

/** Plans of generated boats keep every rule, and more search never makes them dearer. */
class GeneratedBoatsPropertyTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void planPassesTheCheckAndIsNeverDearerThanTheFirst(long seed) {
        VisitProblem boat = GeneratedBoats.boat(12, 24, seed);
        VisitAnswer first = VisitSolver.first(boat, SolveLimits.ofNodes(0));
        VisitAnswer proven = VisitSolver.solve(boat, SolveLimits.ofNodes(400));
        if (first instanceof VisitPlan quick && proven instanceof VisitPlan plan) {
            assertEquals(List.of(), VisitCheck.violations(boat, quick));
            assertEquals(List.of(), VisitCheck.violations(boat, plan));
            assertTrue(plan.cost().total() <= quick.cost().total());
            assertTrue(plan.proof().boundCents() >= quick.proof().boundCents());
        }
    }
}
