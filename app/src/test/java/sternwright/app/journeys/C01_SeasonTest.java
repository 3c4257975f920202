package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.files.SeasonFolder;
import sternwright.season.dated.Published;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** From an invented yard to a published season, a disturbance, and what the yard and its owners are told. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class C01_SeasonTest {
    private static final String AUTUMN = "2026-09-01";
    private static final String LATER = "2026-10-12";

    @TempDir
    static Path folder;

    private static Path yard;

    @BeforeAll
    static void aYard() throws IOException {
        yard = folder.resolve("yard");
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, 10, LocalDate.parse(AUTUMN), 3);
    }

    @Test
    @Order(1)
    void planIsShownWithBoundAndPublished() throws IOException {
        Told told = new Told(AUTUMN);
        Path board = folder.resolve("board.html");
        Path paper = folder.resolve("board.pdf");
        Path calendars = folder.resolve("calendars");
        int status = told.run(
                yard,
                "season",
                "--seconds",
                "1",
                "--publish",
                "--board",
                board.toString(),
                "--board",
                paper.toString(),
                "--calendar",
                calendars.toString());
        assertEquals(0, status, told.all());
        assertTrue(told.err().contains("best ") && told.err().contains("no plan below "), told.err());
        assertTrue(told.out().contains("10 boats") && told.out().contains("Proved by both judges."), told.out());
        assertTrue(told.out().contains("No plan can cost less than "), told.out());
        List<Published> plan = SeasonFolder.plan(yard, Path.of("season.csv"), LocalDate.parse(AUTUMN));
        assertTrue(plan.size() > 40, "operations: " + plan.size());
        assertTrue(plan.stream().noneMatch(p -> p.reason().isBlank()));
        assertTrue(Files.readString(board).contains("The same as a table"));
        assertEquals("%PDF", new String(Files.readAllBytes(paper), 0, 4, java.nio.charset.StandardCharsets.US_ASCII));
        wordsOfTheDrawingAreText(paper);
        calendarsHoldTheWholePlan(calendars, plan);
    }

    /** How full a place is stands in the drawing alone: it can be searched and read aloud. */
    private static void wordsOfTheDrawingAreText(Path paper) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(paper.toFile())) {
            String text = new PDFTextStripper().getText(pdf);
            assertTrue(text.matches("(?s).*at most \\d+ of \\d+.*"), text);
        }
    }

    /** Read back by the library: each person's entries are the operations the plan gives that person. */
    private static void calendarsHoldTheWholePlan(Path calendars, List<Published> plan) throws IOException {
        long entries = 0;
        try (Stream<Path> files = Files.list(calendars.resolve("people"))) {
            for (Path file : files.toList()) {
                ICalendar calendar = Biweekly.parse(Files.readString(file)).first();
                assertTrue(calendar.validate(biweekly.ICalVersion.V2_0).isEmpty());
                entries += calendar.getEvents().size();
            }
        }
        long done = plan.stream()
                .filter(p -> !p.people().isEmpty())
                .mapToLong(p -> p.people().split(", ").length)
                .sum();
        assertEquals(done, entries);
    }

    @Test
    @Order(2)
    void planningOnWithoutNewsMovesNothing() throws IOException {
        Told told = new Told(LATER);
        assertEquals(0, told.run(yard, "--json", "season", "--seconds", "0.5"), told.all());
        JsonNode season = JsonMapper.shared().readTree(told.out());
        assertEquals(0, season.get("moved").size(), season.get("moved").toString());
    }

    @Test
    @Order(3)
    void afterEventsEachMovedDateIsListedWithItsReason() throws IOException {
        Told told = new Told(LATER);
        List<Published> before = SeasonFolder.plan(yard, Path.of("season.csv"), LocalDate.parse(LATER));
        int status = told.run(
                yard,
                "season",
                "--seconds",
                "1",
                "--after",
                "away:p1:2026-10-12:2026-10-23",
                "--after",
                "hoist-down:travel-hoist:2026-10-12:2026-10-16",
                "--compare",
                "--publish");
        assertEquals(0, status, told.all());
        assertTrue(told.out().contains("Side by side with season.csv"), told.out());
        List<Published> after = SeasonFolder.plan(yard, Path.of("season.csv"), LocalDate.parse(LATER));
        LocalDate down = LocalDate.parse("2026-10-16");
        assertTrue(after.stream()
                .filter(p -> p.hoist().equals("Travel hoist"))
                .filter(p -> !p.date().isBefore(LocalDate.parse(LATER)))
                .allMatch(p -> p.date().isAfter(down)));
        List<Published> begun = before.stream()
                .filter(p -> p.date().isBefore(LocalDate.parse(LATER)))
                .toList();
        assertTrue(after.stream()
                .map(p -> p.name() + " " + p.date())
                .toList()
                .containsAll(begun.stream().map(p -> p.name() + " " + p.date()).toList()));
        assertTrue(Files.readString(yard.resolve("away.csv")).contains("travel-hoist,2026-10-12,2026-10-16"));
    }

    /** Every boat whose first visit is over and whose next one lies ahead can be lifted in an emergency. */
    @Test
    @Order(4)
    void emergencyAfterAVisitThatIsOver() throws IOException {
        List<Published> plan = SeasonFolder.plan(yard, Path.of("season.csv"), LocalDate.parse(LATER));
        List<Published> begun = plan.stream()
                .filter(p -> p.date().isBefore(LocalDate.parse(LATER)))
                .toList();
        String boat = begun.stream()
                .map(p -> p.name().boatId())
                .filter(id -> count(begun, id, "lift") == count(begun, id, "launch"))
                .findFirst()
                .orElseThrow();
        Told told = new Told(LATER);
        assertEquals(
                0, told.run(yard, "season", "--seconds", "0.5", "--list", "--after", "emergency:" + boat), told.all());
        assertTrue(told.out().contains("emergency work"), told.out());
    }

    private static long count(List<Published> begun, String boat, String operation) {
        return begun.stream()
                .filter(p ->
                        p.name().boatId().equals(boat) && p.name().operation().equals(operation))
                .count();
    }

    @Test
    @Order(5)
    void badInputIsToldAndNothingIsWritten() throws IOException {
        String plan = Files.readString(yard.resolve("season.csv"));
        Told told = new Told(LATER);
        refuses(told, "--after: found \"away:p1\"", "season", "--after", "away:p1");
        refuses(
                told,
                "there is no hoist \"travel-hoits\"",
                "season",
                "--after",
                "hoist-down:travel-hoits:2026-10-12:2026-10-13");
        refuses(
                told,
                "Perhaps \"travel-hoist\" is meant",
                "season",
                "--after",
                "hoist-down:travel-hoits:2026-10-12:2026-10-13");
        refuses(told, "a name that ends in .html or .pdf", "season", "--board", "board.png");
        refuses(told, "a number above 0", "season", "--seconds", "0");
        refuses(told, "turn the dates round", "season", "--after", "away:p1:2026-10-20:2026-10-13");
        String resources = Files.readString(yard.resolve("resources.yaml"));
        Files.writeString(
                yard.resolve("resources.yaml"), resources.replaceAll("max-mass-kg: \\d+", "max-mass-kg: 900"));
        refuses(told, "no hoist takes her: travel-hoist takes 900 kg", "season", "--publish");
        assertTrue(told.err().contains("boats/"), told.err());
        Files.writeString(
                yard.resolve("resources.yaml"),
                resources.replace("electrical, ", "").replace(", electrical", ""));
        refuses(told, "nobody of the crew has the skill electrical", "season", "--publish");
        Files.delete(yard.resolve("resources.yaml"));
        refuses(told, "resources.yaml: the file is missing", "season", "--publish");
        Files.writeString(yard.resolve("resources.yaml"), resources);
        assertEquals(plan, Files.readString(yard.resolve("season.csv")));
    }

    private static void refuses(Told told, String words, String... args) {
        assertEquals(2, told.run(yard, args), told.all());
        assertTrue(told.err().contains(words), told.err());
        assertFalse(told.err().contains("Exception"), told.err());
    }
}
