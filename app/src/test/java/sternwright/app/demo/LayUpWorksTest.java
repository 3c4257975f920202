package sternwright.app.demo;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sternwright.boat.Boat;
import sternwright.boat.Winter;
import sternwright.history.BoatHistory;
import sternwright.service.Half;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatQuestion;
import sternwright.visit.BoatVisits;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.solver.SolveLimits;

/** Works of lay-up on whole boats: when the boat is laid up, before the frost, and at the first visit where nobody knows. */
class LayUpWorksTest {
    private static final SolveLimits LIMITS = SolveLimits.ofNodes(20).withGap(0.01);
    private static final Set<String> LAID_UP = Set.of("freeze-protect-raw-water", "treat-fuel-for-lay-up");

    /** Shares of use: north September is used, October is the last month with hours worth counting; south six months on. */
    @ParameterizedTest
    @CsvSource({"NORTH, 2026-06-10, 9", "SOUTH, 2026-12-10, 3"})
    void freezeProtectionAndFuelWaitUntilTheBoatIsLaidUp(
            InventedFolder.Where where, LocalDate today, int monthStillUsed) {
        AskedBoats boats = new AskedBoats(where, 10, today);
        Set<String> seen = new HashSet<>();
        for (Boat boat : boats.made.boats()) {
            BoatPlan plan = plan(boats.question(boat));
            MonthDay frost = boats.berth(boat).firstFrost();
            for (PlannedVisit v : plan.visits()) {
                for (PlannedWork w : v.works()) {
                    String rule = w.inForce().rule().id();
                    if (!LAID_UP.contains(rule)) {
                        continue;
                    }
                    seen.add(rule);
                    assertFalse(
                            v.from().getMonth() == Month.of(monthStillUsed) && boat.winter() != Winter.IN_USE,
                            boat.id() + " " + rule + " " + v.from());
                    assertTrue(
                            frost == null
                                    || !rule.equals("freeze-protect-raw-water")
                                    || !v.from().isAfter(frost.atYear(v.from().getYear())),
                            boat.id() + " before the first frost, not " + v.from());
                }
            }
        }
        assertTrue(seen.containsAll(LAID_UP), seen.toString());
    }

    /** Nothing is written down: in December everything that can be done where the boat is belongs to the first visit. */
    @ParameterizedTest
    @CsvSource({"NORTH, 2026-12-01", "SOUTH, 2026-06-01"})
    void layUpWorkOfUnknownHistoryIsInTheFirstVisitThatFits(InventedFolder.Where where, LocalDate today) {
        AskedBoats boats = new AskedBoats(where, 6, today);
        for (Boat boat : boats.made.boats()) {
            BoatPlan plan = plan(boats.question(boat, BoatHistory.empty(boat.id())));
            PlannedVisit first = plan.visits().get(0);
            assertTrue(
                    first.from().isBefore(today.plusMonths(6)),
                    boat.id() + " is visited by the end of recommission, not " + first.from());
            for (PlannedVisit later : plan.visits().subList(1, plan.visits().size())) {
                for (PlannedWork w : later.works()) {
                    boolean unknown = w.reason().startsWith("Due at the first visit");
                    boolean waits = w.reason().contains("It goes ");
                    boolean layUp = w.inForce().rule().half() == Half.LAY_UP;
                    assertTrue(!unknown || waits || !layUp, boat.id() + " " + w.words() + ": " + w.reason());
                }
            }
        }
    }

    private static BoatPlan plan(BoatQuestion question) {
        return Objects.requireNonNull(
                assertInstanceOf(BoatPlan.class, BoatVisits.of(question).plan(LIMITS)));
    }
}
