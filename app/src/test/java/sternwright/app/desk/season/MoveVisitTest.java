package sternwright.app.desk.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.Published;
import sternwright.season.dated.event.SeasonEvent;

class MoveVisitTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 9, 1);

    @TempDir
    static Path folder;

    private static FolderShelf shelf;
    private static List<Published> plan;

    @BeforeAll
    static void aPublishedSeason() throws IOException {
        new InventedFolder(InventedFolder.Where.NORTH).write(folder.resolve("yard"), 8, TODAY, 3);
        shelf = new FolderShelf(folder.resolve("yard"));
        PlannedSeason planned = PlanSeason.of(ask(), Onlooker.NOBODY);
        PublishSeason.write(shelf, planned, List.of(), TODAY);
        plan = SeasonFolder.read(shelf, TODAY).published();
    }

    private static SeasonAsk ask() {
        return new SeasonAsk(shelf, TODAY, TODAY, null, false, List.of(), 0.6, 1, System::nanoTime);
    }

    private static Published aLift() {
        return plan.stream()
                .filter(p -> p.name().operation().equals("lift") && p.date().isAfter(TODAY.plusWeeks(1)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLiftSetOnAnotherDayStandsThereAndIsKept() throws IOException {
        Published lift = aLift();
        LocalDate to = lift.date().plusDays(lift.date().getDayOfWeek() == DayOfWeek.FRIDAY ? 3 : 1);
        MoveVisit.Moved moved = MoveVisit.of(ask(), lift.name(), to, Onlooker.NOBODY);
        assertTrue(moved.possible(), moved.clash().toString());
        PlannedSeason after = Objects.requireNonNull(moved.after());
        assertEquals(lift.name(), moved.moves().get(0).name());
        assertEquals(to, moved.moves().get(0).is());
        assertEquals(lift.date(), moved.moves().get(0).was());
        moved.moves().forEach(m -> assertFalse(m.reason().isBlank()));
        assertEquals(plan, SeasonFolder.read(shelf, TODAY).published(), "nothing is written by asking");
        List<SeasonEvent> events = List.of(MoveVisit.event(lift.name(), to));
        PublishSeason.write(shelf, after, events, TODAY);
        assertTrue(SeasonFolder.promises(shelf).stream()
                .anyMatch(p -> p.name().equals(lift.name()) && p.date().equals(to) && p.firm()));
    }

    @Test
    void aDayThatCannotBeIsSaid() {
        Published lift = aLift();
        LocalDate sunday = lift.date().with(java.time.temporal.TemporalAdjusters.next(DayOfWeek.SUNDAY));
        MoveVisit.Moved moved = MoveVisit.of(ask(), lift.name(), sunday, Onlooker.NOBODY);
        assertFalse(moved.possible());
        assertTrue(
                moved.clash().get(0).found().contains("does not work"),
                moved.clash().toString());
    }

    @Test
    void whatIsNotInThePlanIsSaid() {
        OperationName none = new OperationName(aLift().name().boatId(), "no such visit", "lift");
        BadInput bad =
                assertThrows(BadInput.class, () -> MoveVisit.of(ask(), none, TODAY.plusDays(30), Onlooker.NOBODY));
        assertTrue(String.valueOf(bad.getMessage()).contains("the published plan has no"), bad.getMessage());
    }
}
