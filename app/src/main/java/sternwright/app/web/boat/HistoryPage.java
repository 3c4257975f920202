package sternwright.app.web.boat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.recording.StrikeEntry;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.State;
import sternwright.history.BoatHistory;
import sternwright.history.Finding;
import sternwright.history.HistoryLine;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.Strike;
import sternwright.history.TakenReading;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;

/** What was done, seen, refused and happened on a boat. Lines are added and never changed; a struck one stays to be seen. */
@Controller
@ForAll
public class HistoryPage {
    private static final int LINES = 50;

    private final OpenYard yard;

    HistoryPage(OpenYard yard) {
        this.yard = yard;
    }

    /**
     * A reading with its verdict.
     *
     * @param text what was measured
     * @param verdict how it was judged, null if it was not
     * @param why with limit and source, empty if it was not judged
     */
    public record Measured(String text, @Nullable State verdict, String why) {}

    /**
     * A line of history.
     *
     * @param day when
     * @param work what
     * @param part on which part
     * @param outcome how it ended
     * @param hours engine hours then, empty if not known
     * @param who by whom
     * @param readings what was measured
     * @param note free text
     * @param struck who struck it, when and why; empty if it holds
     * @param key by which it is struck; empty if it is or the reader may not
     */
    public record Line(
            String day,
            String work,
            String part,
            State outcome,
            String hours,
            String who,
            List<Measured> readings,
            String note,
            String struck,
            String key) {}

    /**
     * The page.
     *
     * @param head head of the boat's pages
     * @param lines the stretch of lines, the newest first
     * @param pager which stretch
     * @param find the field to look for words
     * @param strikes whether the reader may strike lines
     */
    public record View(BoatSheet.Head head, List<Line> lines, Pager pager, Field find, boolean strikes) {}

    @GetMapping("/boats/{id}/history")
    ModelAndView show(
            Page page,
            @PathVariable("id") String id,
            @RequestParam(name = "find", defaultValue = "") String find,
            @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        OneBoat one = OneBoat.of(yard.files(), id);
        Map<String, Rule> rules = rules(one);
        String sought = find.strip().toLowerCase(Locale.ROOT);
        List<HistoryLine> entries = shown(one.files().history(id));
        List<HistoryLine> found = entries.stream()
                .filter(l ->
                        sought.isEmpty() || words(page, one, rules, l.entry()).contains(sought))
                .toList();
        Pager pager = new Pager(number, LINES, found.size());
        List<Line> lines = pager.cut(found).stream()
                .map(l -> line(page, one, rules.get(l.entry().ruleId()), l))
                .toList();
        Field field =
                Field.plain("find", page.say("history.find"), find).as("search").optional();
        return page.show(
                Section.BOATS,
                "boat/history",
                new View(one.head(page, "history"), lines, pager, field, page.may(Role.MANAGER, Role.OFFICE)));
    }

    /** Each entry once, the newest first; a struck one with its strike. */
    private static List<HistoryLine> shown(BoatHistory history) {
        List<HistoryLine> shown = new ArrayList<>();
        history.entries().forEach(e -> shown.add(HistoryLine.of(e)));
        history.struck().forEach(s -> shown.add(new HistoryLine(s.entry(), s.strike())));
        shown.sort(Comparator.comparing(l -> l.entry().date()));
        java.util.Collections.reverse(shown);
        return shown;
    }

    static Map<String, Rule> rules(OneBoat one) {
        Map<String, Rule> rules = new HashMap<>();
        Stream.concat(Stream.of(one.files().generic()), one.files().programmes().stream())
                .flatMap(p -> p.rules().stream())
                .forEach(r -> rules.put(r.id(), r));
        return rules;
    }

    private static String words(Page page, OneBoat one, Map<String, Rule> rules, ServiceEntry e) {
        return (work(rules.get(e.ruleId()), e) + " " + one.name(page, e.part()) + " " + e.who() + " " + e.note())
                .toLowerCase(Locale.ROOT);
    }

    private static String work(@Nullable Rule rule, ServiceEntry e) {
        return rule == null || e.outcome() == Outcome.HAPPENED ? e.ruleId().replace('-', ' ') : rule.work();
    }

    static Line line(Page page, OneBoat one, @Nullable Rule rule, HistoryLine line) {
        ServiceEntry e = line.entry();
        Strike strike = line.strike();
        Double hours = e.hours();
        return new Line(
                page.figures().shortDate(e.date()),
                work(rule, e),
                one.name(page, e.part()),
                strike == null
                        ? outcome(page, e.outcome())
                        : new State(page.say("history.struck"), State.Mark.BAR, State.Tone.SOFT),
                hours == null ? "" : page.figures().quantity(hours, "h"),
                e.who(),
                e.readings().stream().map(r -> measured(page, rule, e, r)).toList(),
                e.note(),
                strike == null
                        ? ""
                        : page.say(
                                "history.struck.by",
                                strike.who(),
                                page.figures().shortDate(strike.on()),
                                strike.why()),
                strike == null && page.may(Role.MANAGER, Role.OFFICE) ? StrikeEntry.key(e) : "");
    }

    private static State outcome(Page page, Outcome outcome) {
        String word = page.say("history.outcome." + OneBoat.word(outcome));
        return switch (outcome) {
            case DONE -> new State(word, State.Mark.TICK, State.Tone.PLAIN);
            case SEEN -> new State(word, State.Mark.RING, State.Tone.PLAIN);
            case REFUSED -> new State(word, State.Mark.BAR, State.Tone.WATCH);
            case HAPPENED -> new State(word, State.Mark.TRIANGLE, State.Tone.WATCH);
        };
    }

    private static Measured measured(Page page, @Nullable Rule rule, ServiceEntry e, TakenReading r) {
        Optional<ReadingAsked> asked = rule == null
                ? Optional.empty()
                : rule.readings().stream()
                        .filter(a -> a.name().equals(r.name()) && a.unit().equals(r.unit()))
                        .findFirst();
        String text = page.say(
                "history.reading",
                asked.map(ReadingAsked::label)
                        .orElse(r.name().replace('-', ' '))
                        .replace(" (1 yes, 0 no)", ""),
                asked.map(a -> page.figures().value(a, r.value()))
                        .orElseGet(() ->
                                page.figures().quantity(r.value(), r.unit()).strip()));
        Optional<Finding> finding =
                e.findings().stream().filter(f -> f.reading().equals(r.name())).findFirst();
        return new Measured(
                text,
                finding.map(f -> Verdict.of(page, f.severity())).orElse(null),
                finding.map(f -> page.figures().judged(f.why(), r.unit())).orElse(""));
    }
}
