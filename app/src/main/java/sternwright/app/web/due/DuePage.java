package sternwright.app.web.due;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.YardFiles;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.Sorting;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.service.Half;
import sternwright.service.Place;

/** The due list of the yard. */
@Controller
@ForAll
public class DuePage {
    private static final int LINES = 50;
    private static final String SOONEST = "on";

    private final OpenYard yard;

    /** The works that a list can be narrowed to: the same as long as the list is the same. */
    @Nullable
    private volatile Offered offered;

    DuePage(OpenYard yard) {
        this.yard = yard;
    }

    private record Offered(List<Due> of, List<Field.Choice> rules) {}

    @GetMapping("/due")
    ModelAndView list(
            Page page,
            @ModelAttribute("asked") DueAsked asked,
            @RequestParam(name = Sorting.NAME, defaultValue = "") String sort,
            @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        YardFiles files = yard.files();
        List<Due> all = yard.dues();
        Map<String, Comparator<Due>> orders = orders(files);
        Sorting sorting = Sorting.of(sort, SOONEST, orders.keySet());
        List<Due> found = all.stream().filter(asked.of(files.boats())).toList();
        boolean asItCame = sorting.column().equals(SOONEST) && !sorting.down();
        List<Due> sorted =
                asItCame ? found : found.stream().sorted(sorting.order(orders)).toList();
        Pager pager = new Pager(number, LINES, sorted.size());
        DueLines lines = new DueLines(page, files);
        DueView view = new DueView(
                pager.cut(sorted).stream().map(lines::line).toList(),
                pager,
                sorting,
                filters(page, files, asked, rules(all)),
                more(page, asked),
                asked.place() != null && !asked.place().isEmpty()
                        || asked.half() != null && !asked.half().isEmpty()
                        || Boolean.TRUE.equals(asked.safety()),
                found.stream().filter(d -> d.state() == DueState.OVERDUE).count());
        return page.show(Section.DUE, "due/list", view);
    }

    private static Map<String, Comparator<Due>> orders(YardFiles files) {
        Function<Due, Boat> boat = d -> Objects.requireNonNull(files.boats().get(d.boatId()));
        return Map.of(
                SOONEST,
                Comparator.comparing(Due::dueOn),
                "work",
                Comparator.comparing(d -> d.rule().work()),
                "boat",
                Comparator.comparing(d -> boat.apply(d).name()),
                "berth",
                Comparator.comparing(d -> boat.apply(d).berthId()),
                "state",
                Comparator.comparing(Due::state));
    }

    private List<Field.Choice> rules(List<Due> dues) {
        Offered now = offered;
        if (now == null || now.of() != dues) {
            Map<String, String> works = new TreeMap<>();
            dues.forEach(d -> works.putIfAbsent(d.rule().work(), d.rule().id()));
            now = new Offered(
                    dues,
                    works.entrySet().stream()
                            .map(e -> new Field.Choice(e.getValue(), e.getKey()))
                            .toList());
            offered = now;
        }
        return now.rules();
    }

    private static List<Field> filters(Page page, YardFiles files, DueAsked asked, List<Field.Choice> rules) {
        List<Field.Choice> berths = files.berths().values().stream()
                .map(b -> new Field.Choice(b.id(), b.name()))
                .toList();
        List<Field.Choice> states = new java.util.ArrayList<>();
        states.add(new Field.Choice("", page.say("due.state.now")));
        states.add(new Field.Choice(DueAsked.ALL, page.say("due.state.all")));
        Arrays.stream(DueState.values()).forEach(s -> states.add(choice(page, "due.state.", s)));
        return List.of(
                field(page, "find", asked.find()).as("search").optional(),
                field(page, "rule", asked.rule()).optional().of(rules),
                field(page, "berth", asked.berth()).optional().of(berths),
                field(page, "state", asked.state()).of(states));
    }

    private static List<Field> more(Page page, DueAsked asked) {
        return List.of(
                field(page, "place", asked.place())
                        .optional()
                        .of(List.of(
                                choice(page, "due.place.", Place.AFLOAT), choice(page, "due.place.", Place.ASHORE))),
                field(page, "half", asked.half())
                        .optional()
                        .of(List.of(
                                choice(page, "due.half.", Half.LAY_UP), choice(page, "due.half.", Half.RECOMMISSION))),
                field(page, "safety", Boolean.TRUE.equals(asked.safety()) ? "true" : "")
                        .as("check")
                        .optional());
    }

    private static Field field(Page page, String name, @Nullable String value) {
        return Field.plain(name, page.say("due." + name), DueAsked.text(value));
    }

    private static Field.Choice choice(Page page, String prefix, Enum<?> one) {
        return new Field.Choice(DueAsked.word(one), page.say(prefix + DueAsked.word(one)));
    }
}
