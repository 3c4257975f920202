package sternwright.app.web.season;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.ShownSeason;
import sternwright.app.desk.season.board.TriedMoves;
import sternwright.app.paper.Words;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** What binds the season, and what one more slot, place or technician would buy. */
@Controller
@ForOffice
public class MorePage {
    private final OpenYard yard;
    private final SeasonBoards boards;
    private final TriedMoves tried;

    MorePage(OpenYard yard, SeasonBoards boards, TriedMoves tried) {
        this.yard = yard;
        this.boards = boards;
        this.tried = tried;
    }

    /**
     * What the page shows.
     *
     * @param binds what is full for how long
     * @param asked whether the worth of one more was asked for
     * @param running whether it is being worked out
     * @param worth what one more of something saves
     */
    public record View(List<String> binds, boolean asked, boolean running, List<Worth> worth) {
        /** Copies the lists. */
        public View {
            binds = List.copyOf(binds);
            worth = List.copyOf(worth);
        }
    }

    /**
     * One more of something.
     *
     * @param what one more of what
     * @param saves how much the plan with it costs less
     * @param any whether that is anything
     */
    public record Worth(String what, String saves, boolean any) {}

    @GetMapping(SeasonPage.PATH + "/more")
    ModelAndView show(Page page, @RequestParam(name = "ask", defaultValue = "false") String ask) {
        Optional<ShownSeason> shown = boards.published();
        if (shown.isEmpty()) {
            return page.go(SeasonPage.PATH, "");
        }
        SumsText sums = new SumsText(page, yard.files().yard().currency());
        Optional<List<PlannedSeason.OneMoreOf>> known =
                ask.equals("true") ? tried.oneMore(shown.get()) : tried.oneMoreKnown(shown.get());
        boolean asked = ask.equals("true") || known.isPresent();
        List<Worth> worth = known.orElse(List.of()).stream()
                .map(w -> new Worth(
                        Words.sentence(w.what()),
                        w.saves() >= 0.5 ? sums.money(w.saves()) : page.say("season.more.nothing"),
                        w.saves() >= 0.5))
                .toList();
        List<String> binds = sums.of(shown.get().dated(), List.of(), null).binds();
        return page.show(Section.SEASON, "season/more", new View(binds, asked, asked && known.isEmpty(), worth));
    }
}
