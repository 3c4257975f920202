package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sternwright.app.command.CommandProgram;

/** What the program said to one command line, and its exit status. */
record Answer(int status, String out, String err) {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    /** Runs the program on a yard. */
    static Answer by(Path yard, String... args) {
        List<String> line = new ArrayList<>(List.of("--yard", yard.toString()));
        line.addAll(List.of(args));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status =
                new CommandProgram(TODAY, new PrintWriter(out), new PrintWriter(err)).run(line.toArray(String[]::new));
        return new Answer(status, out.toString(), err.toString());
    }

    Answer done() {
        assertEquals(0, status, () -> out + err);
        return this;
    }

    Answer refused(String... phrases) {
        assertEquals(2, status, () -> out + err);
        for (String phrase : phrases) {
            assertTrue(err.contains(phrase), () -> "\"" + phrase + "\" is missing in:\n" + err);
        }
        assertFalse(err.contains("\tat "), () -> "a stack trace:\n" + err);
        return this;
    }

    Answer says(String... phrases) {
        for (String phrase : phrases) {
            assertTrue(out.contains(phrase), () -> "\"" + phrase + "\" is missing in:\n" + out);
        }
        return this;
    }
}
