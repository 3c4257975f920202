package sternwright.app.web.visits;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.derived.OfYard;
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
import sternwright.visit.planned.VisitAt;

/** The boats that want a visit. */
@Controller
@ForAll
public class VisitsPage {
    private static final int LINES = 50;
    private static final String FIRST = "safety";

    private static final Map<String, Comparator<Waiting>> ORDERS = Map.of(
            FIRST,
            Comparator.comparingInt(Waiting::safety)
                    .thenComparingInt(Waiting::overdue)
                    .thenComparingInt(Waiting::due)
                    .reversed()
                    .thenComparing(Waiting::boat),
            "boat",
            Comparator.comparing(Waiting::letters),
            "berth",
            Comparator.comparing(Waiting::berth),
            "overdue",
            Comparator.comparingInt(Waiting::overdue).reversed(),
            "due",
            Comparator.comparingInt(Waiting::due).reversed());

    private final OfYard<List<Waiting>> waiting;

    VisitsPage(OpenYard yard, AgreedPlans plans) {
        waiting = new OfYard<>(yard, y -> waiting(y.files(), y.dues(), plans.next()));
    }

    /** A boat that wants a visit, with what can be looked for in small letters, her name first. */
    private record Waiting(
            String id,
            String boat,
            String letters,
            String owner,
            String berth,
            @Nullable VisitAt agreed,
            int safety,
            int overdue,
            int due) {}

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
            String id, String boat, String owner, String berth, String agreed, int safety, int overdue, int due) {}

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
        private int safety;
        private int overdue;
        private int due;

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
        String letters = find.strip().toLowerCase(Locale.ROOT);
        Sorting sorting = Sorting.of(sort, FIRST, ORDERS.keySet());
        List<Waiting> all = waiting.get().stream()
                .filter(w -> w.letters().contains(letters))
                .sorted(sorting.order(ORDERS))
                .toList();
        Pager pager = new Pager(number, LINES, all.size());
        Field field =
                Field.plain("find", page.say("visits.find"), find).as("search").optional();
        return page.show(Section.VISITS, "visits/list", new View(lines(page, pager.cut(all)), pager, sorting, field));
    }

    private static List<Waiting> waiting(YardFiles files, List<Due> dues, Map<String, VisitAt> agreed) {
        Map<String, Counts> counts = new HashMap<>();
        for (Due d : dues) {
            if (d.state() == DueState.OVERDUE || d.state() == DueState.DUE || d.state() == DueState.UNKNOWN) {
                counts.computeIfAbsent(d.boatId(), id -> new Counts()).add(d);
            }
        }
        agreed.keySet().stream()
                .filter(files.boats()::containsKey)
                .forEach(id -> counts.computeIfAbsent(id, b -> new Counts()));
        return counts.entrySet().stream()
                .map(e -> waiting(
                        files,
                        Objects.requireNonNull(files.boats().get(e.getKey())),
                        agreed.get(e.getKey()),
                        e.getValue()))
                .toList();
    }

    private static Waiting waiting(YardFiles files, Boat boat, @Nullable VisitAt agreed, Counts counts) {
        var berth = files.berths().get(boat.berthId());
        return new Waiting(
                boat.id(),
                boat.name(),
                (boat.name() + " " + boat.owner().name()).toLowerCase(Locale.ROOT),
                boat.owner().name(),
                berth == null ? boat.berthId() : berth.name(),
                agreed,
                counts.safety,
                counts.overdue,
                counts.due);
    }

    private static List<Line> lines(Page page, List<Waiting> shown) {
        PlanText text = new PlanText(page);
        return shown.stream()
                .map(w -> new Line(
                        w.id(),
                        w.boat(),
                        w.owner(),
                        w.berth(),
                        w.agreed() == null ? "" : text.at(w.agreed()),
                        w.safety(),
                        w.overdue(),
                        w.due()))
                .toList();
    }
}
