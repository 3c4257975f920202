package sternwright.app.journeys;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.stream.Stream;
import sternwright.app.command.CommandProgram;

/** Runs the real program and keeps what it said. */
final class Told {
    private final LocalDate clock;
    private String out = "";
    private String err = "";

    Told(String clock) {
        this.clock = LocalDate.parse(clock);
        Locale.setDefault(Locale.UK);
    }

    int run(Path yard, String... args) {
        return run(Stream.concat(Stream.of("--yard", yard.toString()), Stream.of(args))
                .toArray(String[]::new));
    }

    int run(String... args) {
        StringWriter answers = new StringWriter();
        StringWriter complaints = new StringWriter();
        int status = new CommandProgram(clock, new PrintWriter(answers), new PrintWriter(complaints)).run(args);
        out = answers.toString();
        err = complaints.toString();
        return status;
    }

    String out() {
        return out;
    }

    String err() {
        return err;
    }

    String all() {
        return out + err;
    }
}
