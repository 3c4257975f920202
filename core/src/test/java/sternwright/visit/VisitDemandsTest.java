package sternwright.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.visit.check.VisitCheck;
import sternwright.visit.problem.LeftUntil;
import sternwright.visit.problem.Life;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.VisitDemands;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitRefusal;
import sternwright.visit.problem.VisitSlot;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkPhase;
import sternwright.visit.problem.WorkRules;
import sternwright.visit.sample.GeneratedBoats;
import sternwright.visit.solver.SolveLimits;
import sternwright.visit.solver.VisitSolver;

/** What the engineer asks of a plan: other visits, fewer, more, work left; and what cannot be had. */
class VisitDemandsTest {
    private static final VisitProblem EXAMPLE = WorkedExample.problem();

    private static VisitPlan plan(VisitProblem problem) {
        VisitPlan plan = assertInstanceOf(VisitPlan.class, VisitSolver.solve(problem, SolveLimits.ofNodes(500)));
        assertEquals(List.of(), VisitCheck.violations(problem, plan));
        return plan;
    }

    private static VisitRefusal refusal(VisitProblem problem) {
        return assertInstanceOf(VisitRefusal.class, VisitSolver.solve(problem, SolveLimits.ofNodes(500)));
    }

    @Test
    void oneVisitFewerAndOneMoreCostMore() {
        assertEquals(
                1, plan(EXAMPLE.with(VisitDemands.NONE.withVisits(1))).visits().size());
        assertEquals(
                3, plan(EXAMPLE.with(VisitDemands.NONE.withVisits(3))).visits().size());
        assertTrue(plan(EXAMPLE.with(VisitDemands.NONE.withVisits(1))).cost().total() > 1018);
        assertTrue(plan(EXAMPLE.with(VisitDemands.NONE.withVisits(3))).cost().total() > 1018);
    }

    @Test
    void aPromisedVisitIsHeldAndOneRuledOutIsNot() {
        VisitSlot june = new VisitSlot(9, Place.AFLOAT);
        VisitSlot october = new VisitSlot(1, Place.ASHORE);
        VisitPlan plan =
                plan(EXAMPLE.with(VisitDemands.NONE.withForced(Set.of(june)).withForbidden(Set.of(october))));
        assertTrue(plan.visits().stream().anyMatch(v -> v.slot().equals(june)));
        assertTrue(plan.visits().stream().noneMatch(v -> v.slot().equals(october)));
    }

    @Test
    void leavingTheOilCostsRisk() {
        VisitPlan left = plan(EXAMPLE.with(VisitDemands.NONE.withLeft(List.of(new LeftUntil(0, 5)))));
        assertTrue(left.cost().risk() >= 6 * 40, "due in month -1, six months late at the least");
    }

    @Test
    void aSealAtItsEndWithNoWayAshoreIsRefusedByName() {
        Work seal = new Work(
                "diaphragm seal",
                -1,
                new Life(84, 0, 75, 0, EXAMPLE.works().get(0).life().use()),
                List.of(new WorkPhase(Set.of(Place.ASHORE), WorkedExample.ALL_YEAR, 900)),
                0,
                0.8,
                20,
                WorkRules.recurring(0, 0.35));
        Set<VisitSlot> ashore = new HashSet<>();
        for (int t = 0; t < 10; t++) {
            ashore.add(new VisitSlot(t, Place.ASHORE));
        }
        VisitRefusal refusal =
                refusal(EXAMPLE.withWorks(List.of(seal), List.of()).with(VisitDemands.NONE.withForbidden(ashore)));
        assertEquals(11, refusal.clash().size(), "the seal's life and the ten months ruled out");
        assertTrue(refusal.minimal());
        assertTrue(refusal.clash().stream().anyMatch(c -> c.startsWith("diaphragm seal")), refusal.clash()::toString);
    }

    @Test
    void noVisitAtAllClashesWithWorkThatCannotWait() {
        VisitProblem strict = EXAMPLE.withWorks(
                EXAMPLE.works().stream()
                        .map(w -> w.with(WorkRules.recurring(2, 0.35)))
                        .toList(),
                List.of());
        VisitRefusal refusal = refusal(strict.with(VisitDemands.NONE.withVisits(0)));
        assertTrue(refusal.clash().contains("at most 0 visits"), refusal.clash()::toString);
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35, 36})
    void aWorkMoreThatNeedsALiftNeverLowersTheCost(long seed) {
        VisitProblem boat = GeneratedBoats.boat(8, 24, seed);
        List<Work> fewer = boat.works().subList(0, 7);
        Work last = boat.works().get(7);
        Work lift = new Work(
                last.name(),
                last.servicePoint(),
                last.life(),
                List.of(new WorkPhase(Set.of(Place.ASHORE), WorkedExample.ALL_YEAR, 200)),
                0,
                last.materialShare(),
                last.riskPerMonthCents(),
                WorkRules.recurring(12, 0.35));
        List<Work> more = new java.util.ArrayList<>(fewer);
        more.add(lift);
        assertTrue(plan(boat.withWorks(more, List.of())).cost().total()
                >= plan(boat.withWorks(fewer, List.of())).proof().boundCents());
    }
}
