package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.app.command.CommandProgram;

/** The papers as pages, opened as files by anyone: desk and phone, light and dark. */
class P50_PapersTest extends PageTest {
    private static Path papers = Path.of("papers");

    @BeforeAll
    static void writePapers() {
        Path yard = RunningDesk.yard(12);
        papers = yard.resolve("papers");
        String boat = "dunlin";
        run(yard, "card", boat, "--months", "12", "--seconds", "3");
        run(yard, "estimate", boat, "--months", "12", "--seconds", "3", "--decline", "2");
        run(yard, "protect", boat, "--html", papers.resolve("protection.html").toString());
        run(
                yard,
                "season",
                "--fresh",
                "--seconds",
                "2",
                "--board",
                papers.resolve("season-board.html").toString());
    }

    private static void run(Path yard, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] line = Stream.concat(Stream.of("--yard", yard.toString()), Stream.of(args))
                .toArray(String[]::new);
        int status = new CommandProgram(RunningDesk.TODAY, new PrintWriter(out), new PrintWriter(err)).run(line);
        assertEquals(0, status, () -> String.join(" ", args) + "\n" + out + err);
    }

    static Stream<String> kinds() {
        return Stream.of("card-", "estimate-", "protection", "season-board");
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aPaperIsReadOnDeskAndPhone(String kind) throws IOException {
        Path paper;
        try (Stream<Path> all = Files.list(papers)) {
            paper = all.filter(f -> {
                        String name = String.valueOf(f.getFileName());
                        return name.startsWith(kind) && name.endsWith(".html");
                    })
                    .findFirst()
                    .orElseThrow();
        }
        checkOpenPage(desk(), paper.toUri().toString(), "paper-" + kind.replaceAll("-$", ""));
    }
}
