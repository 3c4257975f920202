package sternwright.protection.anode;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.PartRef;
import sternwright.boat.ShorePower;
import sternwright.boat.Water;
import sternwright.due.WearDate;
import sternwright.history.BoatHistory;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.protection.circuit.Link;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.register.CircuitFromRegister;
import sternwright.protection.register.ProtectionBoats;
import sternwright.protection.solver.CircuitSolver;

class WastageTest {
    private static final String ANODE = "main/leg-anode";
    private static final LocalDate TODAY = LocalDate.of(2025, 10, 15);

    private static WastageProblem problem(ShorePower shore, BoatYear year) {
        CircuitCondition c = CircuitCondition.atBerth(Month.APRIL);
        BoatCircuit rest = ProtectionBoats.circuit(ProtectionBoats.saildrive(), ProtectionBoats.sea(shore), c);
        BoatCircuit run =
                ProtectionBoats.circuit(ProtectionBoats.saildrive(), ProtectionBoats.sea(shore), c.underWay());
        return AnodeLife.problem(rest, run, ProtectionBoats.sea(shore), c, year);
    }

    private static Wastage.Course course(WastageProblem p, int months) {
        return Objects.requireNonNull(
                WastageSolver.solve(p, months, false).anodes().get(ANODE));
    }

    @Test
    void theFirstMonthAgreesWithThePocketFormula() {
        WastageProblem p = problem(ShorePower.NONE, BoatYear.atBerth());
        double current = CircuitSolver.solve(p.atBerth().circuit()).body(ANODE).currentA();
        double lost = 1 - course(p, 1).remaining().get(1);
        assertEquals(current * 730 / 780 / 0.8, lost, 0.01 * lost);
    }

    @Test
    void halfGoneComesBeforeSpentAndLaterWithLessDemand() {
        WastageProblem p = problem(ShorePower.NONE, BoatYear.atBerth());
        Wastage.Course normal = course(p, 60);
        assertTrue(normal.halfGoneMonths() < normal.spentMonths());
        assertTrue(normal.halfGoneMonths() > course(p.withDemand(2), 60).halfGoneMonths());
        // Demand scales current almost in proportion (twice the oxygen limit: 1.95 times the current).
        assertEquals(0.5, course(p.withDemand(2), 60).halfGoneMonths() / normal.halfGoneMonths(), 0.06);
        double before = 2;
        for (double left : normal.remaining()) {
            assertTrue(left <= before && left >= 0);
            before = left;
        }
    }

    @Test
    void runningHoursAndMonthsAfloatCount() {
        double berth = course(problem(ShorePower.NONE, BoatYear.atBerth()), 60).halfGoneMonths();
        BoatYear busy = new BoatYear(Collections.nCopies(12, 60.0), Collections.nCopies(12, 1.0));
        BoatYear ashoreInWinter = new BoatYear(
                Collections.nCopies(12, 0.0), List.of(0.0, 0.0, 0.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 0.0, 0.0, 0.0));
        assertTrue(course(problem(ShorePower.NONE, busy), 60).halfGoneMonths() < berth);
        assertTrue(course(problem(ShorePower.NONE, ashoreInWinter), 60).halfGoneMonths() > 1.3 * berth);
    }

    @Test
    void finerStepsAgree() {
        // Half the current for twice the months is the same charge: the two courses must pass the same masses.
        WastageProblem p = problem(ShorePower.NONE, BoatYear.atBerth());
        Wastage.Course one = course(p.withDemand(4), 12);
        WastageProblem slow = p.withDemand(4);
        BoatYear halfTime = new BoatYear(Collections.nCopies(12, 0.0), Collections.nCopies(12, 0.5));
        WastageProblem half = new WastageProblem(
                slow.atBerth(),
                slow.underWay(),
                Collections.nCopies(12, 0.25),
                slow.temperatureC(),
                halfTime,
                1,
                0,
                Double.POSITIVE_INFINITY,
                new CoatingBreakdown(0.05, 0),
                Map.of(),
                4,
                1);
        WastageProblem whole = new WastageProblem(
                slow.atBerth(),
                slow.underWay(),
                Collections.nCopies(12, 0.25),
                slow.temperatureC(),
                BoatYear.atBerth(),
                1,
                0,
                Double.POSITIVE_INFINITY,
                new CoatingBreakdown(0.05, 0),
                Map.of(),
                4,
                1);
        double coarse = course(whole, 6).remaining().get(4);
        double fine = course(half, 12).remaining().get(8);
        assertEquals(fine, coarse, 0.005);
        assertTrue(one.remaining().get(12) < 0.5);
    }

    @Test
    void renewedAtHalfItStartsAgain() {
        WastageProblem p = problem(ShorePower.NONE, BoatYear.atBerth()).withDemand(3);
        Wastage.Course course =
                Objects.requireNonNull(WastageSolver.solve(p, 60, true).anodes().get(ANODE));
        assertTrue(course.renewals().size() >= 3);
        assertTrue(course.remaining().stream().allMatch(m -> m >= 0.4));
    }

