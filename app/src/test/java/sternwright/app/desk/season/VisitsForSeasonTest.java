package sternwright.app.desk.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.desk.InventedDesk;
import sternwright.app.desk.visits.AgreeVisits;
import sternwright.app.desk.visits.PlanVisits;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.sheet.SeasonVisitsSheet;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.season.dated.PublishedWork;
import sternwright.season.dated.SeasonBoat;
import sternwright.service.Place;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatVisits;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.HandChange;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.VisitAt;
import sternwright.visit.solver.SolveLimits;

class VisitsForSeasonTest {
    private static final LocalDate DAY = InventedDesk.TODAY;

    @Test
    void visitsWrittenDownAreNotPlannedAgainUntilSomethingTheyRestOnChanges() {
        YardFiles files = few(InventedDesk.yard());
        VisitsForSeason first = new VisitsForSeason(files, List.of(), DAY, Map.of(), List.of(), List::of);
        List<SeasonBoat> planned = first.all();
        assertEquals(files.boats().size(), first.planned());
        List<PublishedWork> written = written(first.works());
        YardFiles readAgain = few(YardFolder.all(InventedDesk.folder(), DAY));
        VisitsForSeason again = new VisitsForSeason(readAgain, List.of(), DAY, Map.of(), written, List::of);
        assertEquals(said(planned), said(again.all()));
        assertEquals(0, again.planned());
        assertEquals(first.works(), again.works());

        PublishedWork line = written.get(0);
        LocalDate since = DAY.minusDays(30);
        VisitsForSeason ashore =
                new VisitsForSeason(files, List.of(), DAY, Map.of(line.boatId(), since), written, List::of);
        ashore.all();
        assertEquals(1, ashore.planned(), "one boat is known to stand ashore now");

        VisitsForSeason otherDay = new VisitsForSeason(files, List.of(), DAY.plusDays(1), Map.of(), written, List::of);
        otherDay.all();
        assertEquals(files.boats().size(), otherDay.planned());

        List<PublishedWork> shorter = written.subList(1, written.size());
        VisitsForSeason changed = new VisitsForSeason(files, List.of(), DAY, Map.of(), shorter, List::of);
        assertEquals(said(planned), said(changed.all()));
        assertEquals(1, changed.planned(), "a line of one boat is missing");
    }

    @Test
    void visitsPlannedLatelyAreNotPlannedAgainWhereNoneAreWrittenDown(@TempDir Path folder) throws IOException {
        YardFiles files = few(InventedDesk.yard());
        try (Store store = Store.open(StoreAddress.file(folder.resolve("yard.db")), Clock.systemUTC())) {
            VisitsForSeason first = planned(files, store.shelf("Ann"), DAY);
            List<SeasonBoat> planned = first.all();
            assertEquals(files.boats().size(), first.planned());
            KeptVisits.keep(store.shelf("Ann"), first.fresh());

            VisitsForSeason again = planned(files, store.shelf("Ben"), DAY);
            assertEquals(said(planned), said(again.all()));
            assertEquals(0, again.planned());
            assertEquals(List.of(), again.fresh());
            assertEquals(first.works(), again.works());

            VisitsForSeason otherDay = planned(files, store.shelf("Ben"), DAY.plusDays(1));
            otherDay.all();
            assertEquals(files.boats().size(), otherDay.planned(), "they rest on another day");
        }
    }

    private static VisitsForSeason planned(YardFiles files, Shelf shelf, LocalDate day) {
        return new VisitsForSeason(files, List.of(), day, Map.of(), List.of(), () -> KeptVisits.read(shelf));
    }

    /** As a text and back. */
    private static List<PublishedWork> written(List<PublishedWork> works) {
        return SeasonVisitsSheet.VISITS
                .read(
                        SeasonVisitsSheet.VISITS.write(works),
                        new Reading("season-visits.csv", LocalDate.MAX),
                        new ArrayList<>())
                .stream()
                .map(Sheet.Row::value)
                .toList();
    }

