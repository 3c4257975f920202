package sternwright.due;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sternwright.boat.Part;
import sternwright.history.Outcome;
import sternwright.history.TakenReading;
import sternwright.service.EveryNth;
import sternwright.service.Half;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Occasion;
import sternwright.service.Rule;
import sternwright.service.Trigger;

/** Due arithmetic against the facts of the service practice (intervals: common practice, no source) and the calendar. */
class DueListTest {
    private static final Part ENGINE = Part.of("engine", "engine");
    private static final Reasons REASONS = new Reasons(Locale.UK);

    @ParameterizedTest
    @CsvSource({
        "2024-02-29, 12, 2025-02-28",
        "2024-02-29, 48, 2028-02-29",
        "2025-01-31, 1, 2025-02-28",
        "2025-08-31, 6, 2026-02-28",
        "2025-10-10, 12, 2026-10-10",
        "2025-12-31, 2, 2026-02-28"
    })
    void monthsCountToTheSameDayOrTheLastOfTheMonth(String last, int months, String expected) {
        Due due = new OneBoat()
                .part(ENGINE)
                .rule("engine", OneBoat.rule("oil", Interval.of(months, null)))
                .done(last, "engine", "oil", null)
                .the("oil", "2025-12-31");
        assertEquals(LocalDate.parse(expected), due.dueOn());
        assertEquals(ClauseKind.MONTHS, due.first().kind());
    }

    @Test
    void hoursAlreadyRunAreDueOnTheDayTheyWerePassed() {
        Due due = new OneBoat()
                .part(ENGINE)
                .rule("engine", OneBoat.rule("oil", Interval.of(12, 200.0)))
                .done("2025-10-01", "engine", "oil", 1000.0)
                .meter("2025-10-01", 1000)
                .meter("2026-07-01", 1180)
                .meter("2026-08-01", 1220)
                .the("oil", "2026-08-10");
        assertEquals(ClauseKind.HOURS, due.first().kind());
        assertTrue(due.dueOn().isAfter(LocalDate.of(2026, 7, 1)) && due.dueOn().isBefore(LocalDate.of(2026, 8, 1)));
    }

    @Test
    void hoursToComeHaveARangeAroundTheMedian() {
        Due due = new OneBoat()
                .part(ENGINE)
                .rule("engine", OneBoat.rule("oil", Interval.of(null, 200.0)))
                .done("2025-10-01", "engine", "oil", 1000.0)
                .meter("2022-10-01", 700)
                .meter("2025-10-01", 1000)
                .the("oil", "2025-11-01");
        Clause hours = due.first();
        assertTrue(requireNonNull(hours.early80()).isBefore(hours.date()));
        assertTrue(hours.date().isBefore(requireNonNull(hours.late80())));
        assertEquals(2027, hours.date().getYear(), "200 h at about 100 h a year from October 2025");
    }

    @Test
    void unknownHistoryIsDueAtTheFirstVisitAndSaysSo() {
        Due due = new OneBoat()
                .part(ENGINE)
                .rule("engine", OneBoat.rule("seal", new Interval(null, null, 84, null, null, List.of(), null)))
                .the("seal", "2026-01-10");
        assertEquals(DueState.UNKNOWN, due.state());
        assertTrue(REASONS.sentence(due).contains("nobody knows"), REASONS.sentence(due));
    }

    @Test
    void everyThirdOilChangeIsTheDrain() {
        OneBoat boat = new OneBoat()
                .part(Part.of("leg", "leg").fitted(LocalDate.of(2022, 10, 1), 0.0))
                .rule("leg", OneBoat.rule("suck", Interval.of(12, null)))
                .rule(
                        "leg",
                        OneBoat.rule(
                                "drain",
                                new Interval(null, null, null, new EveryNth("suck", 3), null, List.of(), null)))
                .done("2023-10-01", "leg", "suck", null)
                .done("2024-10-01", "leg", "suck", null);
        assertEquals(LocalDate.of(2025, 10, 1), boat.the("drain", "2025-01-01").dueOn());
        boat.done("2025-10-02", "leg", "drain", null);
        assertEquals(LocalDate.of(2028, 10, 2), boat.the("drain", "2025-11-01").dueOn());
        assertEquals(
                LocalDate.of(2026, 10, 2), boat.the("suck", "2025-11-01").dueOn(), "the drain is an oil change too");
    }

