package sternwright.app.web.season;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.UriUtils;
import sternwright.app.desk.derived.EachOfYard;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.SeasonCsv;
import sternwright.app.desk.season.SeasonLine;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.ShownSeason;
import sternwright.app.files.problem.BadInput;
import sternwright.app.paper.SeasonPaper;
import sternwright.app.paper.calendar.SeasonCalendars;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.boat.Boat;

/** The published season to take away: board on paper, sheet, calendars. */
@Controller
@ForAll
public class SeasonPapersPage {
    private final OpenYard yard;
    private final SeasonBoards boards;
    private final MadeOnce made;
    private final EachOfYard<String, View> views;

    SeasonPapersPage(OpenYard yard, SeasonBoards boards, MadeOnce made) {
        this.made = made;
        this.views = new EachOfYard<>(yard, 1);
        this.yard = yard;
        this.boards = boards;
    }

    /**
     * What the page shows.
     *
     * @param people whose calendars there are
     * @param boats which boats have one
     */
    public record View(List<Calendar> people, List<Named> boats) {
        /** Copies the lists. */
        public View {
            people = List.copyOf(people);
            boats = List.copyOf(boats);
        }
    }

    /**
     * The calendar of somebody.
     *
     * @param name who it is
     * @param address where it is
     */
    public record Calendar(String name, String address) {
        static Calendar of(String name) {
            return new Calendar(
                    name,
                    SeasonPage.PATH + "/people/" + UriUtils.encodePathSegment(name, StandardCharsets.UTF_8) + ".ics");
        }
    }

    /**
     * A boat.
     *
     * @param id the boat
     * @param name her name
     */
    public record Named(String id, String name) {}

    @GetMapping(SeasonPage.PATH + "/papers")
    ModelAndView show(Page page) {
        ShownSeason shown = shown();
        return page.show(
                Section.SEASON, "season/papers", views.of(shown.version() + shown.standing(), () -> view(shown)));
    }

    private View view(ShownSeason shown) {
        Set<String> people = new HashSet<>();
        Set<String> boats = new HashSet<>();
        shown.dated().visits().forEach(v -> {
            boats.add(v.boatId());
            v.operations().forEach(o -> people.addAll(o.people()));
        });
        Map<String, Boat> known = yard.files().boats();
        List<Named> named = boats.stream()
                .map(id -> new Named(
                        id, Optional.ofNullable(known.get(id)).map(Boat::name).orElse(id)))
                .sorted(Comparator.comparing(Named::name).thenComparing(Named::id))
                .toList();
        return new View(people.stream().sorted().map(Calendar::of).toList(), named);
    }

    @GetMapping(value = SeasonPage.PATH + "/board.pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    ResponseEntity<byte[]> board(Page page) {
        ShownSeason shown = shown();
        if (shown.standing() != ShownSeason.Standing.HOLDS) {
            throw shown.wrong().isEmpty()
                    ? BadInput.of("season", page.say("season.standing.judging"), "", page.say("season.again"))
                    : new BadInput(shown.wrong());
        }
        SeasonPaper board = new SeasonPaper(yard.files().yard(), shown.dated(), yard.today(), shown.remarks());
        byte[] pdf = made.of(
                what("board", shown) + " " + page.locale(),
                () -> board.paper(page.figures()).pdf());
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + board.fileName() + ".pdf\"")
                .body(pdf);
    }

    /** What is made of a season rests on the plan and its ground, on how far it was judged, and on nothing else in the yard. */
    private static String what(String kind, ShownSeason shown) {
        return kind + " " + shown.ground() + " " + shown.standing();
    }

    @GetMapping(value = SeasonPage.PATH + "/season.csv", produces = "text/csv;charset=UTF-8")
    ResponseEntity<byte[]> sheet() {
        ShownSeason shown = shown();
        byte[] text = made.of(
                what("sheet", shown),
                () -> SeasonCsv.of(SeasonLine.all(shown.dated())).getBytes(StandardCharsets.UTF_8));
        return attached("season-" + yard.today() + ".csv", text);
    }

    @GetMapping(value = SeasonPage.PATH + "/people/{name}.ics", produces = "text/calendar;charset=UTF-8")
    ResponseEntity<byte[]> person(@PathVariable("name") String name) {
        ShownSeason shown = shown();
        byte[] text = made.of(
                what("calendar of " + name, shown), () -> calendar(calendars().person(shown.dated(), name)));
        return attached(name + ".ics", text);
    }

    @GetMapping(value = SeasonPage.PATH + "/boats/{boat}.ics", produces = "text/calendar;charset=UTF-8")
    ResponseEntity<byte[]> boat(@PathVariable("boat") String id) {
        return attached(id + ".ics", calendar(calendars().boat(shown().dated(), id)));
    }

    private SeasonCalendars calendars() {
        return new SeasonCalendars(yard.files().yard().name(), yard.today().atStartOfDay());
    }

    private static byte[] calendar(Optional<String> text) {
        return text.orElseThrow(() -> new Missing("season.calendar.one")).getBytes(StandardCharsets.UTF_8);
    }

    private static ResponseEntity<byte[]> attached(String name, byte[] text) {
        return ResponseEntity.ok()
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(name, StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(text);
    }

    private ShownSeason shown() {
        return boards.published().orElseThrow(() -> new Missing("season.none"));
    }
}
