package sternwright.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.visit.check.VisitCheck;
import sternwright.visit.check.VisitFault;
import sternwright.visit.problem.MonthVisit;
import sternwright.visit.problem.MonthWork;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.sample.GeneratedBoats;
import sternwright.visit.solver.ByHand;
import sternwright.visit.solver.SolveLimits;
import sternwright.visit.solver.VisitSolver;

/** Whatever a person does to a plan, its sums are those the independent check works out. */
class ByHandPropertyTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theSameVisitsCostTheSame(long seed) {
        VisitProblem boat = GeneratedBoats.boat(12, 24, seed);
        if (VisitSolver.first(boat, SolveLimits.ofNodes(0)) instanceof VisitPlan plan) {
            VisitPlan again = ByHand.of(boat, plan.visits());
            assertEquals(plan.cost(), again.cost());
            assertEquals(plan.hauledMonths(), again.hauledMonths());
            assertEquals(List.of(), VisitCheck.violations(boat, again));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28, 29, 30})
    void theFiguresHoldWhereverWorksAreMoved(long seed) {
        Random random = new Random(seed);
        VisitProblem boat = GeneratedBoats.boat(12, 24, seed);
        int faults = 0;
        if (VisitSolver.first(boat, SolveLimits.ofNodes(0)) instanceof VisitPlan plan) {
            for (int round = 0; round < 30; round++) {
                VisitPlan moved = ByHand.of(boat, moved(boat, plan, random));
                for (VisitFault fault : VisitCheck.faults(boat, moved)) {
                    assertTrue(fault.kind() != VisitFault.Kind.FIGURES, fault.toString());
                    faults++;
                }
            }
            assertTrue(faults > 0, "thirty careless changes break some rule");
        }
    }

    /** Each work in a month and place at random, now and then left out. */
    private static List<MonthVisit> moved(VisitProblem boat, VisitPlan plan, Random random) {
        List<List<MonthWork>> slots = new ArrayList<>();
        for (int s = 0; s < 2 * boat.horizon(); s++) {
            slots.add(new ArrayList<>());
        }
        for (MonthVisit v : plan.visits()) {
            for (MonthWork w : v.works()) {
                int slot = random.nextInt(4) > 0
                        ? 2 * v.month() + v.place().ordinal()
                        : random.nextInt(2 * boat.horizon());
                if (random.nextInt(20) > 0 && slots.get(slot).stream().noneMatch(o -> o.work() == w.work())) {
                    slots.get(slot).add(w);
                }
            }
        }
        List<MonthVisit> visits = new ArrayList<>();
        for (int s = 0; s < slots.size(); s++) {
            if (!slots.get(s).isEmpty()) {
                visits.add(new MonthVisit(s / 2, Place.values()[s % 2], slots.get(s)));
            }
        }
        return visits;
    }
}