    @Test
    void contaminationHalvesTheLifeOfMounts() {
        Modifier halved = new Modifier("condition:contaminated", 0.5, null, "diesel on the rubber", OneBoat.PRACTICE);
        Rule renew = OneBoat.rule(
                "renew",
                new Interval(null, null, 120, null, null, List.of(), null),
                Half.ANY,
                false,
                true,
                List.of(halved),
                List.of(),
                Set.of());
        OneBoat boat = new OneBoat()
                .part(Part.of("mount", "mount").fitted(LocalDate.of(2020, 3, 1), null))
                .rule("mount", renew);
        assertEquals(LocalDate.of(2030, 3, 1), boat.the("renew", "2026-01-01").dueOn());
        boat.entry("2025-06-01", "mount", "contaminated", Outcome.HAPPENED);
        Due due = boat.the("renew", "2026-01-01");
        assertEquals(LocalDate.of(2025, 3, 1), due.dueOn());
        assertTrue(REASONS.sentence(due).contains("diesel on the rubber"));
        boat.done("2026-02-01", "mount", "renew", null);
        assertEquals(LocalDate.of(2036, 2, 1), boat.the("renew", "2026-03-01").dueOn(), "the new mount is clean");
    }

    @Test
    void hotMarinaHalvesTheAnodeInterval() {
        Modifier hot = new Modifier("hot-marina", 1, 6, "hot marina", OneBoat.PRACTICE);
        Rule inspect = OneBoat.rule(
                "inspect", Interval.of(12, null), Half.ANY, false, false, List.of(hot), List.of(), Set.of());
        OneBoat boat = new OneBoat()
                .part(Part.of("a", "anode"))
                .rule("anode", inspect)
                .done("2026-01-31", "a", "inspect", null);
        assertEquals(
                LocalDate.of(2027, 1, 31), boat.the("inspect", "2026-02-01").dueOn());
        assertEquals(
                LocalDate.of(2026, 7, 31),
                boat.hotMarina().the("inspect", "2026-02-01").dueOn());
    }

    @Test
    void halfGoneAnodeIsRenewedWhateverTheDateUntilItIs() {
        Trigger half = new Trigger("anode-remaining", 50.0, null, "half of the anode is gone");
        Rule renew = OneBoat.rule(
                "renew", Interval.of(null, null), Half.ANY, false, true, List.of(), List.of(half), Set.of());
        OneBoat boat = new OneBoat()
                .part(Part.of("a", "anode"))
                .rule("anode", renew)
                .entry("2026-03-01", "a", "inspect", Outcome.SEEN, new TakenReading("anode-remaining", 45, "%"));
        Due due = boat.the("renew", "2026-04-01");
        assertEquals(LocalDate.of(2026, 3, 1), due.dueOn());
        assertEquals(ClauseKind.CONDITION, due.first().kind());
        assertTrue(boat.done("2026-03-01", "a", "renew", null).on("2026-04-01").isEmpty());
    }

    @Test
    void alignmentFollowsMountsAndGrounding() {
        Interval after = new Interval(24, null, null, null, null, List.of("renew-mounts", "event:grounding"), null);
        OneBoat boat = new OneBoat()
                .part(Part.of("coupling", "coupling"))
                .part(Part.of("mounts", "mounts"))
                .rule("coupling", OneBoat.rule("align", after))
                .done("2025-05-01", "coupling", "align", null);
        assertEquals(LocalDate.of(2027, 5, 1), boat.the("align", "2026-01-01").dueOn());
        boat.done("2026-02-10", "mounts", "renew-mounts", null);
        assertEquals(LocalDate.of(2026, 2, 10), boat.the("align", "2026-02-20").dueOn());
        boat.done("2026-02-25", "coupling", "align", null).entry("2026-06-01", "mounts", "grounding", Outcome.HAPPENED);
        Due due = boat.the("align", "2026-06-02");
        assertEquals(LocalDate.of(2026, 6, 1), due.dueOn());
        assertTrue(REASONS.sentence(due).contains("grounding"));
    }

    @Test
    void mountsGoWithTheSealIfTheyWouldNotLastToTheNext() {
        Rule seal = OneBoat.rule(
                "seal",
                new Interval(null, null, 84, null, null, List.of(), null),
                Half.ANY,
                true,
                true,
                List.of(),
                List.of(),
                Set.of());
        Rule mounts = OneBoat.rule(
                "mounts",
                new Interval(null, null, 120, null, null, List.of(), "seal"),
                Half.ANY,
                false,
                true,
                List.of(),
                List.of(),
                Set.of());
        OneBoat boat = new OneBoat()
                .part(Part.of("seal", "seal").fitted(LocalDate.of(2020, 4, 1), null))
                .part(Part.of("mounts", "mounts").fitted(LocalDate.of(2019, 4, 1), null))
                .rule("seal", seal)
                .rule("mounts", mounts);
        Due due = boat.the("mounts", "2026-01-01");
        assertEquals(LocalDate.of(2027, 4, 1), due.dueOn());
        assertEquals(ClauseKind.OPPORTUNITY, due.first().kind());
    }

