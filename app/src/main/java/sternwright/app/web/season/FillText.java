package sternwright.app.web.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sternwright.app.paper.board.Frame;
import sternwright.app.paper.board.SeasonBoard;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.Load;

/** Draws how full hoists, places and people are, some of them at once, and words the table behind it. */
final class FillText {
    /** Rows shown at once: a large yard has hundreds of people, and a reader looks at some. */
    private static final int ROWS = 24;

    private final Page page;
    private final DatedSeason season;
    private final Pager pager;
    private final List<Load> shown;

    FillText(Page page, DatedSeason season, BoardAsked asked) {
        this.page = page;
        this.season = season;
        List<Load> used = SeasonBoard.used(asked.loads(season));
        this.pager = new Pager(asked.fill(), ROWS, used.size());
        this.shown = pager.cut(used);
    }

    Pager pager() {
        return pager;
    }

    List<BoardView.Panel> panels(LocalDate today, Frame frame) {
        if (shown.isEmpty()) {
            return List.of();
        }
        String title = pager.count() == 1
                ? page.say("season.loads.title")
                : page.say("season.loads.some", pager.first(), pager.last(), pager.total());
        SeasonBoard.Panel drawn = new SeasonBoard(season, today, page.locale(), frame).loads(shown, title);
        return List.of(new BoardView.Panel(title, drawn.names(), drawn.chart()));
    }

    List<BoardView.Fill> rows() {
        return shown.stream().map(this::row).toList();
    }

    private BoardView.Fill row(Load load) {
        String full = season.binds().stream()
                .filter(b -> b.kind() == load.kind() && b.name().equals(load.name()))
                .map(b -> page.figures().dates(b.from(), b.to()))
                .collect(Collectors.joining(", "));
        return new BoardView.Fill(load.name(), most(load), full);
    }

    private String most(Load load) {
        int week = IntStream.range(0, load.weeks().size())
                .boxed()
                .max(Comparator.comparingDouble(w -> load.weeks().get(w).share()))
                .orElse(-1);
        if (week < 0 || load.weeks().get(week).used() == 0) {
            return page.say("season.fill.unused");
        }
        Load.Week most = load.weeks().get(week);
        return page.say(
                "season.fill." + load.kind().name().toLowerCase(Locale.ROOT),
                most.used(),
                most.there(),
                page.figures().shortDate(season.weeks().get(week)));
    }
}
