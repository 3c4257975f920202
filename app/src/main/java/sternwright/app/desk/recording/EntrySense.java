package sternwright.app.desk.recording;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;

/** Whether a line of history can be of a boat: her part, a rule in force on it, a day that has been. */
public final class EntrySense {
    /** Where a line was said. */
    public record Where(String source, int line) {
        public Problem problem(String field, String found, String expected, String advice) {
            return new Problem(source, line, field, found, expected, advice);
        }
    }

    private EntrySense() {}

    public static List<Problem> check(Boat boat, DueWork work, ServiceEntry e, Where where, LocalDate latest) {
        List<Problem> wrong = new ArrayList<>();
        if (e.date().isAfter(latest)) {
            wrong.add(where.problem("date", e.date() + " lies in the future", "a date up to " + latest, ""));
        }
        Set<String> parts = parts(boat);
        if (!parts.contains(e.part().toString())) {
            wrong.add(where.problem(
                    "part",
                    "boat " + boat.id() + " has no part \"" + e.part() + "\"",
                    "installation/part",
                    KnownNames.advice(e.part().toString(), parts)));
        } else if (e.outcome() == Outcome.HAPPENED) {
            happening(work, e, where, wrong);
        } else {
            rule(boat, work, e, where, wrong);
        }
        e.readings().stream()
                .filter(r -> r.unit().equals("%") && !(r.value() >= 0 && r.value() <= 100))
                .forEach(r -> wrong.add(where.problem(
                        "readings", r.name() + " is " + r.value() + " %", "0 to 100 %", "Check the figure.")));
        return wrong;
    }

    private static void rule(Boat boat, DueWork work, ServiceEntry e, Where where, List<Problem> wrong) {
        List<String> here = work.rulesOn(boat, e.part());
        if (!here.contains(e.ruleId())) {
            String found = work.knows(e.ruleId())
                    ? "rule \"" + e.ruleId() + "\" is not for part " + e.part()
                    : "there is no rule \"" + e.ruleId() + "\"";
            wrong.add(where.problem(
                    "rule", found, "a rule in force on " + e.part(), KnownNames.advice(e.ruleId(), here)));
        }
    }

    /** A happening no rule listens to would be written and change nothing. */
    private static void happening(DueWork work, ServiceEntry e, Where where, List<Problem> wrong) {
        Set<String> known = work.happenings();
        if (!known.contains(e.ruleId())) {
            wrong.add(where.problem(
                    "happened",
                    "no rule knows of \"" + e.ruleId() + "\"",
                    "one of " + String.join(", ", known),
                    KnownNames.advice(e.ruleId(), known)));
        }
    }

    private static Set<String> parts(Boat boat) {
        return boat.installations().stream()
                .flatMap(i -> i.parts().stream().map(p -> new PartRef(i.id(), p.id()).toString()))
                .collect(Collectors.toSet());
    }
}
