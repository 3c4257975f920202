package sternwright.app.truth;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sternwright.app.files.sheet.AgreedSheet;
import sternwright.app.files.sheet.BoatsSheet;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.sheet.SeasonVisitsSheet;
import sternwright.app.files.sheet.Sheet;

/** docs/file-formats.md is made from the shapes by which the program reads. */
class FileFormatsPageTest {
    private static final String HEAD = """
            # File formats

            Made from the program by `FileFormatsPageTest`; do not change it by hand.

            A yard is a folder (docs/decisions/0002). Descriptions are YAML 1.2 (core schema), tables are CSV (RFC 4180). Text is UTF-8.
            Names are lower case with hyphens; a figure's unit stands in its field's name. A field that is not required may be left out
            or left empty after its colon: not known. Unknown fields, and fields given twice, are errors. Dates are ISO 8601
            (`2021-09-30`); a day of every year is month and day (`11-15`). What has happened cannot lie in the future.

            The JSON Schemas (2020-12) stand in `app/src/main/resources/sternwright/schema/`. An editor uses one if a file's first line is
            `# yaml-language-server: $schema=PATH/boat.schema.json`. What a schema cannot say the program checks besides: ids given twice,
            berths, uses, programmes, kinds, metals, rules and parts that are not there, parents after children, days in the future, boats
            longer than the longest band of lifts. Every problem is told with file, line and field, all of them together.

            `sternwright new yard FOLDER` and `sternwright new boat` write files to start from.

            """;
    private static final String TABLES = """
            # Tables

            The first line names the columns, in any order; columns that are not required may be missing. Separator comma, semicolon or tab.
            Decimal point. A table is taken whole or not at all, and a row that is there already, letter by letter, is passed over.
            In `readings` stand measured values as `name=value unit`, several separated by semicolons: `anode-remaining=45 %; drips=3 1/min`;
            what is asked with yes or no is answered so: `water-in-oil=no`. A unit left out is the one the yard works in (`units` in `yard.yaml`), as the job card shows it; another one that measures the
            same (psi for bar, thou for mm, °F for °C) is converted. `record` judges readings by the limits in force and keeps the verdicts
            in `findings`; `import history` takes those of the table as they are.
            `hours` in history are counted over meter changes; in the hour tables stands what the meter showed. `record` and `import history`
            write the meter readings that their hours tell of, and refuse hours that no meter can have shown: running backwards, more than 24 a
            day, or over a month and more as many as no boat runs (6 a day and ten times what was usual
            before, 12 a day where nothing is known: a digit too many). `--as-read` keeps such readings all the same; the due list then passes over what does not fit, a leap
            until a second reading bears it out, and `check` says so.
            For `outcome` happened, `rule` says what: `grounding`, `contaminated` …. A meter that was replaced is one line with the last
            figure of the old meter in `hours` and the first of the new one in `new-meter-hours`.
            A wrong line of history stays. A later line that repeats it in all its columns and has `struck-on`, `struck-by` and `struck-why` besides
            strikes it: it is left out of everything that is worked out. Of several lines that say the same one strike takes the last; a line
            written again after the strike holds. `sternwright strike` writes such a line, and `check` says which strikes strike nothing.

            """;

    @Test
    void saysWhatTheProgramReads() throws IOException {
        StringBuilder page = new StringBuilder(HEAD);
        for (Published kind : Published.values()) {
            page.append("# `").append(kind.file).append("`\n\n");
            block(page, "", kind.shape.schema());
        }
        page.append(TABLES);
        table(page, "`history/ID.csv`", HistorySheet.ONE_BOAT);
        table(page, "`hours/ID.csv`", HoursSheet.ONE_BOAT);
        table(page, "`import history`, `export history`", HistorySheet.MANY_BOATS);
        table(page, "`import hours`, `export hours`", HoursSheet.MANY_BOATS);
        table(page, "`import boats`, `export boats`: a row for each installation", BoatsSheet.SHEET);
        table(page, "`tides.csv`", SeasonSheets.TIDES);
        table(page, "`dates.csv`", SeasonSheets.DATES);
        table(page, "`promises.csv`", SeasonSheets.PROMISES);
        table(page, "`away.csv`", SeasonSheets.AWAY);
        table(page, "`agreed.csv`, written when a plan of visits is accepted", AgreedSheet.AGREED);
        table(page, "`season.csv`, written by `season --publish`", SeasonSheets.PLAN);
        table(page, "`season-visits.csv`, written with it", SeasonVisitsSheet.VISITS);
        Page.mustSay("docs/file-formats.md", page.toString().stripTrailing() + "\n");
    }

