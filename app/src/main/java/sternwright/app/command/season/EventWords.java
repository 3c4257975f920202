package sternwright.app.command.season;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.season.dated.event.SeasonEvent;
import sternwright.yard.resource.Absence;

/** Events as they are said on the command line. */
public final class EventWords {
    private static final String FORMS = "away:PERSON:FROM:TO, hoist-down:HOIST:FROM:TO, late:BOAT:RULE:DATE,"
            + " emergency:BOAT[:DATE], wanted:BOAT:DATE";

    private EventWords() {}

    static SeasonEvent parse(String text, LocalDate today) {
        String[] words = text.split(":", -1);
        return switch (words[0]) {
            case "away" -> new SeasonEvent.PersonAway(word(words, 1, 4, text), absence(words, text));
            case "hoist-down" -> new SeasonEvent.HoistDown(word(words, 1, 4, text), absence(words, text));
            case "late" ->
                new SeasonEvent.PartLate(word(words, 1, 4, text), word(words, 2, 4, text), date(words, 3, text));
            case "emergency" ->
                new SeasonEvent.Emergency(
                        word(words, 1, words.length, text), words.length > 2 ? date(words, 2, text) : today);
            case "wanted" -> new SeasonEvent.OwnerWants(word(words, 1, 3, text), date(words, 2, text));
            default ->
                throw wrong(
                        text,
                        KnownNames.advice(words[0], List.of("away", "hoist-down", "late", "emergency", "wanted")));
        };
    }

    private static Absence absence(String[] words, String text) {
        LocalDate from = date(words, 2, text);
        LocalDate to = date(words, 3, text);
        if (to.isBefore(from)) {
            throw wrong(text, "It ends on " + to + " before it begins on " + from + ": turn the dates round.");
        }
        return new Absence(from, to, "");
    }

    private static String word(String[] words, int at, int count, String text) {
        if (words.length != count || words.length <= at || words[at].isBlank()) {
            throw wrong(text, "Write all its parts with colons between them, dates as 2026-11-25.");
        }
        return words[at];
    }

    private static LocalDate date(String[] words, int at, String text) {
        try {
            return LocalDate.parse(words[at]);
        } catch (DateTimeException notADate) {
            throw wrong(
                    text, "\"" + words[at] + "\" is not a date; write year, month and day with hyphens: 2026-11-25.");
        }
    }

    private static BadInput wrong(String text, String advice) {
        return BadInput.of("--after", "found \"" + text + "\"", "one of " + FORMS, advice);
    }
}
