package sternwright.app.desk.season.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.run.RunAsk;
import sternwright.app.desk.season.run.SeasonJobs;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.shelf.Writing;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.app.store.job.SeasonRun;

/** The plan of a run that another program made: looked through behind the asker, once. */
class JudgedRunsTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-09-15");
    private static final SeasonJobs.Pace QUICK =
            new SeasonJobs.Pace(Duration.ofMillis(100), Duration.ofSeconds(1), Duration.ofMillis(300));

    @TempDir
    Path folder;

    @Test
    void thePlanOfAnotherProgramIsLookedThroughBehindTheAskerAndSoIsWhatHasChanged() throws Exception {
        Clock clock = Clock.fixed(TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        try (Store store = Store.open(StoreAddress.file(folder.resolve("yard.db")), clock)) {
            new InventedFolder(InventedFolder.Where.NORTH).write(store.shelf("demo"), 4, TODAY, 3);
            SeasonRun run = done(store);
            OpenYard yard = new OpenYard(store, clock);
            try (SeasonJobs here = new SeasonJobs(store, QUICK, System::nanoTime);
                    JudgedRuns judged = new JudgedRuns(yard, here)) {
                assertFalse(judged.underWay(run), "nobody has asked");
                assertTrue(judged.of(run).isEmpty(), "whoever asks first does not wait");
                SeasonRun head = here.head(run.id()).orElseThrow();
                assertTrue(judged.underWay(head) || judged.of(run).isPresent(), "told without its plan");
                PlannedSeason season = waited(judged, run);
                assertFalse(judged.underWay(head), "done");
                assertEquals(run.plan(), SeasonSheets.PLAN.write(season.dated().published(TODAY)));
                assertSame(season.dated(), waited(judged, run).dated(), "looked through once");
            }
            nobodyThere(store);
            try (SeasonJobs here = new SeasonJobs(store, QUICK, System::nanoTime);
                    JudgedRuns judged = new JudgedRuns(yard, here)) {
                BadInput changed = assertThrows(BadInput.class, () -> waited(judged, run));
                assertFalse(changed.problems().isEmpty());
                assertSame(changed, assertThrows(BadInput.class, () -> judged.of(run)), "found once");
            }
        }
    }

    private static SeasonRun done(Store store) throws InterruptedException {
        try (SeasonJobs jobs = new SeasonJobs(store, QUICK, System::nanoTime)) {
            String id = jobs.ask(new RunAsk(TODAY, null, true, List.of(), 1, 1), "Ann");
            jobs.start();
            SeasonRun run = jobs.one(id).orElseThrow();
            for (int i = 0; i < 1200 && !run.ended(); i++) {
                TimeUnit.MILLISECONDS.sleep(50);
                run = jobs.one(id).orElseThrow();
            }
            assertEquals(SeasonRun.State.DONE, run.state(), run.says());
            return run;
        }
    }

    private static PlannedSeason waited(JudgedRuns judged, SeasonRun run) throws InterruptedException {
        Optional<PlannedSeason> season = judged.of(run);
        for (int i = 0; i < 1200 && season.isEmpty(); i++) {
            TimeUnit.MILLISECONDS.sleep(50);
            season = judged.of(run);
        }
        return season.orElseThrow();
    }

    private static void nobodyThere(Store store) throws Exception {
        StringBuilder away = new StringBuilder("who,from,to,why\n");
        SeasonFolder.read(store.shelf(""), TODAY)
                .resources()
                .crew()
                .forEach(c -> away.append(c.id()).append(",2026-09-15,2027-08-31,\n"));
        try (Writing writing = store.shelf("Ben").write("away")) {
            writing.put(SeasonFolder.AWAY, away.toString());
            writing.commit();
        }
    }
}