    @Test
    void calibrationFindsTheDemandThatMadeTheWastage() {
        WastageProblem p = problem(ShorePower.NONE, BoatYear.atBerth());
        double truth = 1.7;
        LocalDate from = LocalDate.of(2025, 4, 1);
        double left = course(p.withDemand(truth), 6).remaining().get(6);
        DemandCalibration c = DemandCalibration.fit(p, List.of(new Weighing(ANODE, from, 1, from.plusDays(183), left)));
        assertEquals(1, c.spells());
        assertTrue(c.demand() > 1.4 && c.demand() < truth, "pulled towards the prior: " + c.demand());
        assertTrue(c.logSpread() < DemandCalibration.none().logSpread());
        assertEquals(
                2, DemandCalibration.none().high() * DemandCalibration.none().highLoss(), 0.3);
    }

    @Test
    void historyGivesMeasuredDatesAndSaysSo() {
        PartRef ref = new PartRef("main", "leg-anode");
        ServiceEntry renewed = ServiceEntry.done(LocalDate.of(2025, 4, 1), ref, "renew-anode", null);
        ServiceEntry seen = weighed(LocalDate.of(2025, 10, 1), ref, 60);
        AnodeLife measured = life(new BoatHistory("test", List.of(renewed, seen), List.of()));
        AnodeLife predicted = life(new BoatHistory("test", List.of(renewed), List.of()));
        WearDate m = assertNotNullAnd(measured.wearDates().get(ref));
        WearDate p = assertNotNullAnd(predicted.wearDates().get(ref));
        assertTrue(m.how().startsWith("measured"));
        assertTrue(p.how().startsWith("predicted"));
        assertTrue(m.date().isBefore(p.date()), m + " " + p);
        assertTrue(!m.early80().isAfter(m.date()) && !m.date().isAfter(m.late80()));
        assertEquals(measured.wearDates(), renewals(new BoatHistory("test", List.of(renewed, seen), List.of())));
    }

    private static ServiceEntry weighed(LocalDate day, PartRef anode, double percentLeft) {
        return new ServiceEntry(
                day,
                anode,
                "inspect-anode",
                Outcome.SEEN,
                null,
                "",
                List.of(new TakenReading("anode-remaining", percentLeft, "%")),
                "");
    }

    private static WearDate assertNotNullAnd(@Nullable WearDate d) {
        assertNotNull(d);
        return d;
    }

    @Test
    void aFullAnodeAfterASeasonIsAFinding() {
        PartRef ref = new PartRef("main", "leg-anode");
        ServiceEntry renewed = ServiceEntry.done(LocalDate.of(2025, 4, 1), ref, "renew-anode", null);
        ServiceEntry full = weighed(LocalDate.of(2025, 10, 1), ref, 99);
        AnodeLife life = life(new BoatHistory("test", List.of(renewed, full), List.of()));
        assertEquals(1, life.findings().size());
        assertTrue(life.findings().get(0).contains("not connected"));
        assertEquals(0, life.calibration().spells(), "its weighing says nothing of the demand");
    }

    @Test
    void withinAMonthDaysOfRenewalStayUntilSomethingIsWrittenDown() {
        PartRef ref = new PartRef("main", "leg-anode");
        ServiceEntry renewed = ServiceEntry.done(LocalDate.of(2025, 4, 17), ref, "renew-anode", null);
        BoatHistory before = new BoatHistory("test", List.of(renewed), List.of());
        ServiceEntry seen = weighed(LocalDate.of(2026, 4, 10), ref, 60);
        BoatHistory after = new BoatHistory("test", List.of(renewed, seen), List.of());
        Map<PartRef, WearDate> first = renewals(before, LocalDate.of(2026, 4, 1));
        for (int day = 2; day <= 30; day++) {
            LocalDate today = LocalDate.of(2026, 4, day);
            assertEquals(first, renewals(before, today));
            assertEquals(day < 10, first.equals(renewals(after, today)), "weighed on the 10th");
        }
    }

    private static Map<PartRef, WearDate> renewals(BoatHistory history) {
        return renewals(history, TODAY);
    }

    private static Map<PartRef, WearDate> renewals(BoatHistory history, LocalDate today) {
        return AnodeLife.renewals(
                new CircuitFromRegister(ProtectionBoats.kinds(), MetalCatalogue.standard()),
                ProtectionBoats.saildrive(),
                ProtectionBoats.sea(ShorePower.NONE),
                CircuitCondition.atBerth(Month.APRIL),
                BoatYear.atBerth(),
                history,
                today);
    }

    private static AnodeLife life(BoatHistory history) {
        return AnodeLife.of(
                new CircuitFromRegister(ProtectionBoats.kinds(), MetalCatalogue.standard()),
                ProtectionBoats.saildrive(),
                ProtectionBoats.sea(ShorePower.NONE),
                CircuitCondition.atBerth(Month.APRIL),
                BoatYear.atBerth(),
                history,
                TODAY);
    }

