package sternwright.app.desk.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sternwright.app.desk.InventedDesk;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.service.Place;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatVisits;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.HandChange;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.VisitAt;
import sternwright.visit.solver.SolveLimits;

class ByHandTest {
    private static final int BOATS = 12;

    /** One boat's question with its proposed plan. */
    record Planned(BoatVisits visits, BoatPlan plan) {}

    static List<Planned> planned() {
        PlanVisits plans = new PlanVisits(InventedDesk.yard(), Map.of(), Locale.UK);
        List<Planned> list = new ArrayList<>();
        for (Boat boat :
                InventedDesk.yard().boats().values().stream().limit(BOATS).toList()) {
            BoatVisits visits = plans.of(boat, InventedDesk.TODAY, 24);
            if (visits.first(SolveLimits.ofNodes(10)) instanceof BoatPlan plan) {
                list.add(new Planned(visits, plan));
            }
        }
        assertFalse(list.isEmpty());
        return list;
    }

    @Test
    void nothingChangedCostsNothingAndBreaksNothing() {
        for (Planned p : planned()) {
            HandPlan same = p.visits.byHand(p.plan, List.of());
            assertEquals(List.of(), same.broken(), p.plan.boatId());
            assertEquals(0, same.difference().amount().signum(), p.plan.boatId() + " " + same.costs());
            assertEquals(p.plan.visits().size(), same.plan().visits().size());
            assertEquals(p.plan.net(), same.plan().net());
            assertTrue(same.allowed());
        }
    }

    @Test
    void costsByKindAddUpToTheWhole() {
        for (Planned p : planned()) {
            VisitAt first = VisitAt.of(p.plan.visits().get(0));
            HandPlan moved = p.visits.byHand(
                    p.plan,
                    List.of(new HandChange.MoveVisit(
                            first, new VisitAt(first.month().plusMonths(5), first.place()))));
            BigDecimal whole =
                    moved.plan().planningCost().minus(p.plan.planningCost()).amount();
            assertEquals(0, whole.compareTo(moved.difference().amount()));
        }
    }

    @Test
    void aSafetyItemLeftOutIsRefusedInWords() {
        int seen = 0;
        for (Planned p : planned()) {
            for (PlannedVisit v : p.plan.visits()) {
                for (PlannedWork w : v.works()) {
                    boolean once = times(p.plan, w) == 1;
                    boolean inside = w.dueOn().isBefore(InventedDesk.TODAY.plusMonths(20));
                    if (w.inForce().rule().safety()
                            && once
                            && inside
                            && w.inForce().rule().interval().lifeMonths() != null) {
                        HandPlan left = p.visits.byHand(
                                p.plan,
                                List.of(new HandChange.LeaveWork(
                                        w.part(), w.inForce().rule().id(), VisitAt.of(v))));
                        assertFalse(
                                left.allowed(),
                                p.plan.boatId() + ": " + w.inForce().rule().work());
                        assertTrue(left.broken().get(0).advice().contains("safety item"));
                        assertEquals(w.part(), left.broken().get(0).part());
                        seen++;
                    }
                }
            }
        }
        assertTrue(seen > 0, "the invented yard has safety items to do");
    }

    private static long times(BoatPlan plan, PlannedWork work) {
        return plan.visits().stream()
                .flatMap(v -> v.works().stream())
                .filter(w -> w.part().equals(work.part())
                        && w.inForce().rule().id().equals(work.inForce().rule().id()))
                .count();
    }

    @Test
    void worksOfADroppedVisitGoToTheNearestThatTakesThem() {
        for (Planned p : planned()) {
            if (p.plan.lean().visits().size() < 2) {
                continue;
            }
            VisitAt last = VisitAt.of(p.plan.visits().get(p.plan.visits().size() - 1));
            HandPlan dropped = p.visits.byHand(p.plan, List.of(new HandChange.DropVisit(last)));
            assertEquals(p.plan.visits().size() - 1, dropped.plan().visits().size());
            assertFalse(dropped.said().isEmpty());
        }
    }

    @Test
    void aVisitAddedCostsACallOutAndTakesWorks() {
        Planned p = planned().stream()
                .filter(q -> q.plan.visits().stream().anyMatch(v -> v.place() == Place.AFLOAT))
                .findFirst()
                .orElseThrow();
        VisitAt at = p.plan.visits().stream()
                .filter(v -> v.place() == Place.AFLOAT)
                .map(VisitAt::of)
                .findFirst()
                .orElseThrow();
        YearMonth free = at.month();
        while (holds(p.plan, free)) {
            free = free.plusMonths(1);
        }
        VisitAt added = new VisitAt(free, Place.AFLOAT);
        HandPlan plan = p.visits.byHand(p.plan, List.of(new HandChange.AddVisit(added)));
        assertTrue(plan.plan().visits().stream().map(VisitAt::of).anyMatch(added::equals) || !plan.allowed());
    }

    private static boolean holds(BoatPlan plan, YearMonth month) {
        return plan.visits().stream().anyMatch(v -> YearMonth.from(v.from()).equals(month));
    }

    @Test
    void whatIsNotThereIsSaid() {
        Planned p = planned().get(0);
        VisitAt none = new VisitAt(YearMonth.of(2027, 7), Place.ASHORE);
        VisitAt far = new VisitAt(YearMonth.of(2040, 1), Place.AFLOAT);
        VisitAt first = VisitAt.of(p.plan.visits().get(0));
        IllegalArgumentException missing = assertThrows(
                IllegalArgumentException.class, () -> p.visits.byHand(p.plan, List.of(new HandChange.DropVisit(none))));
        assertTrue(String.valueOf(missing.getMessage()).contains("there is no visit"));
        assertThrows(
                IllegalArgumentException.class,
                () -> p.visits.byHand(p.plan, List.of(new HandChange.MoveVisit(first, far))));
        assertThrows(
                IllegalArgumentException.class,
                () -> p.visits.byHand(
                        p.plan, List.of(new HandChange.LeaveWork(new PartRef("no", "part"), "no", first))));
    }
}
