package sternwright.app.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatQuestion;
import sternwright.visit.BoatVisits;
import sternwright.visit.LeftAnswer;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.solver.SolveLimits;

/** What leaving a work costs, and one visit fewer or more, on whole boats. */
class LeftUntilTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final AskedBoats BOATS = new AskedBoats(InventedFolder.Where.NORTH, 6, TODAY);
    private static final SolveLimits LIMITS = SolveLimits.ofNodes(60).withGap(0.001);

    static IntStream boats() {
        return IntStream.range(0, BOATS.made.boats().size());
    }

    @ParameterizedTest
    @MethodSource("boats")
    void workIsAnsweredInMoneyAndRiskHoweverLateItIs(int index) {
        Boat boat = BOATS.made.boats().get(index);
        BoatQuestion question = BOATS.question(boat);
        BoatVisits visits = BoatVisits.of(question);
        BoatPlan plan = assertInstanceOf(BoatPlan.class, visits.plan(LIMITS));
        PlannedVisit first = plan.visits().get(0);
        LocalDate until = TODAY.plusMonths(9);
        int asked = 0;
        for (PlannedWork w : first.works().subList(0, Math.min(5, first.works().size()))) {
            String rule = w.inForce().rule().id();
            LeftAnswer left =
                    visits.leftUntil(plan, w.part(), rule, until, LIMITS).orElse(null);
            if (left == null || !(left.answer() instanceof BoatPlan other)) {
                continue;
            }
            asked++;
            Due due = question.dues().stream()
                    .filter(d -> d.part().equals(w.part()) && d.rule().id().equals(rule))
                    .findFirst()
                    .orElseThrow();
            boolean late =
                    due.state() == DueState.OVERDUE && due.rule().interval().occasion() == null;
            assertTrue(
                    !late || left.moreRisk().amount().signum() > 0,
                    boat.id() + " " + rule + " nine months later is no less risk: " + left.moreRisk());
            assertEquals(w.inForce().rule().safety() && until.isAfter(due.lastSensible()), left.safetyPastLife());
            LocalDate done = other.visits().stream()
                    .filter(v -> v.works().stream()
                            .anyMatch(x -> x.part().equals(w.part())
                                    && x.inForce().rule().id().equals(rule)))
                    .map(PlannedVisit::from)
                    .findFirst()
                    .orElse(LocalDate.MAX);
            assertFalse(done.isBefore(until.withDayOfMonth(1)), rule + " is left until " + until + ", not " + done);
        }
        assertTrue(asked > 0, "something was asked of " + boat.id());
    }

    /** A plan that is proven to a thousandth cannot be beaten by more than that by another number of visits. */
    @ParameterizedTest
    @MethodSource("boats")
    void oneVisitFewerAndOneMoreAreNoCheaper(int index) {
        BoatVisits visits = BoatVisits.of(BOATS.question(BOATS.made.boats().get(index)));
        BoatPlan plan = assertInstanceOf(BoatPlan.class, visits.plan(LIMITS));
        for (int more : new int[] {-1, 1}) {
            BoatAnswer answer = visits.withVisits(plan, more, LIMITS);
            if (answer instanceof BoatPlan other) {
                assertEquals(
                        plan.lean().visits().size() + more,
                        other.lean().visits().size());
                double least = plan.bound().toDouble();
                assertTrue(other.planningCost().toDouble() >= least - 0.01, "no plan costs less than the bound");
            } else {
                BoatAnswer.NoPlan none = assertInstanceOf(BoatAnswer.NoPlan.class, answer);
                assertFalse(none.clash().isEmpty() && none.minimal());
            }
        }
    }
}
