package sternwright.app.web.due;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.derived.OfYard;
import sternwright.app.desk.find.BoatsOfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.YardFiles;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.Sorting;
import sternwright.due.DueState;
import sternwright.service.Half;
import sternwright.service.Place;

/** The due list of the yard. */
@Controller
@ForAll
public class DuePage {
    private static final int LINES = 50;

    private final OpenYard yard;
    private final BoatsOfYard boats;
    private final OfYard<DueOrders> orders;

    DuePage(OpenYard yard, BoatsOfYard boats) {
        this.yard = yard;
        this.boats = boats;
        this.orders = new OfYard<>(yard, y -> new DueOrders(y.files(), y.dues()));
    }

    @GetMapping("/due")
    ModelAndView list(
            Page page,
            @ModelAttribute("asked") DueAsked asked,
            @RequestParam(name = Sorting.NAME, defaultValue = "") String sort,
            @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        YardFiles files = yard.files();
        DueOrders dues = orders.get();
        Sorting sorting = Sorting.of(sort, DueOrders.SOONEST, dues.columns());
        DueOrders.Found found = dues.find(asked, sorting);
        Pager pager = new Pager(number, LINES, found.works().size());
        DueLines lines = new DueLines(page, files);
        DueView view = new DueView(
                pager.cut(found.works()).stream().map(lines::line).toList(),
                pager,
                sorting,
                filters(page, files, asked, rules()),
                more(page, asked),
                asked.place() != null && !asked.place().isEmpty()
                        || asked.half() != null && !asked.half().isEmpty()
                        || Boolean.TRUE.equals(asked.safety()),
                found.overdue());
        return page.show(Section.DUE, "due/list", view);
    }

    private List<Field.Choice> rules() {
        return boats.works().stream()
                .map(w -> new Field.Choice(w.rule(), w.words()))
                .toList();
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
