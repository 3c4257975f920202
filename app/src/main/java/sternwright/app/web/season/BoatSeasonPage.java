package sternwright.app.web.season;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.UriUtils;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.ShownSeason;
import sternwright.app.paper.Words;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.State;
import sternwright.boat.Boat;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.Step;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;

/** The season of one boat: her visits day by day, why on these days, and each on another day if need be. */
@Controller
@ForAll
public class BoatSeasonPage {
    private final OpenYard yard;
    private final SeasonBoards boards;

    BoatSeasonPage(OpenYard yard, SeasonBoards boards) {
        this.yard = yard;
        this.boards = boards;
    }

    /**
     * What the page shows.
     *
     * @param id the boat
     * @param boat her name
     * @param board her row of the board; empty where she has no visit
     * @param visits her visits
     */
    public record View(String id, String boat, List<BoardView.Panel> board, List<Visit> visits) {
        /** Copies the lists. */
        public View {
            board = List.copyOf(board);
            visits = List.copyOf(visits);
        }
    }

    /**
     * A visit.
     *
     * @param title what it is, where and when
     * @param operations in order of time
     */
    public record Visit(String title, List<Line> operations) {
        /** Copies the list. */
        public Visit {
            operations = List.copyOf(operations);
        }
    }

    /**
     * An operation.
     *
     * @param what what it is
     * @param works what is done in it
     * @param when day and hour it begins
     * @param until day it ends
     * @param by who does it, or which hoist
     * @param state how it stands to its date
     * @param why why on this day
     * @param move where it can be set on another day, empty if it cannot
     */
    public record Line(
            String what,
            List<String> works,
            String when,
            String until,
            String by,
            State state,
            String why,
            String move) {
        /** Copies the list. */
        public Line {
            works = List.copyOf(works);
        }
    }

    @GetMapping(SeasonPage.PATH + "/boats/{boat}")
    ModelAndView show(Page page, @PathVariable("boat") String id) {
        Boat boat = Optional.ofNullable(yard.files().boats().get(id)).orElseThrow(() -> new Missing("boat.one"));
        DatedSeason season = boards.published().map(ShownSeason::dated).orElse(null);
        if (season == null) {
            return page.show(Section.SEASON, "season/boat", new View(id, boat.name(), List.of(), List.of()));
        }
        LocalDate today = yard.today();
        SumsText sums = new SumsText(page, yard.files().yard().currency());
        List<DatedVisit> visits =
                season.visits().stream().filter(v -> v.boatId().equals(id)).toList();
        DatedSeason hers = new DatedSeason(
                season.from(),
                season.to(),
                season.weeks(),
                visits,
                season.cost(),
                season.bound(),
                season.gap(),
                season.how(),
                List.of(),
                List.of(),
                List.of());
        BoardView.Board board = new BoardText(page, hers, today, sums)
                .board(BoardAsked.ofBoat(), false, BoardText.movable(page, today));
        List<Visit> shown = new ArrayList<>();
        for (SameDay visit : SameDay.of(visits)) {
            shown.add(visit(page, visit.asOne(page), today, sums));
        }
        return page.show(Section.SEASON, "season/boat", new View(id, boat.name(), board.boats(), shown));
    }

    private static Visit visit(Page page, DatedVisit visit, LocalDate today, SumsText sums) {
        String dates =
                page.figures().dates(visit.from().toLocalDate(), visit.until().toLocalDate());
        String name = Words.sentence(page.figures().dated(visit.visit()));
        String title = visit.placeClass().isEmpty()
                ? page.say("season.visit", name, dates)
                : page.say("season.visit.ashore", name, dates, visit.placeClass());
        var movable = BoardText.movable(page, today);
        return new Visit(
                title,
                visit.operations().stream()
                        .map(o -> line(
                                page, o, sums, movable.test(o) && o.meaning().step() != Step.STANDS))
                        .toList());
    }

    private static Line line(Page page, DatedOperation o, SumsText sums, boolean movable) {
        String hour = DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT)
                .withLocale(page.locale())
                .format(o.from());
        String weekday = DateTimeFormatter.ofPattern("EEE", page.locale()).format(o.from());
        return new Line(
                Words.sentence(o.meaning().operation()),
                o.meaning().works().stream()
                        .map(w -> page.say("season.work", w.inForce().rule().work(), w.partName()))
                        .toList(),
                page.say(
                        "season.when",
                        weekday,
                        page.figures().shortDate(o.from().toLocalDate()),
                        hour),
                page.figures().shortDate(o.until().toLocalDate()),
                o.hoist().isEmpty() ? String.join(", ", o.people()) : o.hoist(),
                sums.state(o.state(), o.daysLate()),
                page.figures().dated(o.reason()),
                movable ? move(o.meaning().name()) : "");
    }

    private static String move(OperationName name) {
        return MovePage.PATH + "?boat=" + encoded(name.boatId()) + "&visit=" + encoded(name.visit()) + "&operation="
                + encoded(name.operation());
    }

    private static String encoded(String text) {
        return UriUtils.encode(text, StandardCharsets.UTF_8);
    }
}