    @Test
    void magnesiumGoesByItselfEvenWhereItGivesNothing() {
        Boat boat = ProtectionBoats.boat(
                HullMaterial.GRP,
                List.of(),
                ProtectionBoats.installation(
                        "main",
                        Arrangement.SAILDRIVE,
                        Cooling.RAW_WATER,
                        ProtectionBoats.part("leg", "aluminium-casting", 0.45, null),
                        ProtectionBoats.part("leg-anode", "magnesium-anode", 0.03, 0.3)));
        CircuitCondition c = CircuitCondition.atBerth(Month.APRIL);
        BoatCircuit joined = ProtectionBoats.circuit(boat, ProtectionBoats.sea(ShorePower.NONE), c);
        BoatCircuit idle = joined.with(
                joined.circuit().withLink(new Link.OpenJoint("main/leg~main/leg-anode", "main/leg", "main/leg-anode")));
        WastageProblem p = AnodeLife.problem(idle, idle, ProtectionBoats.sea(ShorePower.NONE), c, BoatYear.atBerth());
        assertEquals(0, CircuitSolver.solve(idle.circuit()).body(ANODE).currentA(), 1e-9);
        // 1 A/m2 of self-corrosion from 0.03 m2 at 2205 Ah/kg is 10 g a month of 300 g; with area going as mass to the
        // power 2/3
        // the time to half is 3 (1 - 0.5^(1/3)) of the time that the first rate would take for all.
        double all = 0.3 / (0.03 * 730 / 2205);
        assertEquals(3 * (1 - Math.cbrt(0.5)) * all, course(p, 60).halfGoneMonths(), 0.05);
    }

    @Test
    void aHotMarinaHalvesTheIntervalUntilWeighed() {
        WastageProblem p = problem(ShorePower.NONE, BoatYear.atBerth());
        DemandCalibration hot = DemandCalibration.none(true);
        double usual = course(p, 60).halfGoneMonths();
        assertEquals(0.5, course(p.with(hot.demand(), hot.loss()), 60).halfGoneMonths() / usual, 0.03);
    }

    @Test
    void alloyByWater() {
        assertEquals("magnesium-anode", AlloyChoice.of(0.3, true).metalId());
        assertEquals("aluminium-anode", AlloyChoice.of(8, true).metalId());
        assertEquals("aluminium-anode", AlloyChoice.of(35, true).metalId());
        assertTrue(AlloyChoice.of(35, true).reason().contains("magnesium overprotects"));
    }

    @Test
    void requiredMassShowsItsFormulaAndGoesByHowLongANewOneLasts() {
        WastageProblem p = problem(ShorePower.NONE, BoatYear.atBerth());
        // A zinc anode of 0.8 kg half gone in 8 months gives 0.4 x 780 / 5840 h; for a year it takes half as much
        // again.
        RequiredMass m = RequiredMass.of(p.atBerth().body(ANODE), 8.0, 1, 15);
        assertEquals(0.4 * 780 / 5840, m.meanCurrentA(), 1e-12);
        assertEquals(1.2, m.massKg(), 1e-9);
        assertTrue(m.words().contains("8760"));
        assertEquals(2.4, RequiredMass.of(p.atBerth().body(ANODE), 8.0, 2, 15).massKg(), 1e-9);
    }

    @Test
    void aWornAnodeIsToldHowLongANewOneLasts() {
        WastageProblem p = problem(ShorePower.NONE, BoatYear.atBerth());
        LocalDate day = LocalDate.of(2026, 4, 1);
        AnodeForecast worn = only(p.from(4, Map.of(ANODE, 0.25)), day);
        AnodeForecast fresh = only(p.from(4, Map.of()), day);
        assertEquals(day, worn.halfGone());
        assertEquals(day, only(p.from(4, Map.of(ANODE, 0.15)), day).spent());
        double lasts = Objects.requireNonNull(worn.newLastsMonths());
        LocalDate half = Objects.requireNonNull(fresh.halfGone());
        assertEquals(lasts, java.time.temporal.ChronoUnit.DAYS.between(day, half) / 30.4375, 0.05);
    }

    private static AnodeForecast only(WastageProblem problem, LocalDate day) {
        List<AnodeForecast> all = AnodeForecast.of(problem, DemandCalibration.none(), day, 60, Outlook.TO_THE_END);
        assertEquals(1, all.size());
        return all.get(0);
    }

    @Test
    void weighingsThatCannotBeAreRefused() {
        LocalDate d = LocalDate.of(2025, 1, 1);
        assertThrows(IllegalArgumentException.class, () -> new Weighing("a", d, 0.5, d.plusDays(100), 0.9));
        assertThrows(IllegalArgumentException.class, () -> new Weighing("a", d, 1, d, 0.9));
        assertThrows(
                IllegalArgumentException.class,
                () -> ProtectionBoats.circuit(
                        ProtectionBoats.saildrive(),
                        ProtectionBoats.berth(new Water(55.0, null, List.of()), ShorePower.NONE),
                        CircuitCondition.atBerth(Month.MAY)));
    }
}
