package sternwright.app.api;

import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.boat.PartRef;
import sternwright.service.Place;
import sternwright.visit.planned.HandChange;
import sternwright.visit.planned.VisitAt;

/**
 * One change of a plan by hand.
 *
 * @param what move-work, leave-work, move-visit, drop-visit or add-visit
 * @param part installation/part, for works
 * @param rule id of the rule, for works
 * @param from the visit it is about, as month and place: 2027-03 ashore
 * @param to where it goes, in the same way
 */
public record PlanChange(
        @Nullable String what,
        @Nullable String part,
        @Nullable String rule,
        @Nullable String from,
        @Nullable String to) {
    private static final Pattern AT = Pattern.compile("(\\d{4}-\\d{2}) (afloat|ashore)");
    private static final Pattern PART = Pattern.compile("([^/]+)/([^/]+)");
    private static final List<String> KNOWN =
            List.of("move-work", "leave-work", "move-visit", "drop-visit", "add-visit");

    HandChange change() {
        String deed = Objects.requireNonNullElse(what, "");
        return switch (deed) {
            case "move-work" -> new HandChange.MoveWork(work(), rule(rule), at("from", from), at("to", to));
            case "leave-work" -> new HandChange.LeaveWork(work(), rule(rule), at("from", from));
            case "move-visit" -> new HandChange.MoveVisit(at("from", from), at("to", to));
            case "drop-visit" -> new HandChange.DropVisit(at("from", from));
            case "add-visit" -> new HandChange.AddVisit(at("to", to));
            default ->
                throw BadInput.of("what", "found \"" + deed + "\"", "a kind of change", KnownNames.advice(deed, KNOWN));
        };
    }

    private PartRef work() {
        Matcher m = PART.matcher(Objects.requireNonNullElse(part, ""));
        if (!m.matches()) {
            throw BadInput.of("part", "found \"" + part + "\"", "installation/part, such as main/engine", "");
        }
        return new PartRef(m.group(1), m.group(2));
    }

    private static String rule(@Nullable String said) {
        if (said == null || said.isBlank()) {
            throw BadInput.of("rule", "it is missing", "id of the rule", "");
        }
        return said;
    }

    private static VisitAt at(String field, @Nullable String said) {
        Matcher m = AT.matcher(Objects.requireNonNullElse(said, ""));
        try {
            if (m.matches()) {
                return new VisitAt(
                        YearMonth.parse(m.group(1)), Place.valueOf(m.group(2).toUpperCase(Locale.ROOT)));
            }
        } catch (DateTimeParseException noMonth) {
            // said below
        }
        throw BadInput.of(field, "found \"" + said + "\"", "month and place, such as 2027-03 ashore", "");
    }
}
