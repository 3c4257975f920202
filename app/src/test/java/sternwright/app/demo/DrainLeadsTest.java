package sternwright.app.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatVisits;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.problem.FollowOn;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.solver.SolveLimits;

/** Draining the leg at every third change of its oil opens the leg and asks for the proof of isolation; sucking the oil does not. */
class DrainLeadsTest {
    private static final AskedBoats BOATS = new AskedBoats(InventedFolder.Where.NORTH, 20, LocalDate.of(2026, 11, 25));

    @Test
    void onlyTheDrainAsksForTheProof() {
        List<Boat> saildrives = BOATS.made.boats().stream()
                .filter(b -> b.installations().stream().anyMatch(i -> i.arrangement() == Arrangement.SAILDRIVE))
                .limit(3)
                .toList();
        assertEquals(3, saildrives.size());
        for (Boat boat : saildrives) {
            BoatVisits visits = BoatVisits.of(BOATS.question(boat));
            VisitProblem problem = visits.problem();
            List<FollowOn> fromOil = problem.followOns().stream()
                    .filter(f -> problem.works().get(f.trigger()).name().startsWith("change saildrive gear oil"))
                    .toList();
            assertTrue(!fromOil.isEmpty(), boat.id());
            for (FollowOn f : fromOil) {
                assertEquals(Set.of(2), f.phases(), boat.id() + ": the third of three");
            }
            BoatPlan plan = assertInstanceOf(BoatPlan.class, visits.plan(SolveLimits.ofNodes(20)));
            for (PlannedVisit v : plan.visits()) {
                assertTrue(!has(v, "drain-saildrive-oil") || has(v, "prove-leg-isolated"), boat.id() + " " + v.from());
            }
        }
    }

    private static boolean has(PlannedVisit v, String rule) {
        return v.works().stream().anyMatch(w -> w.inForce().rule().id().equals(rule));
    }
}
