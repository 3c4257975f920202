package sternwright.app.desk.proving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.visits.PlanVisits;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Writing;
import sternwright.boat.Boat;
import sternwright.boat.Winter;
import sternwright.visit.BoatPlan;
import sternwright.visit.problem.BoatMonth;

/** Plans on the pages look for a boat that stands ashore where the command line does. */
class AgreedPlansTest {
    /** Inside the lay-up: the boat may be in either place until somebody writes down where she is. */
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 10);

    @TempDir
    Path folder;

    @Test
    void aBoatWrittenDownAsAshoreIsPlannedAshore() throws IOException {
        FolderShelf shelf = new FolderShelf(folder);
        new InventedFolder(InventedFolder.Where.NORTH).write(shelf, 8, TODAY, 1);
        OpenYard yard =
                new OpenYard(folder, Clock.fixed(TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC));
        Boat boat = yard.files().boats().values().stream()
                .filter(b -> b.winter() == Winter.ASHORE)
                .findFirst()
                .orElseThrow();
        try (ProvedPlans plans = new ProvedPlans()) {
            AgreedPlans agreed = new AgreedPlans(yard, plans);
            write(shelf, "");
            yard.changed();
            assertTrue(firstMonth(agreed, boat).afloatPossible());
            write(shelf, boat.id() + ",ashore-since,2026-11-02,,\n");
            yard.changed();
            assertFalse(firstMonth(agreed, boat).afloatPossible());
        }
    }

    @Test
    void whatWasLookedAtStaysToBeAgreedWhenTheProofEnds() throws Exception {
        FolderShelf shelf = new FolderShelf(folder);
        new InventedFolder(InventedFolder.Where.NORTH).write(shelf, 8, TODAY, 1);
        OpenYard yard =
                new OpenYard(folder, Clock.fixed(TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC));
        int others = 0;
        for (Boat boat : yard.files().boats().values()) {
            PlanRun run =
                    new PlanRun(() -> new PlanVisits(yard.files(), Map.of(), Locale.UK).of(boat, yard.today(), 24));
            List<BoatPlan> looked = run.shown();
            run.work();
            for (BoatPlan plan : looked) {
                String mark = PlanMark.of(plan);
                assertEquals(mark, PlanMark.of(AgreedPlans.proposed(run, mark).orElseThrow()), boat.name());
                others +=
                        PlanMark.of(AgreedPlans.proposed(run, "").orElseThrow()).equals(mark) ? 0 : 1;
            }
            assertTrue(AgreedPlans.proposed(run, "no such mark").isEmpty());
        }
        assertTrue(others > 0, "the proof must have found another plan for some boat, or nothing was tried");
    }

    private static void write(FolderShelf shelf, String dates) throws IOException {
        try (Writing writing = shelf.write("dates")) {
            writing.put(SeasonFolder.DATES, "boat,kind,date,work,note\n" + dates);
            writing.commit();
        }
    }

    private static BoatMonth firstMonth(AgreedPlans agreed, Boat boat) {
        return agreed.proposed(boat, 24, Locale.UK).visits().problem().months().get(0);
    }
}
