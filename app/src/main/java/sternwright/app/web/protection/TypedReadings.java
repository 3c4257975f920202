package sternwright.app.web.protection;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import sternwright.app.desk.protect.EnteredReading;
import sternwright.app.desk.protect.ProtectBoat;
import sternwright.app.files.problem.Problem;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.TypedNumber;
import sternwright.protection.diagnosis.Quantity;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.report.ProtectionReport;

/**
 * Readings as they stand in the form: what was measured where, the figure, its unit, and how. Rows without a figure are passed over.
 *
 * @param places part, joint or shore lead of each row
 * @param values figures as typed
 * @param units units chosen
 * @param ways how each was taken
 * @param electrode the reference electrode, empty if none was chosen
 * @param asked whether the form was sent
 */
public record TypedReadings(
        List<String> places,
        List<String> values,
        List<String> units,
        List<String> ways,
        String electrode,
        boolean asked) {
    private static final int ROWS = 6;
    private static final List<String> UNITS = List.of("mV", "V", "ohm", "A", "x");
    private static final List<String> WAYS =
            List.of("usual", "anodes-off", "shore-in", "far", "anodes-off,far", "anodes-off,shore-in");
    private static final List<ReferenceElectrode> ELECTRODES = List.of(ReferenceElectrode.values());

    /** Readings out of an address. */
    static TypedReadings of(Map<String, String> sent) {
        return new TypedReadings(
                column(sent, "place-"),
                column(sent, "value-"),
                column(sent, "unit-"),
                column(sent, "way-"),
                sent.getOrDefault("electrode", ""),
                sent.containsKey("value-1"));
    }

    private static List<String> column(Map<String, String> sent, String name) {
        return IntStream.rangeClosed(1, ROWS)
                .mapToObj(row -> sent.getOrDefault(name + row, ""))
                .toList();
    }

    /** Copies the lists. */
    public TypedReadings {
        places = List.copyOf(places);
        values = List.copyOf(values);
        units = List.copyOf(units);
        ways = List.copyOf(ways);
    }

    /** The readings; what is wrong with a row is noted under the row's number as the page shows it. */
    List<EnteredReading> taken(Page page, List<Problem> problems) {
        List<EnteredReading> taken = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            if (!at(values, row).isBlank()) {
                taken.addAll(taken(page, row, problems));
            }
        }
        if (asked && taken.isEmpty() && problems.isEmpty()) {
            problems.add(
                    new Problem(page.say("protection.readings"), 0, "", "", "", page.say("protection.readings.none")));
        }
        return taken;
    }

    private List<EnteredReading> taken(Page page, int row, List<Problem> problems) {
        String name = page.say("protection.row", row + 1);
        String value = at(values, row).strip();
        OptionalDouble number = TypedNumber.of(value);
        if (number.isEmpty() || at(places, row).isEmpty()) {
            String what = number.isEmpty()
                    ? page.say("protection.value.unread", value)
                    : page.say("protection.place.missing");
            problems.add(new Problem(name, 0, "", "", "", what));
            return List.of();
        }
        String way = or(at(ways, row), WAYS.get(0));
        String figure = BigDecimal.valueOf(number.getAsDouble()).toPlainString();
        String text = at(places, row) + "=" + figure + at(units, row) + (way.equals(WAYS.get(0)) ? "" : "," + way);
        List<Problem> wrong = new ArrayList<>();
        List<EnteredReading> taken = EnteredReading.all(name, List.of(text), electrode, wrong);
        // What was typed stands in its row again: said with the row's number, without the names of the files.
        wrong.forEach(p -> problems.add(new Problem(name, 0, "", p.found(), p.expected(), p.advice())));
        return taken;
    }

    /**
     * One row of the form.
     *
     * @param name which reading it is
     * @param place what was measured, or across what
     * @param value the figure
     * @param unit its unit
     * @param way how it was taken
     */
    public record Row(String name, Field place, Field value, Field unit, Field way) {}

    List<Row> rows(Page page, ProtectionReport report) {
        List<Field.Choice> where = where(page, report);
        List<Row> rows = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            String id = "-" + (row + 1);
            rows.add(new Row(
                    page.say("protection.row", row + 1),
                    Field.plain("place" + id, page.say("protection.place", row + 1), at(places, row))
                            .of(where),
                    Field.plain("value" + id, page.say("protection.value", row + 1), at(values, row))
                            .optional(),
                    Field.plain("unit" + id, page.say("protection.unit", row + 1), or(at(units, row), UNITS.get(0)))
                            .of(choices(page, "protection.unit.", UNITS)),
                    Field.plain("way" + id, page.say("protection.way", row + 1), or(at(ways, row), WAYS.get(0)))
                            .of(choices(page, "protection.way.", WAYS))));
        }
        return rows;
    }

    Field electrodeField(Page page) {
        return Field.plain("electrode", page.say("protection.electrode"), electrode)
                .of(ELECTRODES.stream()
                        .map(e -> new Field.Choice(e.symbol(), e.words()))
                        .toList());
    }

    /** Only where something can be read: the inside of a channel is no place for a half cell. */
    private static List<Field.Choice> where(Page page, ProtectionReport report) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Quantity quantity : Quantity.values()) {
            for (String place : ProtectBoat.places(report, quantity)) {
                String words = report.circuit().words(place);
                names.putIfAbsent(place, place.contains("~") ? page.say("protection.across", words) : words);
            }
        }
        return names.entrySet().stream()
                .map(e -> new Field.Choice(e.getKey(), e.getValue()))
                .toList();
    }

    private static List<Field.Choice> choices(Page page, String key, List<String> values) {
        return values.stream()
                .map(v -> new Field.Choice(v, page.say(key + v.replace(',', '-'))))
                .toList();
    }

    private static String or(String chosen, String usual) {
        return chosen.isEmpty() ? usual : chosen;
    }

    private static String at(List<String> all, int row) {
        return row < all.size() ? all.get(row) : "";
    }
}
