package sternwright.app.desk.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.answer.DatedOperation;

/** A season in the background: looked at, stopped and kept; then a launch is put on another day and what moves is seen. */
class SeasonJobTest {
    private static final LocalDate AUTUMN = LocalDate.of(2026, 9, 1);

    @TempDir
    Path folder;

    @Test
    void looksOnStopsKeepsAndShowsWhatADateMoves() throws IOException, InterruptedException {
        new InventedFolder(InventedFolder.Where.NORTH).write(folder.resolve("yard"), 8, AUTUMN, 3);
        ExecutorService background = Executors.newSingleThreadExecutor();
        try {
            SeasonJob job = SeasonJob.plan(ask(3600), background);
            PlannedSeason early = firstPlan(job);
            assertFalse(early.dated().visits().isEmpty());
            assertEquals(SeasonJob.State.PLANNING, job.standing().state());
            job.stop();
            PlannedSeason kept = end(job).orElseThrow();
            SeasonJob.Standing standing = job.standing();
            assertEquals(SeasonJob.State.DONE, standing.state(), standing.toString());
            assertTrue(
                    standing.cost() >= standing.bound() && kept.dated().cost().total() == standing.cost());

            DatedOperation launch = lastLaunch(kept);
            LocalDate wanted = workingDayAfter(launch.from().toLocalDate());
            SeasonJob moved = SeasonJob.with(kept, List.of(on(launch, wanted)), ask(0.5), background);
            PlannedSeason after = end(moved).orElseThrow();
            assertEquals(wanted, find(after, launch.meaning().name()).from().toLocalDate());
            after.dated().moved().forEach(m -> assertFalse(m.reason().isBlank()));

            SeasonJob never = SeasonJob.with(kept, List.of(on(launch, AUTUMN.plusDays(1))), ask(0.5), background);
            assertTrue(end(never).isEmpty());
            assertEquals(
                    SeasonJob.State.REFUSED,
                    never.standing().state(),
                    never.standing().toString());
            assertTrue(never.standing().refused().isPresent());
        } finally {
            background.shutdownNow();
        }
    }

    private SeasonAsk ask(double seconds) {
        return new SeasonAsk(
                new FolderShelf(folder.resolve("yard")),
                AUTUMN,
                AUTUMN,
                null,
                true,
                List.of(),
                seconds,
                1,
                System::nanoTime);
    }

    private static PlannedSeason firstPlan(SeasonJob job) throws InterruptedException {
        while (job.best().isEmpty() && job.standing().state() == SeasonJob.State.PLANNING) {
            Thread.sleep(20);
        }
        return job.best().orElseThrow(() -> new AssertionError(job.standing().toString()));
    }

    private static Optional<PlannedSeason> end(SeasonJob job) throws InterruptedException {
        while (job.standing().state() == SeasonJob.State.PLANNING) {
            Thread.sleep(20);
        }
        return job.best();
    }

    private static DatedOperation lastLaunch(PlannedSeason season) {
        return season.dated().visits().stream()
                .flatMap(v -> v.operations().stream())
                .filter(o -> o.meaning().name().operation().equals("launch"))
                .reduce((a, b) -> a.from().isAfter(b.from()) ? a : b)
                .orElseThrow();
    }

    private static DatedOperation find(PlannedSeason season, OperationName name) {
        return season.dated().visits().stream()
                .flatMap(v -> v.operations().stream())
                .filter(o -> o.meaning().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static LocalDate workingDayAfter(LocalDate day) {
        LocalDate next = day.plusDays(1);
        while (next.getDayOfWeek() != DayOfWeek.TUESDAY && next.getDayOfWeek() != DayOfWeek.WEDNESDAY) {
            next = next.plusDays(1);
        }
        return next;
    }

    private static PromisedDate on(DatedOperation operation, LocalDate day) {
        return new PromisedDate(operation.meaning().name(), day, 0, AUTUMN, true);
    }
}
