package sternwright.app.command.due;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import sternwright.app.command.text.PeopleDates;
import sternwright.app.command.text.TextTable;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.due.Reasons;

/** The due list for people: grouped by how it stands, the reason and the source under each work. */
public final class DueText {
    private static final List<DueState> ORDER = List.of(
            DueState.OVERDUE, DueState.UNKNOWN, DueState.DUE, DueState.COMING, DueState.EVERY_VISIT, DueState.REFUSED);
    private static final int WIDTH = 118;

    private final PrintWriter out;
    private final Reasons reasons;
    private final DateTimeFormatter dates;

    DueText(PrintWriter out, Locale locale) {
        this.out = out;
        this.reasons = new Reasons(locale);
        this.dates = PeopleDates.of(locale);
    }

    /** Every line of one boat. */
    void boat(Boat boat, List<Due> dues, LocalDate today) {
        out.println(boat.name() + " (" + boat.id() + ") on " + dates.format(today) + ": " + counts(dues));
        Map<DueState, List<Due>> byState = byState(dues);
        for (DueState state : ORDER) {
            List<Due> here = byState.getOrDefault(state, List.of());
            if (!here.isEmpty()) {
                out.println();
                out.println(state.words()
                        + (state == DueState.UNKNOWN
                                ? ": nobody knows when it was last done; due at the first visit"
                                : ""));
                here.forEach(this::entry);
            }
        }
    }

    private void entry(Due due) {
        String safety = due.rule().safety() ? "  [safety item]" : "";
        out.printf("  %-12s %s, %s%s%n", dates.format(due.dueOn()), due.rule().work(), due.part(), safety);
        if (due.state() != DueState.UNKNOWN) {
            indented(reasons.sentence(due) + window(due));
        }
        indented("Rule " + due.rule().id() + " by the " + due.inForce().sourceLine() + ".");
    }

    private String window(Due due) {
        if (due.state() != DueState.DUE && due.state() != DueState.COMING) {
            return "";
        }
        return " Best between " + dates.format(due.earliest()) + " and " + dates.format(due.lastSensible()) + ".";
    }

    private void indented(String text) {
        int room = WIDTH - 15;
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() + word.length() + 1 > room) {
                out.println(" ".repeat(15) + line);
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        out.println(" ".repeat(15) + line);
    }

    /** One line a boat. */
    void summary(Collection<Boat> boats, Map<String, List<Due>> dues, LocalDate today) {
        TextTable table = new TextTable("boat", "name", "overdue", "unknown", "due", "coming", "most pressing");
        for (Boat boat : boats) {
            List<Due> here = dues.getOrDefault(boat.id(), List.of());
            Map<DueState, List<Due>> byState = byState(here);
            table.row(
                    boat.id(),
                    boat.name(),
                    count(byState, DueState.OVERDUE),
                    count(byState, DueState.UNKNOWN),
                    count(byState, DueState.DUE),
                    count(byState, DueState.COMING),
                    pressing(here));
        }
        table.print(out);
        List<Due> all = dues.values().stream().flatMap(List::stream).toList();
        out.println();
        out.println(boats.size() + (boats.size() == 1 ? " boat on " : " boats on ") + dates.format(today) + ": "
                + counts(all) + ".");
        out.println("\"sternwright due BOAT\" lists a boat with the reasons; --list lists every line.");
    }

    private String pressing(List<Due> dues) {
        return dues.stream()
                .filter(d -> d.state() == DueState.OVERDUE)
                .min(java.util.Comparator.comparing((Due d) -> !d.rule().safety())
                        .thenComparing(Due::dueOn))
                .or(() -> dues.stream().filter(d -> d.state() == DueState.DUE).findFirst())
                .map(d -> d.rule().work() + " (" + d.part() + "), " + dates.format(d.dueOn()))
                .orElse("");
    }

    private static String counts(List<Due> dues) {
        Map<DueState, List<Due>> byState = byState(dues);
        return ORDER.stream()
                .filter(byState::containsKey)
                .map(s -> count(byState, s) + " " + s.words())
                .collect(Collectors.joining(", "));
    }

    private static String count(Map<DueState, List<Due>> byState, DueState state) {
        return Integer.toString(byState.getOrDefault(state, List.of()).size());
    }

    private static Map<DueState, List<Due>> byState(List<Due> dues) {
        return dues.stream()
                .collect(Collectors.groupingBy(Due::state, () -> new EnumMap<>(DueState.class), Collectors.toList()));
    }
}
