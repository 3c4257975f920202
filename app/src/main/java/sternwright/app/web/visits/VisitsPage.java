package sternwright.app.web.visits;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.proving.AgreedPlans;
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
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.VisitAt;

/** The boats that want a visit. */
@Controller
@ForAll
public class VisitsPage {
    private static final int LINES = 50;
    private static final String FIRST = "safety";

    private static final Map<String, Comparator<Line>> ORDERS = Map.of(
            FIRST,
            Comparator.comparingLong(Line::safety)
                    .thenComparingLong(Line::overdue)
                    .thenComparingLong(Line::due)
                    .reversed()
                    .thenComparing(Line::boat),
            "boat",
            Comparator.comparing(l -> l.boat().toLowerCase(Locale.ROOT)),
            "berth",
            Comparator.comparing(Line::berth),
            "overdue",
            Comparator.comparingLong(Line::overdue).reversed(),
            "due",
            Comparator.comparingLong(Line::due).reversed());

    private final OpenYard yard;
    private final AgreedPlans plans;

    VisitsPage(OpenYard yard, AgreedPlans plans) {
        this.yard = yard;
        this.plans = plans;
    }

    /**
     * A boat with works to be done now.
     *
     * @param id the boat
     * @param boat her name
     * @param owner whose she is
     * @param berth where she lies
     * @param agreed the next visit that is agreed, may be empty
     * @param safety safety items among the overdue ones
     * @param overdue works past their last sensible day
     * @param due works due now, those of unknown history among them
     */
    public record Line(
            String id, String boat, String owner, String berth, String agreed, long safety, long overdue, long due) {}

    /**
     * What the page shows.
     *
     * @param lines the boats of the stretch
     * @param pager which stretch
     * @param sorting by which column
     * @param find the field to look for a name
     */
    public record View(List<Line> lines, Pager pager, Sorting sorting, Field find) {
        /** Copies the list. */
        public View {
            lines = List.copyOf(lines);
        }
    }

    private static final class Counts {
        private long safety;
        private long overdue;
        private long due;

        void add(Due d) {
            if (d.state() == DueState.OVERDUE) {
                overdue++;
                safety += d.rule().safety() ? 1 : 0;
            } else {
                due++;
            }
        }
    }

    @GetMapping("/visits")
    ModelAndView list(
            Page page,
            @RequestParam(name = "find", defaultValue = "") String find,
            @RequestParam(name = Sorting.NAME, defaultValue = "") String sort,
            @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        YardFiles files = yard.files();
        Map<String, Counts> counts = new HashMap<>();
        for (Due d : yard.dues()) {
            if (d.state() == DueState.OVERDUE || d.state() == DueState.DUE || d.state() == DueState.UNKNOWN) {
                counts.computeIfAbsent(d.boatId(), id -> new Counts()).add(d);
            }
        }
        plans.all().keySet().stream()
                .filter(files.boats()::containsKey)
                .filter(id -> !plans.of(id).isEmpty())
                .forEach(id -> counts.computeIfAbsent(id, b -> new Counts()));
        String letters = find.strip().toLowerCase(Locale.ROOT);
        Sorting sorting = Sorting.of(sort, FIRST, ORDERS.keySet());
        List<Line> all = counts.entrySet().stream()
                .map(e -> line(page, files, Objects.requireNonNull(files.boats().get(e.getKey())), e.getValue()))
                .filter(l ->
                        (l.boat() + " " + l.owner()).toLowerCase(Locale.ROOT).contains(letters))
                .sorted(sorting.order(ORDERS))
                .toList();
        Pager pager = new Pager(number, LINES, all.size());
        Field field =
                Field.plain("find", page.say("visits.find"), find).as("search").optional();
        return page.show(Section.VISITS, "visits/list", new View(pager.cut(all), pager, sorting, field));
    }

    private Line line(Page page, YardFiles files, Boat boat, Counts counts) {
        String agreed = plans.of(boat.id()).stream()
                .map(AgreedWork::at)
                .min(VisitAt::compareTo)
                .map(new PlanText(page)::at)
                .orElse("");
        var berth = files.berths().get(boat.berthId());
        return new Line(
                boat.id(),
                boat.name(),
                boat.owner().name(),
                berth == null ? boat.berthId() : berth.name(),
                agreed,
                counts.safety,
                counts.overdue,
                counts.due);
    }
}
