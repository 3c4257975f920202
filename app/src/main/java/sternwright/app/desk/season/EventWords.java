package sternwright.app.desk.season;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.event.SeasonEvent;
import sternwright.yard.resource.Absence;

/** Events in one word each, as they are said on the command line, in addresses and by other programs. */
public final class EventWords {
    private static final String FORMS = "away:PERSON:FROM:TO, hoist-down:HOIST:FROM:TO, late:BOAT:RULE:DATE,"
            + " emergency:BOAT[:DATE], wanted:BOAT:DATE, set:BOAT:VISIT:OPERATION:DATE";

    private EventWords() {}

    /**
     * Reads one.
     *
     * @param text the word
     * @param today the day for what begins today
     * @param where where it was said, such as {@code --after}
     * @return the event
     * @throws BadInput if it cannot be read
     */
    public static SeasonEvent parse(String text, LocalDate today, String where) {
        return new Spoken(text, where).event(today);
    }

    /**
     * Writes one, so that {@link #parse} reads the same; reasons of absences are not kept.
     *
     * @param event the event
     * @return the word
     */
    public static String text(SeasonEvent event) {
        if (event instanceof SeasonEvent.PersonAway e) {
            return "away:" + e.person() + ":" + days(e.days());
        }
        if (event instanceof SeasonEvent.HoistDown e) {
            return "hoist-down:" + e.hoist() + ":" + days(e.days());
        }
        if (event instanceof SeasonEvent.PartLate e) {
            return "late:" + e.boat() + ":" + e.work() + ":" + e.here();
        }
        if (event instanceof SeasonEvent.Emergency e) {
            return "emergency:" + e.boat() + ":" + e.from();
        }
        if (event instanceof SeasonEvent.OwnerWants e) {
            return "wanted:" + e.boat() + ":" + e.by();
        }
        SeasonEvent.Moved e = (SeasonEvent.Moved) event;
        OperationName name = e.name();
        return "set:" + name.boatId() + ":" + name.visit() + ":" + name.operation() + ":" + e.to();
    }

    private static String days(Absence days) {
        return days.from() + ":" + days.to();
    }

    /** One word and where it was said. */
    private record Spoken(String text, String where) {
        SeasonEvent event(LocalDate today) {
            String[] words = text.split(":", -1);
            return switch (words[0]) {
                case "away" -> new SeasonEvent.PersonAway(word(words, 1, 4), absence(words));
                case "hoist-down" -> new SeasonEvent.HoistDown(word(words, 1, 4), absence(words));
                case "late" -> new SeasonEvent.PartLate(word(words, 1, 4), word(words, 2, 4), date(words, 3));
                case "emergency" ->
                    new SeasonEvent.Emergency(word(words, 1, words.length), words.length > 2 ? date(words, 2) : today);
                case "wanted" -> new SeasonEvent.OwnerWants(word(words, 1, 3), date(words, 2));
                case "set" ->
                    new SeasonEvent.Moved(
                            new OperationName(word(words, 1, 5), word(words, 2, 5), word(words, 3, 5)), date(words, 4));
                default ->
                    throw wrong(KnownNames.advice(
                            words[0], List.of("away", "hoist-down", "late", "emergency", "wanted", "set")));
            };
        }

        private Absence absence(String[] words) {
            LocalDate from = date(words, 2);
            LocalDate to = date(words, 3);
            if (to.isBefore(from)) {
                throw wrong("It ends on " + to + " before it begins on " + from + ": turn the dates round.");
            }
            return new Absence(from, to, "");
        }

        private String word(String[] words, int at, int count) {
            if (words.length != count || words.length <= at || words[at].isBlank()) {
                throw wrong("Write all its parts with colons between them, dates as 2026-11-25.");
            }
            return words[at];
        }

        private LocalDate date(String[] words, int at) {
            try {
                return LocalDate.parse(words[at]);
            } catch (DateTimeException notADate) {
                throw wrong("\"" + words[at] + "\" is not a date; write year, month and day with hyphens: 2026-11-25.");
            }
        }

        private BadInput wrong(String advice) {
            return BadInput.of(where, "found \"" + text + "\"", "one of " + FORMS, advice);
        }
    }
}
