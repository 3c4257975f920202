package sternwright.app.web.season;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.derived.EachOfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.ShownSeason;
import sternwright.app.desk.season.run.SeasonJobs;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** The board of the plan the yard works by. */
@Controller
@ForAll
public class SeasonPage {
    static final String PATH = "/season";
    private static final int RUNS = 3;

    /** Readers of other regions see other words of it. */
    private static final int HEADS = 4;

    private final OpenYard yard;
    private final SeasonBoards boards;
    private final BoardDrawings drawings;
    private final SeasonJobs jobs;
    private final Clock clock;
    private final EachOfYard<String, Head> heads;

    SeasonPage(OpenYard yard, SeasonBoards boards, BoardDrawings drawings, SeasonJobs jobs, Clock clock) {
        this.yard = yard;
        this.boards = boards;
        this.drawings = drawings;
        this.jobs = jobs;
        this.clock = clock;
        this.heads = new EachOfYard<>(yard, HEADS);
    }

    @GetMapping(PATH)
    ModelAndView show(Page page, @RequestParam Map<String, String> sent) {
        Optional<ShownSeason> shown = boards.published();
        return shown.isPresent()
                ? page.show(Section.SEASON, "season/season", view(page, shown.get(), BoardAsked.of(sent)))
                : page.show(Section.SEASON, "season/none", runs(page));
    }

    private BoardView view(Page page, ShownSeason shown, BoardAsked asked) {
        LocalDate today = yard.today();
        Currency currency = yard.files().yard().currency();
        SumsText sums = new SumsText(page, currency);
        Head head = heads.of(
                shown.ground() + shown.standing() + page.locale(),
                () -> new Head(lead(page, shown), sums.of(shown.dated(), shown.remarks(), null)));
        BoardText text = new BoardText(page, shown.dated(), today, sums);
        BoardDrawings.Key key = new BoardDrawings.Key(
                shown.ground() + shown.standing(), asked, page.locale(), page.may(Role.MANAGER, Role.OFFICE));
        return new BoardView(
                true,
                head.lead,
                page.say("season.standing." + shown.standing().name().toLowerCase(java.util.Locale.ROOT)),
                shown.standing() == ShownSeason.Standing.JUDGING,
                shown.wrong(),
                runs(page),
                text.stretches(asked, PATH),
                drawings.of(key, () -> text.board(asked, true, BoardText.movable(page, today))),
                head.sums);
    }

    private record Head(String lead, BoardView.Sums sums) {}

    private String lead(Page page, ShownSeason shown) {
        String day = page.figures().date(LocalDate.ofInstant(shown.at(), clock.getZone()));
        long boats =
                shown.dated().visits().stream().map(v -> v.boatId()).distinct().count();
        String dates = page.figures().dates(shown.dated().from(), shown.dated().to());
        return shown.by().isEmpty()
                ? page.say("season.lead.nobody", day, boats, dates)
                : page.say("season.lead", shown.by(), day, boats, dates);
    }

    /** Runs under way, and the newest that has a plan nobody has kept yet. */
    private List<BoardView.Run> runs(Page page) {
        if (!page.may(Role.MANAGER, Role.OFFICE)) {
            return List.of();
        }
        RunText text = new RunText(page, yard.files().yard().currency(), clock.getZone());
        return jobs.newest(RUNS).stream()
                .filter(r -> !r.ended())
                .map(r -> new BoardView.Run(r.id(), text.line(r)))
                .toList();
    }
}