    private static void table(StringBuilder page, String name, Sheet<?> sheet) {
        page.append("## ").append(name).append("\n\n");
        rows(page, sheet.columns().schema(), "column");
    }

    private static void block(StringBuilder page, String path, Map<?, ?> schema) {
        if (!path.isEmpty()) {
            page.append("## ").append(path).append("\n\n");
        }
        rows(page, schema, "field");
        properties(schema).forEach((name, field) -> {
            Map<?, ?> inner = field.get("items") instanceof Map<?, ?> items ? items : field;
            if (inner.get("properties") != null) {
                String here = path.isEmpty() ? name : path + "." + name;
                block(page, field == inner ? here : here + "[]", inner);
            }
        });
    }

    private static void rows(StringBuilder page, Map<?, ?> schema, String what) {
        page.append("| ").append(what).append(" | is | required | means |\n| --- | --- | --- | --- |\n");
        List<?> required = schema.get("required") instanceof List<?> names ? names : List.of();
        properties(schema)
                .forEach((name, field) -> page.append("| `")
                        .append(name)
                        .append("` | ")
                        .append(words(field))
                        .append(" | ")
                        .append(required.contains(name) ? "yes" : fallback(field))
                        .append(" | ")
                        .append(field.get("description"))
                        .append(" |\n"));
        page.append("\n");
    }

    private static String fallback(Map<?, ?> field) {
        Object value = field.get("default");
        boolean plain = value instanceof String || value instanceof Number || value instanceof Boolean;
        return plain && !"".equals(value) ? "else " + value : "no";
    }

    private static String words(Map<?, ?> field) {
        if (field.get("enum") instanceof List<?> names) {
            return names.stream().filter(n -> n != null).map(String::valueOf).collect(Collectors.joining(", "));
        }
        List<String> words = new ArrayList<>();
        Object type = field.get("type") instanceof List<?> types ? types.get(0) : field.get("type");
        words.add(
                field.get("items") instanceof Map<?, ?> items
                        ? "list of " + one(items)
                        : type(String.valueOf(type), field));
        limit(words, field, "exclusiveMinimum", "above ");
        limit(words, field, "minimum", "from ");
        limit(words, field, "maximum", "to ");
        limit(words, field, "minItems", "at least ");
        return String.join(" ", words);
    }

    private static String one(Map<?, ?> items) {
        return items.get("properties") == null ? words(items) : "blocks";
    }

    private static String type(String type, Map<?, ?> field) {
        if ("string".equals(type)) {
            String pattern = String.valueOf(field.get("pattern"));
            return field.get("format") != null ? "date" : pattern.contains("-(0[1-9]") ? "month and day" : "text";
        }
        return switch (type) {
            case "object" -> field.get("properties") == null ? "figures by name" : "block";
            case "integer" -> "whole number";
            case "boolean" -> "true or false";
            default -> type;
        };
    }

    private static void limit(List<String> words, Map<?, ?> field, String keyword, String word) {
        if (field.get(keyword) != null) {
            words.add(word + field.get(keyword));
        }
    }

    @SuppressWarnings("unchecked") // a schema's properties are schemas by name
    private static Map<String, Map<?, ?>> properties(Map<?, ?> schema) {
        return (Map<String, Map<?, ?>>) Objects.requireNonNull(schema.get("properties"));
    }
}
