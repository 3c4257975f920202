package sternwright.app.web.record;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.due.DueWork;
import sternwright.app.desk.recording.EntrySense;
import sternwright.app.desk.recording.ReadingSense;
import sternwright.app.files.problem.Problem;
import sternwright.app.paper.Words;
import sternwright.app.web.boat.OneBoat;
import sternwright.app.web.boat.Verdict;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.TypedNumber;
import sternwright.boat.PartRef;
import sternwright.due.Due;
import sternwright.history.Finding;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.service.ReadingAsked;

/** What was typed of a visit, read as far as it can be; what is wrong stands with the field it was typed into. */
final class TypedVisit {
    private static final Pattern QUANTITY = Pattern.compile("([-+\u2212]?[0-9][0-9.,' ]*)(.*)");

    private final Page page;
    private final OneBoat one;
    private final ReadingSense sense;
    private final List<Due> works;
    private final LocalDate today;
    private final Map<String, String> wrong = new LinkedHashMap<>();
    private final Map<String, RecordSheet.Said> said = new LinkedHashMap<>();

    TypedVisit(Page page, OneBoat one, List<Due> works, LocalDate today) {
        this.page = page;
        this.one = one;
        this.works = works;
        this.today = today;
        this.sense = new ReadingSense(
                new DueWork(one.files()),
                one.boat(),
                one.files().history(one.boat().id()));
    }

    static String key(Due due) {
        return due.part() + ":" + due.rule().id();
    }

    static String outcomeField(int work) {
        return "outcome-" + work;
    }

    static String noteField(int work) {
        return "note-" + work;
    }

    static String readingField(int work, String name) {
        return "reading-" + work + "-" + name;
    }

    static String hoursField(String engine) {
        return "hours-" + engine;
    }

    String typed(String field) {
        return Optional.ofNullable(page.typed(field)).orElse("").strip();
    }

    /** What is wrong, by field, in the order of the form. */
    Map<String, String> wrong() {
        return wrong;
    }

    /** What is said of readings, by field. */
    Map<String, RecordSheet.Said> said() {
        return said;
    }

    LocalDate day() {
        String text = typed("day");
        try {
            LocalDate day = text.isEmpty() ? today : LocalDate.parse(text);
            if (day.isAfter(today)) {
                wrong.put("day", page.say("field.PastOrPresent"));
            }
            return day;
        } catch (DateTimeParseException none) {
            wrong.put("day", page.say("record.day.unreadable"));
            return today;
        }
    }

    /** Lines for the history, one a work; use them only if nothing is wrong. */
    List<ServiceEntry> entries() {
        LocalDate day = day();
        String who = typed("who");
        if (who.isEmpty()) {
            wrong.put("who", page.say("field.NotBlank"));
        }
        List<ServiceEntry> entries = new ArrayList<>();
        for (int i = 0; i < works.size(); i++) {
            entries.add(entry(i, day, who));
        }
        return entries;
    }

    private ServiceEntry entry(int i, LocalDate day, String who) {
        Due due = works.get(i);
        Outcome outcome = outcome(i);
        List<TakenReading> taken = new ArrayList<>();
        for (ReadingAsked asked : due.rule().readings()) {
            reading(i, asked).ifPresent(taken::add);
        }
        ServiceEntry entry =
                new ServiceEntry(day, due.part(), due.rule().id(), outcome, null, who, taken, typed(noteField(i)));
        judge(i, entry);
        return entry;
    }

    private Outcome outcome(int i) {
        String text = typed(outcomeField(i));
        for (Outcome each : List.of(Outcome.DONE, Outcome.SEEN, Outcome.REFUSED)) {
            if (each.name().equals(text)) {
                return each;
            }
        }
        if (!text.isEmpty()) {
            wrong.put(outcomeField(i), page.say("field.other"));
        }
        return Outcome.DONE;
    }

    private Optional<TakenReading> reading(int i, ReadingAsked asked) {
        String field = readingField(i, asked.name());
        String text = typed(field);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher quantity = QUANTITY.matcher(text);
        OptionalDouble value = quantity.matches() ? TypedNumber.of(quantity.group(1)) : OptionalDouble.empty();
        if (value.isEmpty()) {
            wrong.put(field, page.say("record.reading.unreadable"));
            return Optional.empty();
        }
        return Optional.of(new TakenReading(
                asked.name(), value.getAsDouble(), quantity.group(2).strip()));
    }

    /** Judges what could be read of a work; a unit that does not fit is wrong at its field. */
    private void judge(int i, ServiceEntry entry) {
        for (TakenReading reading : entry.readings()) {
            String field = readingField(i, reading.name());
            List<Problem> problems = new ArrayList<>();
            ServiceEntry alone = sense.inUnitsAsked(
                    entry.judged(List.of(reading), List.of()), new EntrySense.Where("", i + 1), problems);
            if (problems.isEmpty() && alone.readings().get(0).unit().equals("%")) {
                double percent = alone.readings().get(0).value();
                if (percent < 0 || percent > 100) {
                    wrong.put(field, page.say("record.reading.percent"));
                    continue;
                }
            }
            if (problems.isEmpty()) {
                for (Finding finding : sense.judged(alone).findings()) {
                    String why = page.figures()
                            .judged(finding.why(), alone.readings().get(0).unit());
                    said.put(field, new RecordSheet.Said(Verdict.of(page, finding.severity()), why));
                }
            } else {
                Problem first = problems.get(0);
                wrong.put(
                        field,
                        page.say("field.refused", Words.sentence(first.found()), first.expected()) + " "
                                + first.advice());
            }
        }
    }

    /** What the meters showed. */
    List<MeterReading> meters(List<String> engines) {
        LocalDate day = day();
        List<MeterReading> meters = new ArrayList<>();
        for (String engine : engines) {
            String text = typed(hoursField(engine)).replaceAll("\\s*[hH]$", "");
            OptionalDouble hours = TypedNumber.of(text);
            if (!text.isEmpty() && (hours.isEmpty() || hours.getAsDouble() < 0)) {
                wrong.put(hoursField(engine), page.say("field.number"));
            } else if (hours.isPresent()) {
                meters.add(new MeterReading(day, engine, hours.getAsDouble(), null, typed("who")));
            }
        }
        return meters;
    }

    /** Judges one reading of one work, as typed. */
    RecordSheet.Said one(String readingName, @Nullable String text) {
        Due due = works.get(0);
        Optional<ReadingAsked> asked = due.rule().readings().stream()
                .filter(a -> a.name().equals(readingName))
                .findFirst();
        Matcher quantity = QUANTITY.matcher(text == null ? "" : text.strip());
        if (asked.isEmpty()
                || !quantity.matches()
                || TypedNumber.of(quantity.group(1)).isEmpty()) {
            return text == null || text.isBlank()
                    ? RecordSheet.Said.NOTHING
                    : new RecordSheet.Said(null, page.say("record.reading.unreadable"));
        }
        PartRef part = due.part();
        TakenReading taken = new TakenReading(
                readingName,
                TypedNumber.of(quantity.group(1)).orElseThrow(),
                quantity.group(2).strip());
        judge(0, new ServiceEntry(today, part, due.rule().id(), Outcome.DONE, null, "", List.of(taken), ""));
        String field = readingField(0, readingName);
        RecordSheet.Said judged = said.get(field);
        return judged != null ? judged : new RecordSheet.Said(null, wrong.getOrDefault(field, ""));
    }

    OneBoat boat() {
        return one;
    }
}
