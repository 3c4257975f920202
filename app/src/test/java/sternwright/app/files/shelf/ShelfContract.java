package sternwright.app.files.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.app.files.problem.BadInput;

/** What every keeper of texts does. */
public abstract class ShelfContract {
    /** An empty shelf for somebody; the same keeper for the whole test. */
    protected abstract Shelf shelf(String by) throws IOException;

    @Test
    void keepsTextsByteForByte() throws IOException {
        Shelf shelf = shelf("A");
        List<String> texts = List.of(
                "",
                "\n",
                "plain\n",
                "no end of line",
                "# comment\r\nkey: value\r\n",
                "\uFEFFdate,hours\n2026-01-01,5\n",
                "tabs\tand \u00e5\u00e4\u00f6 \u2014 \ud83d\ude80 \r lone return\n\n\n",
                "'; drop table shelf_text; --\n");
        try (Writing writing = shelf.write("texts")) {
            for (int i = 0; i < texts.size(); i++) {
                writing.put("boats/b" + i + ".yaml", texts.get(i));
            }
            writing.commit();
        }
        for (int i = 0; i < texts.size(); i++) {
            assertEquals(texts.get(i), shelf.text("boats/b" + i + ".yaml").orElseThrow());
        }
    }

    @Test
    void namesStandInOrderAndOnlyThoseOfTheFolder() throws IOException {
        Shelf shelf = shelf("A");
        write(shelf, "yard.yaml", "y");
        write(shelf, "boats/heron.yaml", "h");
        write(shelf, "boats/avocet.yaml", "a");
        write(shelf, "history/heron.csv", "date\n");
        assertEquals(List.of("boats/avocet.yaml", "boats/heron.yaml"), shelf.names("boats"));
        assertEquals(List.of("yard.yaml"), shelf.names(""));
        assertEquals(List.of(), shelf.names("programmes"));
        assertEquals(
                List.of("boats/avocet.yaml", "boats/heron.yaml", "history/heron.csv", "yard.yaml"),
                List.copyOf(shelf.marks().keySet()));
        assertTrue(shelf.holds("yard.yaml"));
        assertFalse(shelf.holds("berths.yaml"));
        assertTrue(shelf.kept("berths.yaml").isEmpty());
    }

    @Test
    void whatIsNotCommittedIsForgotten() throws IOException {
        Shelf shelf = shelf("A");
        write(shelf, "yard.yaml", "before");
        try (Writing writing = shelf.write("thought better of it")) {
            writing.put("yard.yaml", "after");
            writing.put("berths.yaml", "new");
        }
        assertEquals("before", shelf.text("yard.yaml").orElseThrow());
        assertFalse(shelf.holds("berths.yaml"));
    }

    @Test
    void theSecondEditorIsToldAndNothingIsLost() throws IOException {
        Shelf first = shelf("Ann");
        Shelf second = shelf("Ben");
        write(first, "boats/heron.yaml", "as registered");
        String read = first.kept("boats/heron.yaml").orElseThrow().version();
        try (Writing writing = first.write("Ann's change")) {
            writing.put("boats/heron.yaml", "as Ann says", read);
            writing.commit();
        }
        EditConflict conflict;
        try (Writing writing = second.write("Ben's change")) {
            conflict = assertThrows(EditConflict.class, () -> writing.put("boats/heron.yaml", "as Ben says", read));
        }
        assertEquals("boats/heron.yaml", conflict.name());
        assertEquals("as Ben says", conflict.yours());
        assertEquals("as Ann says", conflict.theirs().orElseThrow().text());
        assertEquals("as Ann says", second.text("boats/heron.yaml").orElseThrow());
        String now = conflict.theirs().orElseThrow().version();
        try (Writing writing = second.write("Ben again")) {
            writing.put("boats/heron.yaml", "as both say", now);
            writing.commit();
        }
        assertEquals("as both say", first.text("boats/heron.yaml").orElseThrow());
    }

    @Test
    void aNewTextIsNotWrittenOverOneThatIsThere() throws IOException {
        Shelf shelf = shelf("A");
        write(shelf, "boats/heron.yaml", "hers");
        try (Writing writing = shelf.write("another")) {
            assertThrows(EditConflict.class, () -> writing.put("boats/heron.yaml", "mine", ""));
        }
        try (Writing writing = shelf.write("taken away")) {
            writing.remove("boats/heron.yaml");
            writing.commit();
        }
        assertFalse(shelf.holds("boats/heron.yaml"));
        assertEquals(List.of(), shelf.names("boats"));
        try (Writing writing = shelf.write("again")) {
            writing.put("boats/heron.yaml", "mine", "");
            writing.commit();
        }
        assertEquals("mine", shelf.text("boats/heron.yaml").orElseThrow());
    }

    @Test
    void stateAndMarksTellOfEveryChange() throws IOException {
        Shelf shelf = shelf("A");
        write(shelf, "yard.yaml", "one");
        write(shelf, "berths.yaml", "berths");
        String state = shelf.state();
        String yard = shelf.marks().get("yard.yaml");
        String berths = shelf.marks().get("berths.yaml");
        assertEquals(state, shelf.state());
        write(shelf, "yard.yaml", "two");
        assertNotEquals(state, shelf.state());
        assertNotEquals(yard, shelf.marks().get("yard.yaml"));
        assertEquals(berths, shelf.marks().get("berths.yaml"));
    }

    @Test
    void manyWritersLoseNoLine() throws Exception {
        Shelf shelf = shelf("A");
        write(shelf, "hours/heron.csv", "date,hours\n");
        int writers = 4;
        int each = 15;
        ExecutorService all = Executors.newFixedThreadPool(writers);
        List<Future<?>> done = new ArrayList<>();
        for (int w = 0; w < writers; w++) {
            String who = "w" + w;
            done.add(all.submit(() -> {
                Shelf mine = shelf(who);
                for (int i = 0; i < each; i++) {
                    try (Writing writing = mine.write("a line")) {
                        String before = mine.text("hours/heron.csv").orElseThrow();
                        writing.put("hours/heron.csv", before + who + "," + i + "\n");
                        writing.commit();
                    }
                }
                return null;
            }));
        }
        for (Future<?> one : done) {
            one.get();
        }
        all.shutdown();
        assertEquals(
                1 + writers * each,
                shelf.text("hours/heron.csv").orElseThrow().lines().count());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../outside.yaml",
                "/etc/passwd",
                "boats/../../x",
                ".desk/accounts.db",
                "a\\b",
                "",
                "boats//x",
                "x\0y"
            })
    void namesThatLeadElsewhereAreRefused(String name) throws IOException {
        Shelf shelf = shelf("A");
        assertThrows(BadInput.class, () -> shelf.kept(name));
        try (Writing writing = shelf.write("mischief")) {
            assertThrows(BadInput.class, () -> writing.put(name, "x"));
            assertThrows(BadInput.class, () -> writing.remove(name));
        }
    }

    /** Writes one text. */
    protected static void write(Shelf shelf, String name, String text) throws IOException {
        try (Writing writing = shelf.write("test")) {
            writing.put(name, text);
            writing.commit();
        }
    }
}
