package sternwright.app.web.boats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.find.BoatIndex;
import sternwright.app.desk.find.BoatQuery;
import sternwright.app.desk.find.BoatRow;
import sternwright.app.desk.find.BoatsOfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.YardFiles;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.boat.DueMark;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Field.Choice;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.Sorting;
import sternwright.app.web.page.State;
import sternwright.boat.Arrangement;
import sternwright.due.DueState;

/** The list of boats: found by words, berth, arrangement and what is due. */
@Controller
@ForAll
public class BoatsPage {
    private static final int LINES = 50;

    private static final Comparator<BoatRow> BY_NAME =
            Comparator.comparing(BoatRow::name, String.CASE_INSENSITIVE_ORDER).thenComparing(BoatRow::boatId);

    private static final Map<String, Comparator<BoatRow>> ORDERS = Map.of(
            "name", BY_NAME,
            "owner",
                    Comparator.comparing(BoatRow::owner, String.CASE_INSENSITIVE_ORDER)
                            .thenComparing(BY_NAME),
            "berth", Comparator.comparing(BoatRow::berth).thenComparing(BY_NAME),
            "overdue", Comparator.comparingInt(BoatRow::overdue).thenComparing(BY_NAME),
            "due", Comparator.comparingInt(BoatRow::due).thenComparing(BY_NAME));

    private final OpenYard yard;
    private final BoatsOfYard boats;

    BoatsPage(OpenYard yard, BoatsOfYard boats) {
        this.yard = yard;
        this.boats = boats;
    }

    /**
     * One boat.
     *
     * @param id the boat
     * @param name her name
     * @param owner whose she is
     * @param berth where she lies
     * @param arrangement how power gets to her water
     * @param overdue works past their last sensible day
     * @param due works due now
     * @param state the worst of what is due
     * @param next what falls due first, with its day; empty if nothing does
     */
    public record Line(
            String id,
            String name,
            String owner,
            String berth,
            String arrangement,
            int overdue,
            int due,
            State state,
            String next) {}

    /**
     * What the page shows.
     *
     * @param lines the boats of the stretch
     * @param pager which stretch
     * @param sorting by which column
     * @param filters the fields that narrow the list
     * @param registers whether the reader registers boats
     */
    public record View(List<Line> lines, Pager pager, Sorting sorting, List<Field> filters, boolean registers) {}

    /**
     * What is asked for, as it stands in the address.
     *
     * @param find words
     * @param berth id of a berth
     * @param arrangement an arrangement
     * @param work id of a rule
     * @param state how it stands
     */
    record Asked(
            @Nullable String find,
            @Nullable String berth,
            @Nullable String arrangement,
            @Nullable String work,
            @Nullable String state) {}

    @GetMapping("/boats")
    ModelAndView list(
            Page page,
            Asked asked,
            @RequestParam(name = Sorting.NAME, defaultValue = "") String sort,
            @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        BoatIndex index = boats.index();
        List<BoatRow> found = index.find(query(asked));
        boolean byWords = sort.isEmpty() && !text(asked.find()).isEmpty();
        Sorting sorting = Sorting.of(sort, "name", ORDERS.keySet());
        List<BoatRow> rows =
                byWords ? found : found.stream().sorted(sorting.order(ORDERS)).toList();
        Pager pager = new Pager(number, LINES, rows.size());
        View view = new View(
                pager.cut(rows).stream().map(r -> line(page, r)).toList(),
                pager,
                sorting,
                filters(page, asked, index),
                page.may(Role.MANAGER, Role.OFFICE));
        return page.show(Section.BOATS, "boats/list", view);
    }

    private static BoatQuery query(Asked asked) {
        return new BoatQuery(
                text(asked.find()),
                one(Arrangement.class, text(asked.arrangement())),
                set(text(asked.berth())),
                set(text(asked.work())),
                states(text(asked.state()), !text(asked.work()).isEmpty()));
    }

    /** A work that is asked for without saying how it stands is one that is not merely to come. */
    private static Set<DueState> states(String asked, boolean work) {
        Set<DueState> states = one(DueState.class, asked);
        return states.isEmpty() && work ? Set.of(DueState.OVERDUE, DueState.DUE, DueState.UNKNOWN) : states;
    }

    private static <E extends Enum<E>> Set<E> one(Class<E> kind, String name) {
        return Arrays.stream(kind.getEnumConstants())
                .filter(e -> e.name().equals(name))
                .collect(Collectors.toSet());
    }

    private static Set<String> set(String one) {
        return one.isEmpty() ? Set.of() : Set.of(one);
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    private static Line line(Page page, BoatRow row) {
        String next = Optional.ofNullable(row.next())
                .map(n -> page.say("boats.next.line", n.work(), page.figures().shortDate(n.dueOn())))
                .orElse("");
        State state = row.state() == DueState.COMING
                ? new State(page.say("boats.state.fine"), State.Mark.TICK, State.Tone.SOFT)
                : DueMark.of(page, row.state());
        return new Line(
                row.boatId(),
                row.name(),
                row.owner(),
                row.berth(),
                row.arrangements().stream().map(a -> arrangement(page, a)).collect(Collectors.joining(", ")),
                row.overdue(),
                row.due(),
                state,
                next);
    }

    private static String arrangement(Page page, Arrangement arrangement) {
        return page.say("boats.arrangement." + arrangement.name().toLowerCase(java.util.Locale.ROOT));
    }

    private List<Field> filters(Page page, Asked asked, BoatIndex index) {
        YardFiles files = yard.files();
        List<Choice> works =
                boats.works().stream().map(w -> new Choice(w.rule(), w.words())).toList();
        List<Choice> arrangements = index.arrangements().entrySet().stream()
                .map(a -> new Choice(
                        a.getKey().name(),
                        page.say("boats.choice.counted", arrangement(page, a.getKey()), a.getValue())))
                .toList();
        List<Choice> berths = files.berths().values().stream()
                .map(b -> new Choice(b.id(), b.name()))
                .toList();
        List<Choice> states = List.of(DueState.OVERDUE, DueState.DUE, DueState.UNKNOWN, DueState.COMING).stream()
                .map(s ->
                        new Choice(s.name(), page.say("boats.choice." + s.name().toLowerCase(java.util.Locale.ROOT))))
                .toList();
        return List.of(
                Field.plain("find", page.say("boats.find"), text(asked.find()))
                        .as("search")
                        .optional(),
                Field.plain("berth", page.say("boats.berth"), text(asked.berth()))
                        .optional()
                        .of(berths),
                Field.plain("arrangement", page.say("boats.arrangement"), text(asked.arrangement()))
                        .optional()
                        .of(arrangements),
                Field.plain("work", page.say("boats.work"), text(asked.work()))
                        .optional()
                        .of(works),
                Field.plain("state", page.say("boats.state"), text(asked.state()))
                        .optional()
                        .of(states));
    }
}
