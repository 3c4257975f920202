package sternwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.service.Place;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;

class JobCardsTest {
    private final PlannedVisit visit = InventedVisits.layUp();
    private final JobCard card = JobCards.of(visit, InventedVisits.facts());

    @Test
    void everyWorkStandsOnTheCardOnce() {
        List<PlannedWork> onCard = card.works().stream().map(CardWork::planned).toList();
        assertEquals(visit.works().size(), onCard.size());
        assertEquals(new HashSet<>(visit.works()), new HashSet<>(onCard));
        assertEquals(
                java.util.stream.IntStream.rangeClosed(1, 10).boxed().toList(),
                card.works().stream().map(CardWork::number).toList());
    }

    @Test
    void aMeterReadingThatDoesNotFitIsNotPrinted() {
        CardFacts f = InventedVisits.facts();
        List<MeterReading> meter = new ArrayList<>(f.history().meter());
        meter.add(MeterReading.of(LocalDate.of(2026, 6, 20), "main", 7020));
        BoatHistory slipped = new BoatHistory(f.boat().id(), f.history().entries(), meter);
        CardFacts facts =
                new CardFacts(f.yard(), f.boat(), f.berth(), f.catalogue(), f.cautions(), slipped, f.issuedOn());
        assertEquals(
                MeterReading.of(LocalDate.of(2026, 6, 20), "main", 702),
                JobCards.of(visit, facts).engines().get(0).lastMeter());
    }

    @Test
    void worksAtOneServicePointStandTogether() {
        assertEquals(
                List.of("engine", "raw water pump", "diaphragm seal", "mounts", "stern gear", "raw water", "leg"),
                card.points().stream().map(CardPoint::name).toList());
    }

    @Test
    void isolationOfTheLegIsProvedAfterTheWorkOnTheLeg() {
        List<String> ids = card.works().stream()
                .map(w -> w.planned().inForce().rule().id())
                .toList();
        assertTrue(ids.indexOf("leg-isolation") > ids.indexOf("diaphragm-seal"));
        assertTrue(ids.indexOf("leg-isolation") > ids.indexOf("leg-oil-drain"));
    }

    @Test
    void eachCautionStandsOnceInFullAndItsKeyAtEveryWorkThatNamesIt() {
        List<CardCaution> full = new ArrayList<>(card.cautions());
        card.points().forEach(p -> full.addAll(p.cautions()));
        Set<String> ids = new HashSet<>();
        full.forEach(c -> assertTrue(ids.add(c.caution().id()), c.caution().id() + " twice"));
        InventedVisits.cautions().forEach(c -> assertTrue(ids.contains(c.id()), c.id()));
        for (CardWork w : card.works()) {
            List<String> named = w.cautions().stream()
                    .map(k -> full.stream()
                            .filter(c -> c.key().equals(k))
                            .findFirst()
                            .orElseThrow()
                            .caution()
                            .id())
                    .toList();
            assertEquals(new HashSet<>(w.planned().inForce().rule().cautions()), new HashSet<>(named));
        }
    }

    @Test
    void aCautionOfSeveralPointsStandsAtTheHeadOneOfASinglePointThere() {
        assertEquals(
                List.of("who-decides", "lifting", "waste", "antifreeze", "rotating-parts"),
                card.cautions().stream().map(c -> c.caution().id()).toList());
        assertEquals(
                List.of("hot-oil", "hot-coolant"),
                card.points().get(0).cautions().stream()
                        .map(c -> c.caution().id())
                        .toList());
    }

    @Test
    void afloatOnShorePowerWarnsOfWaterAndOpenings() {
        JobCard afloat = JobCards.of(afloat(), InventedVisits.facts());
        List<String> ids = afloat.cautions().stream().map(c -> c.caution().id()).toList();
        assertTrue(ids.containsAll(List.of("afloat", "shore-power")));
        assertFalse(ids.contains("lifting"));
        assertTrue(afloat.diver(), "works that belong ashore are a diver's when the boat is afloat");
    }

    @Test
    void theLastReadingStandsBesideTheOneAsked() {
        CardReading anode = reading("anode-remaining");
        assertEquals(82, Objects.requireNonNull(anode.last()).value());
        assertEquals(LocalDate.of(2025, 10, 10), anode.lastOn());
        assertNull(reading("leg-isolation").last());
    }

    @Test
    void openingsBelowWaterAreAskedFor() {
        assertEquals(
                List.of(
                        new HullOpening(InventedVisits.ref("seacock"), "seacock", true),
                        new HullOpening(InventedVisits.ref("diaphragm"), "diaphragm seal", false)),
                card.openings());
    }

    @Test
    void whatIsNotKnownIsSaid() {
        assertTrue(card.toSettle().stream().anyMatch(s -> s.contains("capacity of the leg is not known; 3 L allowed")));
        assertTrue(card.toSettle().stream().anyMatch(s -> s.contains("Engine: model not known")));
        CardFacts f = InventedVisits.facts();
        JobCard bare = JobCards.of(
                visit,
                new CardFacts(
                        f.yard(),
                        f.boat(),
                        f.berth(),
                        f.catalogue(),
                        List.of(),
                        sternwright.history.BoatHistory.empty("grey-plover"),
                        f.issuedOn()));
        assertTrue(bare.toSettle().stream().anyMatch(s -> s.contains("\"hot-oil\"")));
        assertTrue(bare.toSettle().stream().anyMatch(s -> s.contains("no hour-meter reading")));
    }

    @Test
    void minutesAddUp() {
        double working = 60 + 10 + 67.5 + 10 + 480 + 37.5 + 40 + 20 + 30 + 60;
        assertEquals(working + 90, card.minutes(), 1e-9);
        assertEquals(90, card.setUpMinutes(), 1e-9);
        assertEquals(
                working, card.points().stream().mapToDouble(CardPoint::minutes).sum(), 1e-9);
    }

    @Test
    void anotherBoatsVisitIsRefused() {
        PlannedVisit v = visit;
        PlannedVisit other = new PlannedVisit(
                "other",
                v.from(),
                v.to(),
                v.place(),
                v.lifts(),
                v.works(),
                v.minutes(),
                v.supplies(),
                v.prices(),
                v.net(),
                v.savedByBundling());
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> JobCards.of(other, InventedVisits.facts()));
        assertTrue(String.valueOf(e.getMessage()).contains("grey-plover"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whateverTheOrderOfThePlanFollowOnsComeAfterAndNoWorkIsLost(long seed) {
        List<PlannedWork> works = new ArrayList<>(visit.works());
        Collections.shuffle(works, new Random(seed));
        List<String> ids = WorkingOrder.of(works).stream()
                .flatMap(g -> g.works().stream())
                .map(w -> w.inForce().rule().id())
                .toList();
        assertEquals(works.size(), new HashSet<>(ids).size());
        assertTrue(ids.indexOf("leg-isolation") > ids.indexOf("diaphragm-seal"));
        assertTrue(ids.indexOf("leg-isolation") > ids.indexOf("leg-oil-drain"));
    }

    private static PlannedVisit afloat() {
        PlannedVisit v = InventedVisits.layUp();
        return new PlannedVisit(
                v.boatId(),
                v.from(),
                v.to(),
                Place.AFLOAT,
                false,
                v.works(),
                v.minutes(),
                v.supplies(),
                v.prices(),
                v.net(),
                v.savedByBundling());
    }

    private CardReading reading(String name) {
        return card.works().stream()
                .flatMap(w -> w.readings().stream())
                .filter(r -> r.asked().name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
