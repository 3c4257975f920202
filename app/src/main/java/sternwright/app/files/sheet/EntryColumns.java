package sternwright.app.files.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.app.files.shape.Values;
import sternwright.boat.PartRef;
import sternwright.history.Finding;
import sternwright.history.HistoryLine;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;

/** The columns of an entry of the history, in rows that hold one. */
final class EntryColumns<R> {
    private final Field<R, LocalDate> date;
    private final Field<R, String> installation;
    private final Field<R, String> part;
    private final Field<R, String> rule;
    private final Field<R, Outcome> outcome;
    private final Field<R, Double> hours;
    private final Field<R, String> who;
    private final Field<R, List<TakenReading>> readings;
    private final Field<R, String> note;
    private final Field<R, List<Finding>> findings;
    private final StrikeColumns<R> strikes;

    EntryColumns(Function<R, HistoryLine> line) {
        Function<R, ServiceEntry> of = r -> line.apply(r).entry();
        date = Field.required("date", Shapes.pastDate(), r -> of.apply(r).date(), "the day");
        installation = Field.required(
                "installation", Shapes.id(), r -> of.apply(r).part().installationId(), "id of the installation");
        part = Field.required("part", Shapes.id(), r -> of.apply(r).part().partId(), "id of the part");
        rule = Field.required(
                "rule", Shapes.id(), r -> of.apply(r).ruleId(), "id of the rule; for happened, what happened");
        outcome = Field.or(
                "outcome",
                Shapes.oneOf(Outcome.class),
                Outcome.DONE,
                r -> of.apply(r).outcome(),
                "done, seen, refused or happened");
        hours = Field.optional(
                "hours", Numbers.notNegative(), r -> of.apply(r).hours(), "engine hours counted over meter changes");
        who = Field.or("who", Shapes.anyText(), "", r -> of.apply(r).who(), "who did it, or who signed the refusal");
        readings = Field.or(
                "readings",
                new ReadingsShape(),
                List.of(),
                r -> of.apply(r).readings(),
                "what was measured, such as anode-remaining=45 %; drip=3 1/min");
        note = Field.or("note", Shapes.anyText(), "", r -> of.apply(r).note(), "free text");
        findings = Field.or(
                "findings",
                new FindingsShape(),
                List.of(),
                r -> of.apply(r).findings(),
                "what the readings meant on that day: fine, watch, act or unsafe, with limit and source; written by record");
        strikes = new StrikeColumns<>(line);
    }

    List<Field<R, ?>> all() {
        List<Field<R, ?>> all =
                new ArrayList<>(List.of(date, installation, part, rule, outcome, hours, who, readings, note, findings));
        all.addAll(strikes.all());
        return List.copyOf(all);
    }

    HistoryLine line(Values<R> v) {
        return new HistoryLine(entry(v), strikes.strike(v));
    }

    private ServiceEntry entry(Values<R> v) {
        return new ServiceEntry(
                v.get(date),
                new PartRef(v.get(installation), v.get(part)),
                v.get(rule),
                v.get(outcome),
                v.orNull(hours),
                v.get(who),
                v.get(readings),
                v.get(note),
                v.get(findings));
    }
}
