package sternwright.app.web.record;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import sternwright.app.web.boat.OneBoat;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Field.Choice;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Page;
import sternwright.due.Due;
import sternwright.history.Outcome;
import sternwright.service.ReadingAsked;

/** The form that records works, empty or as typed. */
final class RecordForm {
    private final Page page;
    private final OneBoat one;
    private final List<Due> works;
    private final TypedVisit visit;

    RecordForm(Page page, OneBoat one, List<Due> works, TypedVisit visit) {
        this.page = page;
        this.one = one;
        this.works = works;
        this.visit = visit;
    }

    /** The engines worked on. */
    List<String> engines() {
        return works.stream().map(d -> d.part().installationId()).distinct().toList();
    }

    RecordSheet.View blank(LocalDate today) {
        return view(today.toString(), page.who(), false, false);
    }

    RecordSheet.View typed(boolean checked, boolean odd) {
        return view(visit.typed("day"), visit.typed("who"), checked, odd);
    }

    private RecordSheet.View view(String day, String who, boolean checked, boolean odd) {
        List<RecordSheet.Work> sheets = new ArrayList<>();
        for (int i = 0; i < works.size(); i++) {
            sheets.add(work(i, works.get(i)));
        }
        Field dayField = field("day", page.say("record.day"), day).as("date").optional();
        Field whoField = field("who", page.say("record.who"), who);
        List<Field> hours = engines().stream().map(this::hours).toList();
        Field asRead = odd || visit.typed("asRead").equals("true")
                ? field("asRead", page.say("hours.asRead.label"), visit.typed("asRead"))
                        .as("check")
                : null;
        List<Form.Wrong> wrongs = Stream.of(
                        Stream.of(dayField, whoField),
                        hours.stream(),
                        sheets.stream()
                                .flatMap(w -> Stream.concat(
                                        Stream.of(w.outcome(), w.note()),
                                        w.readings().stream().map(RecordSheet.Asked::field))))
                .flatMap(s -> s)
                .filter(f -> !f.error().isEmpty())
                .map(f -> new Form.Wrong(f.name(), f.label(), f.error()))
                .toList();
        return new RecordSheet.View(
                one.head(page, "record"), sheets, dayField, whoField, hours, asRead, wrongs, checked);
    }

    private Field hours(String engine) {
        String name =
                one.boat().installation(engine).map(i -> one.name(page, i)).orElse(engine);
        String field = TypedVisit.hoursField(engine);
        return field(field, page.say("record.hours", name), visit.typed(field))
                .as("number")
                .in(page.say("boat.unit.hours"))
                .optional();
    }

    private RecordSheet.Work work(int i, Due due) {
        String outcome = visit.typed(TypedVisit.outcomeField(i));
        List<Choice> outcomes = Stream.of(Outcome.DONE, Outcome.SEEN, Outcome.REFUSED)
                .map(o -> new Choice(
                        o.name(), page.say("record.outcome." + o.name().toLowerCase(Locale.ROOT))))
                .toList();
        return new RecordSheet.Work(
                TypedVisit.key(due),
                due.rule().work(),
                one.name(page, due.part()),
                field(
                                TypedVisit.outcomeField(i),
                                page.say("record.outcome"),
                                outcome.isEmpty() ? Outcome.DONE.name() : outcome)
                        .of(outcomes),
                due.rule().readings().stream().map(r -> asked(i, due, r)).toList(),
                field(TypedVisit.noteField(i), page.say("record.note"), visit.typed(TypedVisit.noteField(i)))
                        .optional(),
                cautions(due));
    }

    private List<String> cautions(Due due) {
        return Stream.concat(Stream.of(one.files().generic()), one.files().programmes().stream())
                .flatMap(p -> p.cautions().stream())
                .filter(c -> due.rule().cautions().contains(c.id()))
                .map(c -> c.text())
                .distinct()
                .toList();
    }

    private RecordSheet.Asked asked(int i, Due due, ReadingAsked asked) {
        String name = TypedVisit.readingField(i, asked.name());
        boolean yesOrNo = asked.unit().equals("1");
        String label = asked.label().replace("(1 yes, 0 no)", "").strip();
        Field field = field(name, label, visit.typed(name)).optional();
        Field shaped = yesOrNo
                ? field.of(List.of(new Choice("1", page.say("record.yes")), new Choice("0", page.say("record.no"))))
                : field.as("number")
                        .in(asked.unit().equals("pcs") ? "" : page.figures().unit(asked.unit()));
        String judge = "/boats/" + one.boat().id() + "/record/judge?key=" + encoded(TypedVisit.key(due)) + "&reading="
                + encoded(asked.name()) + "&field=" + encoded(name);
        return new RecordSheet.Asked(
                shaped,
                page.say("record.limit", page.figures().limit(asked)),
                visit.said().getOrDefault(name, RecordSheet.Said.NOTHING),
                judge);
    }

    private Field field(String name, String label, String value) {
        String error = visit.wrong().getOrDefault(name, "");
        return new Field(name, label, "", value, error, "text", true, "", "", List.of());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
