package sternwright.app.desk.season.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.Onlooker;
import sternwright.app.desk.season.PlanSeason;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.PublishSeason;
import sternwright.app.desk.season.SeasonAsk;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.paper.calendar.SeasonCalendars;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;

/** The board of the published plan: the plan to the letter, judged once, and told when it does not hold any more. */
class SeasonBoardsTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-09-15");

    @TempDir
    Path folder;

    @Test
    void theBoardIsThePublishedPlanUntilItDoesNotHold() throws Exception {
        Clock clock = Clock.fixed(TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        try (Store store = Store.open(StoreAddress.file(folder.resolve("yard.db")), clock)) {
            new InventedFolder(InventedFolder.Where.NORTH).write(store.shelf("demo"), 8, TODAY, 3);
            OpenYard yard = new OpenYard(store, clock);
            try (SeasonBoards boards = new SeasonBoards(yard, System::nanoTime)) {
                assertTrue(boards.published().isEmpty());
                PlannedSeason planned = publish(yard.shelf("Ann"));
                ShownSeason shown = judged(boards);
                assertEquals(
                        ShownSeason.Standing.HOLDS,
                        shown.standing(),
                        shown.wrong().toString());
                assertEquals("Ann", shown.by());
                assertEquals(lines(planned.dated()), lines(shown.dated()));
                assertEquals(planned.dated().loads(), shown.dated().loads());
                assertEquals(
                        planned.dated().cost().total(), shown.dated().cost().total(), 1e-6);
                assertSame(shown, judged(boards), "judged once");

                calendarsAloneAreThoseAmongAll(shown.dated());
                DatedOperation someWork = shown.dated().operations().stream()
                        .filter(o ->
                                !o.people().isEmpty() && o.from().toLocalDate().isAfter(TODAY))
                        .findFirst()
                        .orElseThrow();
                everybodyAway(yard.shelf("Ben"), someWork.from().toLocalDate());
                ShownSeason after = judged(boards);
                assertEquals(ShownSeason.Standing.BROKEN, after.standing());
                assertEquals(shown.version(), after.version(), "the plan is what it was");
                assertFalse(after.wrong().get(0).found().isBlank());
                assertFalse(after.dated().visits().isEmpty(), "and can still be looked at");
            }
        }
    }

    @Test
    void whereItCannotBeLookedThroughTheBoardSaysSoAndDoesNotWait() throws Exception {
        Clock clock = Clock.fixed(TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        try (Store store = Store.open(StoreAddress.file(folder.resolve("yard.db")), clock)) {
            new InventedFolder(InventedFolder.Where.NORTH).write(store.shelf("demo"), 3, TODAY, 3);
            publish(store.shelf("Ann"));
            OpenYard yard = new OpenYard(by -> without(store.shelf(by), SeasonFolder.VISITS), clock);
            try (SeasonBoards boards = new SeasonBoards(yard, System::nanoTime)) {
                ShownSeason shown = judged(boards);
                assertEquals(ShownSeason.Standing.BROKEN, shown.standing());
                assertTrue(shown.wrong().get(0).text().contains("could not be looked through"));
                assertFalse(shown.dated().visits().isEmpty(), "and can still be looked at");
            }
        }
    }

    /** A shelf that cannot read one of its texts. */
    private static Shelf without(Shelf shelf, String lost) {
        return (Shelf) Proxy.newProxyInstance(
                Shelf.class.getClassLoader(), new Class<?>[] {Shelf.class}, (proxy, method, asked) -> {
                    if (asked != null && asked[0].equals(lost)) {
                        throw new IOException("the disk does not give " + lost);
                    }
                    try {
                        return method.invoke(shelf, asked);
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
    }

    private static void calendarsAloneAreThoseAmongAll(DatedSeason season) {
        SeasonCalendars calendars = new SeasonCalendars("Yard", TODAY.atStartOfDay());
        calendars
                .people(season)
                .forEach((name, text) -> assertEquals(Optional.of(text), calendars.person(season, name)));
        calendars.boats(season).forEach((id, text) -> assertEquals(Optional.of(text), calendars.boat(season, id)));
        assertEquals(Optional.empty(), calendars.boat(season, "nobody's"));
        assertEquals(Optional.empty(), calendars.person(season, "Nobody"));
    }

    private static List<String> lines(DatedSeason season) {
        return season.operations().stream()
                .map(o -> o.meaning().name() + " " + o.from() + " " + o.until() + " " + o.people() + o.hoist())
                .toList();
    }

    private static PlannedSeason publish(Shelf shelf) throws IOException {
        SeasonAsk ask = new SeasonAsk(shelf, TODAY, TODAY, null, true, List.of(), 0.6, 1, System::nanoTime);
        PlannedSeason planned = PlanSeason.of(ask, Onlooker.NOBODY);
        PublishSeason.write(shelf, planned, planned.dated().published(TODAY), List.of(), "");
        try {
            PublishSeason.write(shelf, planned, planned.dated().published(TODAY), List.of(), "");
            throw new AssertionError("whoever read no plan is told that there is one");
        } catch (EditConflict told) {
            assertEquals(SeasonFolder.PLAN, told.name());
        }
        return planned;
    }

    private static void everybodyAway(Shelf shelf, LocalDate day) throws IOException {
        StringBuilder away = new StringBuilder("who,from,to,why\n");
        SeasonFolder.read(shelf, TODAY)
                .resources()
                .crew()
                .forEach(c -> away.append(c.id())
                        .append(',')
                        .append(day)
                        .append(',')
                        .append(day.plusDays(20))
                        .append(",\n"));
        try (Writing writing = shelf.write("away")) {
            writing.put(SeasonFolder.AWAY, away.toString());
            writing.commit();
        }
    }

    private static ShownSeason judged(SeasonBoards boards) throws InterruptedException {
        ShownSeason shown = boards.published().orElseThrow();
        for (int i = 0; i < 1200 && shown.standing() == ShownSeason.Standing.JUDGING; i++) {
            TimeUnit.MILLISECONDS.sleep(50);
            shown = boards.published().orElseThrow();
        }
        return shown;
    }
}
