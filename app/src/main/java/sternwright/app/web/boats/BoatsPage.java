package sternwright.app.web.boats;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
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
import sternwright.app.web.page.State;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;

/** The list of boats. */
@Controller
@ForAll
public class BoatsPage {
    private static final int LINES = 100;

    private static final Map<String, Comparator<Line>> ORDERS = Map.of(
            "name", Comparator.comparing(l -> l.name().toLowerCase(Locale.ROOT)),
            "owner", Comparator.comparing(l -> l.owner().toLowerCase(Locale.ROOT)),
            "berth", Comparator.comparing(Line::berth),
            "overdue", Comparator.comparingLong(Line::overdue),
            "due", Comparator.comparingLong(Line::due));

    private final OpenYard yard;

    BoatsPage(OpenYard yard) {
        this.yard = yard;
    }

    /**
     * One boat.
     *
     * @param id the boat
     * @param name her name
     * @param owner whose she is
     * @param berth where she lies
     * @param overdue works past their last sensible day
     * @param due works due now
     * @param state how she stands
     */
    public record Line(String id, String name, String owner, String berth, long overdue, long due, State state) {}

    /**
     * What the page shows.
     *
     * @param lines the boats of the stretch
     * @param pager which stretch
     * @param sorting by which column
     * @param find the field to look for a name
     * @param berth the field to choose a berth
     */
    public record View(List<Line> lines, Pager pager, Sorting sorting, Field find, Field berth) {}

    @GetMapping("/boats")
    ModelAndView list(
            Page page,
            @RequestParam(name = "find", defaultValue = "") String find,
            @RequestParam(name = "berth", defaultValue = "") String berth,
            @RequestParam(name = Sorting.NAME, defaultValue = "") String sort,
            @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        YardFiles files = yard.files();
        Sorting sorting = Sorting.of(sort, "name", ORDERS.keySet());
        Map<String, List<Due>> dues = yard.dues().stream().collect(Collectors.groupingBy(Due::boatId));
        List<Line> all = files.boats().values().stream()
                .map(b -> line(page, files, b, dues.getOrDefault(b.id(), List.of())))
                .filter(l -> berth.isEmpty() || l.berth().equals(berth))
                .filter(l -> (l.name() + " " + l.owner())
                        .toLowerCase(Locale.ROOT)
                        .contains(find.strip().toLowerCase(Locale.ROOT)))
                .sorted(sorting.order(ORDERS))
                .toList();
        Pager pager = new Pager(number, LINES, all.size());
        View view = new View(pager.cut(all), pager, sorting, findField(page, find), berthField(page, files, berth));
        return page.show(Section.BOATS, "boats/list", view);
    }

    private static Line line(Page page, YardFiles files, Boat boat, List<Due> dues) {
        var berth = files.berths().get(boat.berthId());
        long overdue = dues.stream().filter(d -> d.state() == DueState.OVERDUE).count();
        long due = dues.stream().filter(d -> d.state() == DueState.DUE).count();
        State state = overdue > 0
                ? new State(page.say("boats.state.overdue"), State.Mark.TRIANGLE, State.Tone.ACT)
                : due > 0
                        ? new State(page.say("boats.state.due"), State.Mark.DISC, State.Tone.WATCH)
                        : new State(page.say("boats.state.fine"), State.Mark.TICK, State.Tone.SOFT);
        return new Line(
                boat.id(),
                boat.name(),
                boat.owner().name(),
                berth == null ? boat.berthId() : berth.name(),
                overdue,
                due,
                state);
    }

    private static Field findField(Page page, String find) {
        return Field.plain("find", page.say("boats.find"), find).as("search").optional();
    }

    private static Field berthField(Page page, YardFiles files, String berth) {
        List<Field.Choice> berths = files.berths().values().stream()
                .map(b -> new Field.Choice(b.name(), b.name()))
                .toList();
        return Field.plain("berth", page.say("boats.berth"), berth).optional().of(berths);
    }
}
