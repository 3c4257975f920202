package sternwright.app.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.app.files.Shipped;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueList;
import sternwright.due.Reasons;
import sternwright.measure.Money;
import sternwright.service.Place;
import sternwright.service.RuleBook;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatQuestion;
import sternwright.visit.BoatVisits;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.solver.SolveLimits;
import sternwright.yard.Use;
import sternwright.yard.Yard;

/** Visits of invented boats under the shipped programme: sums, places, safety items and what leaving a work costs. */
class BoatVisitsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final InventedFolder NORTH = new InventedFolder(InventedFolder.Where.NORTH);
    private static final Yard YARD = NORTH.yard(TODAY);
    private static final List<Berth> BERTHS = NORTH.berths(TODAY);
    private static final InventedYard MADE = NORTH.make(12, TODAY, 1);
    private static final RuleBook BOOK = RuleBook.of(Shipped.genericProgramme(), List.of(), Shipped.catalogue());
    private static final SolveLimits LIMITS = SolveLimits.ofNodes(20).withGap(0.01);

    static IntStream boats() {
        return IntStream.range(0, MADE.boats().size());
    }

    private static BoatQuestion question(Boat boat) {
        Berth berth = BERTHS.stream()
                .filter(b -> b.id().equals(boat.berthId()))
                .findFirst()
                .orElseThrow();
        Use use = YARD.use(boat.use()).orElseThrow();
        var history = Objects.requireNonNull(MADE.histories().get(boat.id()));
        List<Due> dues = DueList.of(boat, berth, use, YARD.season(), BOOK::forPart, history, Map.of(), TODAY);
        return new BoatQuestion(
                boat,
                berth,
                use,
                YARD,
                Shipped.catalogue(),
                BOOK::forPart,
                history,
                dues,
                new Reasons(Locale.ENGLISH),
                TODAY,
                24);
    }

    @ParameterizedTest
    @MethodSource("boats")
    void visitsAddUpAndKeepThePlace(int index) {
        BoatVisits visits = BoatVisits.of(question(MADE.boats().get(index)));
        BoatPlan plan = assertInstanceOf(BoatPlan.class, visits.plan(LIMITS));
        assertFalse(plan.visits().isEmpty());
        assertTrue(plan.bound().compareTo(plan.planningCost()) <= 0);
        for (PlannedVisit v : plan.visits()) {
            Money sum = Money.zero(YARD.currency());
            for (PlannedWork w : v.works()) {
                sum = sum.plus(w.price());
                Place place = w.inForce().rule().place();
                boolean allowed = place == Place.EITHER
                        || place == v.place()
                        || w.inForce().rule().diver() && v.place() == Place.AFLOAT;
                assertTrue(allowed, w.inForce().rule().id() + " " + v.place());
                assertFalse(w.reason().isBlank());
            }
            for (PriceLine line : v.prices()) {
                sum = sum.plus(line.amount());
            }
            assertEquals(sum, v.net());
            assertFalse(v.from().isBefore(TODAY) || v.to().isBefore(v.from()));
        }
    }

    @ParameterizedTest
    @MethodSource("boats")
    void safetyItemsComeBeforeTheEndOfTheirLifeOrAtOnce(int index) {
        BoatQuestion question = question(MADE.boats().get(index));
        BoatPlan plan = assertInstanceOf(BoatPlan.class, BoatVisits.of(question).plan(LIMITS));
        LocalDate end = TODAY.plusMonths(22);
        for (Due due : question.dues()) {
            boolean counts = due.rule().safety()
                    && plan.refused().stream().noneMatch(r -> r.equals(due))
                    && due.clauses().stream().noneMatch(c -> c.kind() == sternwright.due.ClauseKind.UNKNOWN)
                    && due.dueOn().isBefore(end)
                    && due.dueOn().isAfter(TODAY.plusMonths(2));
            boolean inTime = plan.visits().stream()
                    .filter(v -> v.works().stream()
                            .anyMatch(w -> w.part().equals(due.part())
                                    && w.inForce().rule().id().equals(due.rule().id())))
                    .anyMatch(v -> !v.from().isAfter(due.dueOn()));
            assertTrue(!counts || inTime, due.rule().id() + " due " + due.dueOn());
        }
    }

    @ParameterizedTest
    @MethodSource("boats")
    void lateWorkIsNotLeftToSaveMoney(int index) {
        BoatQuestion question = question(MADE.boats().get(index));
        BoatPlan plan = assertInstanceOf(BoatPlan.class, BoatVisits.of(question).plan(LIMITS));
        for (PlannedVisit v : plan.visits()) {
            for (PlannedWork w : v.works()) {
                boolean overdue = w.dueOn().isBefore(TODAY);
                assertTrue(
                        !overdue || v.from().isBefore(TODAY.plusMonths(14)),
                        w.inForce().rule().id());
            }
        }
    }
}
