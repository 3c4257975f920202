package sternwright.app.desk.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFolder;
import sternwright.app.files.YardSnapshot;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.boat.Boat;

/** A yard opened from what was kept at an earlier start says what its texts say, whatever has changed meanwhile. */
class KeptYardTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-10-05");

    @TempDir
    Path folder;

    private Store store;
    private List<String> ids;

    @BeforeEach
    void aYardWithWhatWasKept() throws IOException {
        store = Store.open(StoreAddress.file(folder.resolve("yard.db")), noon(TODAY));
        new InventedFolder(InventedFolder.Where.NORTH).write(store.shelf("demo"), 8, TODAY, 7);
        OpenYard yard = new OpenYard(store, noon(TODAY));
        yard.dues();
        yard.keep();
        ids = List.copyOf(yard.files().boats().keySet());
        assertEquals(8, kept("boat"));
        assertEquals(8, kept("wear"));
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static Clock noon(LocalDate day) {
        return Clock.fixed(day.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
    }

    private int kept(String kind) {
        return JdbcClient.create(store.reader())
                .sql("select count(*) from worked_out where kind = ?")
                .param(kind)
                .query(Integer.class)
                .single();
    }

    /** A yard just opened and one read from its texts alone say the same on a day. */
    private void saysWhatItsTextsSay(LocalDate day) {
        OpenYard yard = new OpenYard(store, noon(day));
        var files = YardFolder.all(store.shelf(""), day);
        assertTrue(files.equals(yard.files()), "the yard");
        assertTrue(new DueWork(files).all(day).equals(yard.dues()), "the due list");
    }

    @Test
    void noBoatsTextIsReadAgain() throws IOException {
        Set<String> read = new TreeSet<>();
        YardSnapshot snapshot = YardSnapshot.of(watched(store.shelf(""), read), TODAY);
        assertEquals(YardFolder.all(store.shelf(""), TODAY), snapshot.files());
        assertTrue(read.stream().noneMatch(n -> n.startsWith("boats/") || n.startsWith("history/")), read::toString);
        assertTrue(read.contains(FolderLayout.YARD));
        read.clear();
        change(FolderLayout.history(ids.get(2)), text -> text + lastLine(text) + "\n");
        YardSnapshot.of(watched(store.shelf(""), read), TODAY);
        assertEquals(
                Set.of(FolderLayout.boat(ids.get(2)), FolderLayout.history(ids.get(2))),
                new TreeSet<>(read.stream()
                        .filter(n -> n.startsWith("boats/") || n.startsWith("history/"))
                        .toList()));
    }

    @Test
    void onAnyLaterDayItSaysWhatItsTextsSay() {
        for (long days : new long[] {0, 1, 20, 26, 40, 400}) {
            saysWhatItsTextsSay(TODAY.plusDays(days));
        }
        assertNotEquals(new OpenYard(store, noon(TODAY)).dues(), new OpenYard(store, noon(TODAY.plusDays(400))).dues());
    }

    @Test
    void onAnEarlierDayItsTextsAreReadAgain() {
        LocalDate before = TODAY.minusYears(2);
        BadInput wrong = assertThrows(BadInput.class, () -> YardFolder.all(store.shelf(""), before));
        OpenYard yard = new OpenYard(store, noon(before));
        assertEquals(wrong.problems(), assertThrows(BadInput.class, yard::files).problems());
    }

    @ParameterizedTest
    @CsvSource({
        "yard.yaml, annual-hours: 1, annual-hours: 2",
        "berths.yaml, latitude-deg: 5, latitude-deg: 4",
        "programmes/own.yaml, hours: 250, hours: 130"
    })
    void whatHoldsForAllBoatsChangesTheAnswer(String name, String from, String to) throws IOException {
        var before = new OpenYard(store, noon(TODAY)).files();
        change(name, text -> text.replace(from, to));
        assertFalse(before.equals(new OpenYard(store, noon(TODAY)).files()), "nothing has changed");
        saysWhatItsTextsSay(TODAY);
    }

    @Test
    void aChangedBoatChangesTheAnswer() throws IOException {
        String id = ids.get(1);
        Boat before = new OpenYard(store, noon(TODAY)).files().boats().get(id);
        change(FolderLayout.boat(id), text -> text.replaceAll("fitted-on: 20[0-9]{2}", "fitted-on: 2009"));
        saysWhatItsTextsSay(TODAY);
        assertNotEquals(before, new OpenYard(store, noon(TODAY)).files().boats().get(id));
        change(
                FolderLayout.history(ids.get(3)),
                text -> text.lines().findFirst().orElseThrow() + "\n");
        saysWhatItsTextsSay(TODAY);
        change(FolderLayout.hours(ids.get(4)), text -> text.lines().findFirst().orElseThrow() + "\n");
        saysWhatItsTextsSay(TODAY);
        try (Writing writing = store.shelf("Ann").write("sold")) {
            writing.remove(FolderLayout.boat(ids.get(5)));
            writing.commit();
        }
        saysWhatItsTextsSay(TODAY);
        assertEquals(7, new OpenYard(store, noon(TODAY)).files().boats().size());
    }

    @Test
    void whatAnotherBuildKeptIsNotUsed() {
        for (String kind : List.of("boat", "wear")) {
            execute("update worked_out set made_from = '" + "0".repeat(64)
                    + "', content = (select w.content from worked_out w" + " where w.kind = '" + kind
                    + "' and w.name = '" + ids.get(0) + "') where kind = '" + kind + "'");
        }
        saysWhatItsTextsSay(TODAY);
    }

    @Test
    void damagedRowsAreNotUsed() {
        execute("update worked_out set content = substr(content, 1, length(content) - 1) || x'55'");
        saysWhatItsTextsSay(TODAY);
        execute("update worked_out set content = x'00'");
        saysWhatItsTextsSay(TODAY);
        execute("delete from worked_out");
        saysWhatItsTextsSay(TODAY);
    }

    private void execute(String statement) {
        assertTrue(JdbcClient.create(store.writer()).sql(statement).update() > 0);
    }

    private void change(String name, java.util.function.UnaryOperator<String> how) throws IOException {
        String before = store.shelf("").text(name).orElseThrow();
        String after = how.apply(before);
        assertNotEquals(before, after, name);
        try (Writing writing = store.shelf("Ann").write("test")) {
            writing.put(name, after);
            writing.commit();
        }
    }

    private static String lastLine(String text) {
        return text.lines().reduce((a, b) -> b).orElseThrow();
    }

    /** A shelf that notes which texts are read. */
    private static Shelf watched(Shelf shelf, Set<String> read) {
        return (Shelf) Proxy.newProxyInstance(
                Shelf.class.getClassLoader(), new Class<?>[] {Shelf.class}, (p, m, args) -> {
                    if (m.getName().equals("text") || m.getName().equals("kept")) {
                        read.add((String) args[0]);
                    }
                    try {
                        Object answer = m.invoke(shelf, args);
                        return answer instanceof Shelf still ? watched(still, read) : answer;
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
    }
}
