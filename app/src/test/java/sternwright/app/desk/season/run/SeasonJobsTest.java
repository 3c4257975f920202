package sternwright.app.desk.season.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.store.RunningPostgres;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.app.store.job.SeasonRun;
import sternwright.season.dated.event.SeasonEvent;
import sternwright.yard.resource.Absence;

/** A run of the season is done once, seen everywhere, stopped from anywhere, and taken over from a program that dies. */
class SeasonJobsTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-09-15");
    private static final int PATIENCE_S = 120;

    @TempDir
    Path folder;

    @Test
    void whatIsAskedOutlastsTheProgram() {
        LocalDate day = LocalDate.parse("2026-10-02");
        RunAsk ask = new RunAsk(
                TODAY,
                null,
                true,
                List.of(
                        new SeasonEvent.PersonAway("ab", new Absence(day, day.plusDays(3), "flu")),
                        new SeasonEvent.HoistDown("big", new Absence(day, day, "")),
                        new SeasonEvent.PartLate("heron", "renew-bellows", day),
                        new SeasonEvent.Emergency("tern", day),
                        new SeasonEvent.OwnerWants("tern", day)),
                30,
                7);
        assertEquals(ask, RunAsk.of(ask.text()));
    }

    @Test
    void onOneProgramWithSqliteItIsDonePublishedAndStopped() throws Exception {
        try (Store store = yard(StoreAddress.file(folder.resolve("yard.db")));
                SeasonJobs jobs = new SeasonJobs(store, OneNode.QUICK, System::nanoTime)) {
            String done = jobs.ask(new RunAsk(TODAY, null, true, List.of(), 2, 1), "Ann");
            assertEquals(SeasonRun.State.WAITING, jobs.one(done).orElseThrow().state());
            jobs.start();
            SeasonRun run = wait(jobs, done, SeasonRun::ended);
            assertEquals(SeasonRun.State.DONE, run.state(), run.says());
            assertEquals(1, run.tries());
            assertTrue(run.cost() != null && run.bound() != null && run.bound() <= run.cost() + 1e-6);
            assertEquals("Ann", run.by());
            jobs.publish(run, "Ben");
            assertEquals(run.plan(), store.shelf("").text(SeasonFolder.PLAN).orElseThrow());
            assertEquals("Ben", store.versions(SeasonFolder.PLAN).get(0).by());

            String stopped = jobs.ask(new RunAsk(TODAY, null, true, List.of(), 600, 1), "Ann");
            wait(jobs, stopped, r -> r.plan() != null);
            jobs.stop(stopped);
            assertEquals(
                    SeasonRun.State.STOPPED,
                    wait(jobs, stopped, SeasonRun::ended).state());
            SeasonRun kept = jobs.one(stopped).orElseThrow();
            try (SeasonJobs elsewhere = new SeasonJobs(store, OneNode.QUICK, System::nanoTime)) {
                PlannedSeason asKept = elsewhere.planned(kept).orElseThrow();
                assertEquals(
                        kept.plan(),
                        SeasonSheets.PLAN.write(asKept.dated().published(TODAY)),
                        "what another program shows is the plan that was kept, to the letter");
                assertEquals(
                        Objects.requireNonNull(kept.cost()),
                        asKept.dated().cost().total(),
                        1e-6);
            }
        }
    }

    @Test
    void aSeasonThatCannotBeIsRefusedWithTheReason() throws Exception {
        try (Store store = Store.open(StoreAddress.file(folder.resolve("yard.db")), Clock.systemUTC());
                SeasonJobs jobs = new SeasonJobs(store, OneNode.QUICK, System::nanoTime)) {
            jobs.start();
            String id = jobs.ask(new RunAsk(TODAY, null, true, List.of(), 2, 1), "Ann");
            SeasonRun run = wait(jobs, id, SeasonRun::ended);
            assertEquals(SeasonRun.State.REFUSED, run.state());
            assertTrue(run.says().contains("yard.yaml"), run.says());
        }
    }

    @Test
    void whenTheProgramThatWorksOnItIsKilledAnotherTakesItOverAndItIsDoneOnce() throws Exception {
        StoreAddress address = RunningPostgres.fresh();
        Process first = null;
        Process second = null;
        try (Store store = yard(address);
                SeasonJobs here = new SeasonJobs(store, OneNode.QUICK, System::nanoTime)) {
            String id = here.ask(new RunAsk(TODAY, null, true, List.of(), 9, 1), "Ann");
            String other = here.ask(new RunAsk(TODAY, null, true, List.of(), 1, 2), "Ann");
            first = node(address);
            second = node(address);
            SeasonRun before = wait(here, id, r -> r.plan() != null && r.spentS() < 8);
            Map<String, Process> byNode = Map.of(" " + first.pid() + " ", first, " " + second.pid() + " ", second);
            Process working = byNode.entrySet().stream()
                    .filter(e -> before.node().contains(e.getKey()))
                    .findFirst()
                    .orElseThrow()
                    .getValue();
            working.destroyForcibly().waitFor();
            assertEquals(SeasonRun.State.RUNNING, here.one(id).orElseThrow().state());

            SeasonRun after = wait(here, id, SeasonRun::ended);
            assertEquals(SeasonRun.State.DONE, after.state(), after.says());
            assertEquals(2, after.tries(), "begun by one, taken over by the other");
            assertNotEquals(before.node(), after.node());
            assertTrue(after.spentS() >= before.spentS());
            Double first1 = before.cost();
            Double last = after.cost();
            assertTrue(first1 != null && last != null && last <= first1 + 1e-6, "goes on from the plan that was kept");
            SeasonRun quick = wait(here, other, SeasonRun::ended);
            assertEquals(SeasonRun.State.DONE, quick.state(), quick.says());
            TimeUnit.SECONDS.sleep(1);
            assertEquals(after, here.one(id).orElseThrow(), "nobody begins it again");
            assertEquals(1, quick.tries());
            assertFalse(after.node().isEmpty());
        } finally {
            end(first);
            end(second);
        }
    }

    private static Store yard(StoreAddress address) throws IOException {
        Store store = Store.open(address, Clock.systemUTC());
        new InventedFolder(InventedFolder.Where.NORTH).write(store.shelf("demo"), 10, TODAY, 3);
        return store;
    }

    private static Process node(StoreAddress address) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        OneNode.class.getName(),
                        address.url(),
                        address.user(),
                        address.password())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static void end(@org.jspecify.annotations.Nullable Process process) throws InterruptedException {
        if (process != null) {
            process.destroyForcibly().waitFor();
        }
    }

    private static SeasonRun wait(SeasonJobs jobs, String id, Predicate<SeasonRun> until) throws InterruptedException {
        SeasonRun run = jobs.one(id).orElseThrow();
        for (int i = 0; i < PATIENCE_S * 20 && !until.test(run); i++) {
            TimeUnit.MILLISECONDS.sleep(50);
            run = jobs.one(id).orElseThrow();
        }
        assertTrue(until.test(run), "not in time: " + run);
        return run;
    }
}
