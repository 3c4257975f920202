package sternwright.app.files.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;
import sternwright.boat.PartRef;
import sternwright.history.HistoryLine;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.Strike;
import sternwright.history.TakenReading;

class SheetTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private final List<Problem> problems = new ArrayList<>();

    @Test
    void everyBadRowIsToldWithItsLine() {
        String text = """
                date,installation,part,rule,hours,reading
                2026-11-26,main,engine,oil,10,
                2026-13-01,main,engine,oil,-3,
                2026-11-01,main,engine,oil,ten,
                """;
        HistorySheet.ONE_BOAT.read(text, new Reading("a.csv", TODAY), problems);
        String told = String.join("\n", problems.stream().map(Problem::text).toList());
        assertTrue(told.contains("a.csv:1: reading: unknown column"), told);
        assertTrue(told.contains("Perhaps \"readings\" is meant"), told);
        assertTrue(told.contains("a.csv:2: date: 2026-11-26 lies in the future"), told);
        assertTrue(told.contains("a.csv:3: date: found \"2026-13-01\"; expected a date"), told);
        assertTrue(told.contains("a.csv:3: hours: found -3; expected a number of at least 0"), told);
        assertTrue(told.contains("a.csv:4: hours: found \"ten\""), told);
        assertEquals(5, problems.size(), told);
    }

    @Test
    void aSpreadsheetMayUseSemicolonsMarksAndItsOwnOrder() {
        String text = "\uFEFFpart;installation;rule;date;who\r\nengine;main;oil;2026-01-05;2021\r\n;;;;\r\n";
        List<Sheet.Row<HistoryLine>> rows = HistorySheet.ONE_BOAT.read(text, new Reading("a.csv", TODAY), problems);
        assertEquals(List.of(), problems);
        assertEquals(1, rows.size());
        assertEquals("2021", rows.get(0).value().entry().who(), "a figure is text where text is expected");
    }

    @Test
    void aLongTableIsWrittenRowByRowWithTheColumnsItNeeds() throws IOException {
        HistoryLine plain = HistoryLine.of(ServiceEntry.done(TODAY, new PartRef("main", "leg"), "gear-oil", null));
        HistoryLine struck = new HistoryLine(plain.entry(), new Strike(TODAY, "AB", "twice"));
        for (List<HistoryLine> rows : List.of(List.of(plain, plain), List.of(plain, struck), List.<HistoryLine>of())) {
            StringWriter text = new StringWriter();
            HistorySheet.ONE_BOAT.write(rows::stream, text);
            assertEquals(HistorySheet.ONE_BOAT.write(rows), text.toString());
            String header = text.toString().lines().findFirst().orElseThrow();
            assertEquals(rows.contains(struck), header.endsWith("struck-on,struck-by,struck-why"), header);
            assertEquals(1 + rows.size(), text.toString().lines().count());
        }
    }

    @Test
    void appendedLinesFollowTheOrderOfTheTable() {
        String before = "rule;date;part;installation\noil;2025-01-05;engine;main";
        ServiceEntry more = ServiceEntry.done(TODAY, new PartRef("main", "leg"), "gear-oil", null);
        String after = HistorySheet.ONE_BOAT.append(before, List.of(HistoryLine.of(more)));
        assertEquals(before + "\ngear-oil;2026-11-25;leg;main\n", after);
        ServiceEntry withHours = ServiceEntry.done(TODAY, new PartRef("main", "leg"), "gear-oil", 12.5);
        String wider = HistorySheet.ONE_BOAT.append(before, List.of(HistoryLine.of(withHours)));
        List<Sheet.Row<HistoryLine>> rows = HistorySheet.ONE_BOAT.read(wider, new Reading("a.csv", TODAY), problems);
        assertEquals(List.of(), problems);
        assertEquals(HistoryLine.of(withHours), rows.get(1).value(), "a column that was missing is added");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void whatIsWrittenIsReadBack(long seed) {
        Random random = new Random(seed);
        List<HistoryLine> entries = IntStream.range(0, 50)
                .mapToObj(i -> new HistoryLine(
                        entry(random),
                        random.nextInt(9) > 0 ? null : new Strike(TODAY, "A. Person", "twice; \"later\"")))
                .toList();
        String text = HistorySheet.ONE_BOAT.write(entries);
        List<HistoryLine> read = HistorySheet.ONE_BOAT.read(text, new Reading("a.csv", TODAY), problems).stream()
                .map(Sheet.Row::value)
                .toList();
        assertEquals(List.of(), problems);
        assertEquals(entries, read);
    }

    private static ServiceEntry entry(Random random) {
        List<String> texts = List.of("", "A. Person", "said \"later\", left", "two; three", "line\nbreak", "2021", "ö");
        List<TakenReading> readings = IntStream.range(0, random.nextInt(3))
                .mapToObj(i -> new TakenReading("r" + i, random.nextInt(1000) / 8.0 - 20, i == 0 ? "%" : "1/min"))
                .toList();
        return new ServiceEntry(
                TODAY.minusDays(random.nextInt(3000)),
                new PartRef("main", "part-" + random.nextInt(9)),
                "rule-" + random.nextInt(9),
                Outcome.values()[random.nextInt(4)],
                random.nextBoolean() ? null : random.nextInt(100000) / 10.0,
                texts.get(random.nextInt(texts.size())).strip(),
                readings,
                texts.get(random.nextInt(texts.size())));
    }
}
