package sternwright.app.web.season;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.SeasonCsv;
import sternwright.app.desk.season.SeasonLine;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.ShownSeason;
import sternwright.app.files.problem.BadInput;
import sternwright.app.paper.Paper;
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

    SeasonPapersPage(OpenYard yard, SeasonBoards boards) {
        this.yard = yard;
        this.boards = boards;
    }

    /**
     * What the page shows.
     *
     * @param people whose calendars there are
     * @param boats which boats have one
     */
    public record View(List<String> people, List<Named> boats) {
        /** Copies the lists. */
        public View {
            people = List.copyOf(people);
            boats = List.copyOf(boats);
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
        TreeSet<String> people = new TreeSet<>();
        TreeSet<String> boats = new TreeSet<>();
        shown.dated().visits().forEach(v -> {
            boats.add(v.boatId());
            v.operations().forEach(o -> people.addAll(o.people()));
        });
        List<Named> named = boats.stream()
                .map(id -> new Named(
                        id,
                        Optional.ofNullable(yard.files().boats().get(id))
                                .map(Boat::name)
                                .orElse(id)))
                .sorted(java.util.Comparator.comparing(Named::name))
                .toList();
        return page.show(Section.SEASON, "season/papers", new View(List.copyOf(people), named));
    }

    @GetMapping(value = SeasonPage.PATH + "/board.pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    ResponseEntity<byte[]> board(Page page) {
        ShownSeason shown = shown();
        if (shown.standing() != ShownSeason.Standing.HOLDS) {
            throw shown.wrong().isEmpty()
                    ? BadInput.of("season", page.say("season.standing.judging"), "", page.say("season.again"))
                    : new BadInput(shown.wrong());
        }
        Paper paper = new SeasonPaper(yard.files().yard(), shown.dated(), yard.today(), shown.remarks())
                .paper(page.figures());
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + paper.fileName() + ".pdf\"")
                .body(paper.pdf());
    }

    @GetMapping(value = SeasonPage.PATH + "/season.csv", produces = "text/csv;charset=UTF-8")
    ResponseEntity<String> sheet() {
        String text = SeasonCsv.of(SeasonLine.all(shown().dated()));
        return attached("season-" + yard.today() + ".csv", text);
    }

    @GetMapping(value = SeasonPage.PATH + "/people/{name}.ics", produces = "text/calendar;charset=UTF-8")
    ResponseEntity<String> person(@PathVariable("name") String name) {
        return calendar(name, calendars().people(shown().dated()));
    }

    @GetMapping(value = SeasonPage.PATH + "/boats/{boat}.ics", produces = "text/calendar;charset=UTF-8")
    ResponseEntity<String> boat(@PathVariable("boat") String id) {
        return calendar(id, calendars().boats(shown().dated()));
    }

    private SeasonCalendars calendars() {
        return new SeasonCalendars(yard.files().yard().name(), yard.today().atStartOfDay());
    }

    private static ResponseEntity<String> calendar(String name, Map<String, String> calendars) {
        String text = calendars.get(name);
        if (text == null) {
            throw new Missing("season.calendar.one");
        }
        return attached(name + ".ics", text);
    }

    private static ResponseEntity<String> attached(String name, String text) {
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