    /** All that the season uses of visits. */
    private static List<String> said(List<SeasonBoat> boats) {
        return boats.stream()
                .flatMap(b -> b.visits().stream())
                .map(v -> v.boatId() + " " + v.from() + " " + v.to() + " " + v.place() + " " + v.lifts() + " "
                        + v.minutes() + " "
                        + v.works().stream()
                                .map(w -> w.part() + " " + w.words() + " "
                                        + w.inForce().rule().id() + " " + w.minutes() + " " + w.price() + " "
                                        + w.dueOn() + " "
                                        + w.clause())
                                .toList())
                .toList();
    }

    private static YardFiles few(YardFiles all) {
        Map<String, Boat> few = all.boats().entrySet().stream()
                .limit(8)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return new YardFiles(
                all.yard(),
                all.berths(),
                all.catalogue(),
                all.generic(),
                all.programmes(),
                few,
                all.histories(),
                List.of());
    }

    @Test
    void theSeasonHasTheVisitsThatWereAgreed() {
        YardFiles files = few(InventedDesk.yard());
        Map<String, Boat> few = files.boats();
        Map<String, List<PlannedVisit>> proposed =
                visits(new VisitsForSeason(files, List.of(), DAY, Map.of(), List.of(), List::of));
        List<AgreedWork> agreed = new ArrayList<>();
        few.values().forEach(b -> agreed.addAll(moved(files, b)));
        assertTrue(!agreed.isEmpty(), "one of eight boats has a visit that can be moved");
        AgreedWork nobody = new AgreedWork(
                "no-such-boat",
                new VisitAt(java.time.YearMonth.of(2027, 3), Place.AFLOAT),
                new PartRef("a", "b"),
                "c",
                DAY,
                "");
        agreed.add(nobody);
        VisitsForSeason season = new VisitsForSeason(files, agreed, DAY, Map.of(), List.of(), List::of);
        Map<String, List<PlannedVisit>> kept = visits(season);
        Set<String> boats =
                agreed.stream().map(AgreedWork::boatId).filter(few::containsKey).collect(Collectors.toSet());
        for (String boat : boats) {
            Set<VisitAt> months = agreed.stream()
                    .filter(a -> a.boatId().equals(boat))
                    .map(AgreedWork::at)
                    .collect(Collectors.toSet());
            assertTrue(
                    at(Objects.requireNonNull(kept.get(boat))).containsAll(months),
                    boat + ": " + at(Objects.requireNonNull(kept.get(boat))) + " for " + months);
        }
        few.keySet().stream()
                .filter(b -> !boats.contains(b))
                .forEach(b -> assertEquals(
                        at(Objects.requireNonNull(proposed.get(b))),
                        at(Objects.requireNonNull(kept.get(b))),
                        "what is not agreed stays as proposed"));
        assertTrue(
                season.remarks().stream().anyMatch(r -> r.contains("no-such-boat")),
                season.remarks().toString());
    }

    /** Her plan with one visit a month later, if that may be. */
    private static List<AgreedWork> moved(YardFiles files, Boat boat) {
        BoatVisits visits = new PlanVisits(files, Map.of(), Locale.UK).of(boat, DAY, 18);
        if (visits.plan(SolveLimits.ofNodes(40).withGap(0.02)) instanceof BoatPlan plan) {
            for (PlannedVisit v : plan.visits()) {
                VisitAt from = VisitAt.of(v);
                VisitAt to = new VisitAt(from.month().plusMonths(1), from.place());
                if (v.works().isEmpty()
                        || to.month().isAfter(java.time.YearMonth.from(DAY).plusMonths(16))) {
                    continue;
                }
                HandPlan hand = visits.byHand(plan, List.of(new HandChange.MoveVisit(from, to)));
                if (hand.allowed()) {
                    return AgreeVisits.works(hand.plan(), DAY, "A. Owner");
                }
            }
        }
        return List.of();
    }

    private static Map<String, List<PlannedVisit>> visits(VisitsForSeason season) {
        return season.all().stream().collect(Collectors.toMap(b -> b.boat().id(), SeasonBoat::visits));
    }

    private static Set<VisitAt> at(List<PlannedVisit> visits) {
        return visits.stream().map(VisitAt::of).collect(Collectors.toSet());
    }
}