    @ParameterizedTest
    @CsvSource({
        "false, 2026-10-01, , 2026-11-15, DUE",
        "false, 2026-06-01, , 2026-11-15, COMING",
        "false, 2026-10-20, 2026-10-10, 2027-11-15, COMING",
        "false, 2026-12-05, , 2026-11-15, OVERDUE",
        "true, 2026-04-01, , 2026-05-15, DUE",
        "true, 2026-01-10, , 2026-05-15, COMING"
    })
    void frostProtectionIsDueBeforeTheFirstFrostInBothHemispheres(
            boolean south, String today, @Nullable String done, String expected, DueState state) {
        Interval frost = new Interval(null, null, null, null, Occasion.EVERY_LAY_UP_BEFORE_FROST, List.of(), null);
        OneBoat boat = new OneBoat()
                .part(ENGINE)
                .rule("engine", OneBoat.rule("frost", frost, Half.LAY_UP, true, false, List.of(), List.of(), Set.of()));
        if (south) {
            boat.south();
        }
        if (done != null) {
            boat.done(done, "engine", "frost", null);
        }
        Due due = boat.the("frost", today);
        assertEquals(LocalDate.parse(expected), due.dueOn());
        assertEquals(state, due.state());
    }

    @Test
    void layUpWorkGoesIntoTheLayUpWindowAroundItsDate() {
        OneBoat boat = new OneBoat()
                .part(ENGINE)
                .rule(
                        "engine",
                        OneBoat.rule(
                                "oil",
                                Interval.of(12, null),
                                Half.LAY_UP,
                                false,
                                false,
                                List.of(),
                                List.of(),
                                Set.of()))
                .done("2025-10-10", "engine", "oil", null);
        Due due = boat.the("oil", "2026-09-02");
        assertEquals(LocalDate.of(2026, 9, 1), due.earliest());
        assertEquals(LocalDate.of(2026, 11, 30), due.lastSensible());
        assertEquals(DueState.DUE, due.state());
    }

    @Test
    void aSafetyItemIsNeverSensiblePastItsLife() {
        Rule seal = OneBoat.rule(
                "seal",
                new Interval(null, null, 84, null, null, List.of(), null),
                Half.LAY_UP,
                true,
                true,
                List.of(),
                List.of(),
                Set.of());
        OneBoat boat = new OneBoat()
                .part(Part.of("seal", "seal").fitted(LocalDate.of(2019, 10, 15), null))
                .rule("seal", seal);
        assertEquals(LocalDate.of(2026, 10, 15), boat.the("seal", "2026-09-01").lastSensible());
        assertEquals(DueState.OVERDUE, boat.the("seal", "2026-10-16").state());
        boat.entry("2026-10-20", "seal", "seal", Outcome.REFUSED);
        assertEquals(DueState.REFUSED, boat.the("seal", "2026-10-21").state());
    }

    @Test
    void entriesAfterTodayAreNotLookedAt() {
        OneBoat boat = new OneBoat()
                .part(ENGINE)
                .rule("engine", OneBoat.rule("oil", Interval.of(12, null)))
                .done("2025-10-10", "engine", "oil", null)
                .done("2026-10-10", "engine", "oil", null);
        assertEquals(LocalDate.of(2026, 10, 10), boat.the("oil", "2026-01-01").dueOn());
        assertEquals(LocalDate.of(2027, 10, 10), boat.the("oil", "2026-12-01").dueOn());
    }

    @ParameterizedTest
    @CsvSource({"1, 'a month after it was'", "6, '6 months after it was'"})
    void oneMonthIsNotCalledMonths(int months, String expected) {
        Due due = new OneBoat()
                .part(ENGINE)
                .rule("engine", OneBoat.rule("look", Interval.of(months, null)))
                .done("2026-03-10", "engine", "look", null)
                .the("look", "2026-03-12");
        assertTrue(REASONS.sentence(due).contains(expected), REASONS.sentence(due));
    }
}
