package sternwright.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.junit.jupiter.api.Test;
import sternwright.visit.check.VisitCheck;
import sternwright.visit.problem.Doing;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.Proof;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitSlot;
import sternwright.visit.sample.Habits;
import sternwright.visit.solver.SolveLimits;
import sternwright.visit.solver.VisitSolver;

/**
 * The worked example in docs/visits.md, whose optimum was found by four methods that share no code with this one: a constraint
 * solver, two mixed-integer solvers, and a count of all 6,466,680 plans (71 x 129 x 45 sequences of works, 32 ways to stand
 * ashore).
 */
class WorkedExampleReferenceTest {
    private final VisitPlan plan =
            assertInstanceOf(VisitPlan.class, VisitSolver.solve(WorkedExample.problem(), SolveLimits.ofNodes(1000)));

    @Test
    void costsOneThousandAndEighteenAndIsProven() {
        assertEquals(1018, plan.cost().total());
        assertEquals(1018, plan.proof().boundCents());
        assertEquals(Proof.Status.OPTIMAL, plan.proof().status());
        assertEquals(List.of(), VisitCheck.violations(WorkedExample.problem(), plan));
    }

    @Test
    void visitsInOctoberAndApril() {
        assertEquals(
                List.of(new VisitSlot(1, Place.ASHORE), new VisitSlot(7, Place.ASHORE)),
                plan.visits().stream().map(v -> v.slot()).toList());
        assertEquals(60, plan.cost().visits());
        assertEquals(80, plan.cost().setUps());
    }

    @Test
    void takesTheStepsOfTheExample() {
        assertEquals(
                List.of("0 -1>1 260", "0 1>12 220", "1 -1>1 90", "1 1>7 90", "1 7>12 75", "2 -1>1 79", "2 1>12 64"),
                plan.doings().stream().map(WorkedExampleReferenceTest::inWords).toList());
    }

    @Test
    void ownDueDatesCostElevenHundredAndNinety() {
        assertEquals(1190, cost(Habits.ownDueDates(WorkedExample.problem())));
    }

    @Test
    void octoberAndAprilCostTwelveHundredAndFive() {
        assertEquals(1205, cost(Habits.octoberAndApril(WorkedExample.problem())));
    }

    private static long cost(VisitProblem problem) {
        return assertInstanceOf(VisitPlan.class, VisitSolver.solve(problem, SolveLimits.ofNodes(1000)))
                .cost()
                .total();
    }

    private static String inWords(Doing d) {
        return d.work() + " " + d.from() + ">" + d.to() + " " + d.totalCents();
    }
}
