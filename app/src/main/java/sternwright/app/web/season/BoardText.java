package sternwright.app.web.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import sternwright.app.account.Role;
import sternwright.app.paper.Words;
import sternwright.app.paper.board.Frame;
import sternwright.app.paper.board.SeasonBoard;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;
import sternwright.season.dated.answer.Load;

/** Draws a season's board for a reader and words the table behind it. */
final class BoardText {
    /** Boats shown at once: with more of them a browser takes long, and so does a reader. */
    private static final int BOATS = 50;

    private static final int WEEKS = 6;

    private final Page page;
    private final DatedSeason season;
    private final LocalDate today;
    private final SumsText sums;

    BoardText(Page page, DatedSeason season, LocalDate today, SumsText sums) {
        this.page = page;
        this.season = season;
        this.today = today;
        this.sums = sums;
    }

    /** What the reader may set on another day: what has not begun, by the office. */
    static Predicate<DatedOperation> movable(Page page, LocalDate today) {
        return page.may(Role.MANAGER, Role.OFFICE)
                ? o -> !o.from().toLocalDate().isBefore(today)
                : o -> false;
    }

    private record Held(boolean links, Predicate<DatedOperation> movable) implements Frame.Hold {
        @Override
        public String boat(String boatId) {
            return links ? "/season/boats/" + boatId : "";
        }

        @Override
        public boolean operation(DatedOperation operation) {
            return movable.test(operation);
        }
    }

    BoardView.Board board(BoardAsked asked, boolean links, Predicate<DatedOperation> movable) {
        List<List<DatedVisit>> boats = SeasonBoard.rows(asked.visits(season));
        Pager pager = new Pager(asked.number(), BOATS, boats.size());
        List<List<DatedVisit>> shown = pager.cut(boats);
        Frame frame = Frame.screen(asked.first(season), asked.last(season), BOATS, new Held(links, movable));
        FillText fill = new FillText(page, season, asked);
        String title = page.say("season.boats.title", pager.first(), pager.last(), pager.total());
        return new BoardView.Board(
                narrow(asked),
                fill.panels(today, frame),
                fill.rows(),
                fill.pager(),
                shown.isEmpty()
                        ? List.of()
                        : List.of(
                                panel(new SeasonBoard(season, today, page.locale(), frame).boats(shown, title), title)),
                shown.stream()
                        .flatMap(boat -> SameDay.of(boat).stream())
                        .map(s -> row(s.asOne(page)))
                        .toList(),
                pager,
                shown.stream()
                        .flatMap(List::stream)
                        .flatMap(v -> v.operations().stream())
                        .anyMatch(movable));
    }

    private static BoardView.Panel panel(SeasonBoard.Panel panel, String title) {
        return new BoardView.Panel(title, panel.names(), panel.chart());
    }

    private BoardView.Row row(DatedVisit v) {
        return new BoardView.Row(
                v.boatId(),
                v.boatName(),
                Words.sentence(page.figures().dated(v.visit())),
                page.figures().shortDate(v.from().toLocalDate()),
                page.figures().shortDate(v.until().toLocalDate()),
                v.placeClass().isEmpty() ? page.say("season.afloat") : v.placeClass(),
                String.join(
                        ", ",
                        v.operations().stream()
                                .flatMap(o -> o.people().stream())
                                .distinct()
                                .toList()),
                sums.state(v.state(), 0));
    }

    private BoardView.Narrow narrow(BoardAsked asked) {
        return new BoardView.Narrow(
                Field.plain("resource", page.say("season.resource"), asked.resource())
                        .of(resources())
                        .optional(),
                Field.plain("boat", page.say("season.boat"), asked.boat())
                        .as("search")
                        .optional(),
                Field.plain("from", page.say("season.from"), day(asked.from()))
                        .as("date")
                        .optional(),
                Field.plain("to", page.say("season.to"), day(asked.to()))
                        .as("date")
                        .optional(),
                Field.plain("open", page.say("season.open"), Boolean.toString(asked.open()))
                        .as("check")
                        .optional(),
                asked.narrowed());
    }

    private static String day(@org.jspecify.annotations.Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }

    private List<Field.Choice> resources() {
        List<Field.Choice> choices = new ArrayList<>();
        add(
                choices,
                Load.Kind.HOIST,
                season.visits().stream().flatMap(v -> v.operations().stream()).map(DatedOperation::hoist));
        add(choices, Load.Kind.PLACES, season.visits().stream().map(DatedVisit::placeClass));
        add(
                choices,
                Load.Kind.PERSON,
                season.visits().stream().flatMap(v -> v.operations().stream()).flatMap(o -> o.people().stream()));
        return choices;
    }

    private void add(List<Field.Choice> choices, Load.Kind kind, Stream<String> names) {
        names.filter(n -> !n.isEmpty())
                .distinct()
                .sorted()
                .map(n -> new Field.Choice(
                        kind.name() + ":" + n,
                        page.say("season.resource." + kind.name().toLowerCase(java.util.Locale.ROOT), n)))
                .forEach(choices::add);
    }

    /** The whole season, and the weeks that are next. */
    List<BoardView.Stretch> stretches(BoardAsked asked, String path) {
        LocalDate from = today.isBefore(season.from()) ? season.from() : today;
        LocalDate to = from.plusWeeks(WEEKS);
        boolean weeks = from.equals(asked.from()) && to.equals(asked.to());
        return List.of(
                new BoardView.Stretch(page.say("season.stretch.all"), path, !asked.narrowed()),
                new BoardView.Stretch(
                        page.say("season.stretch.weeks", WEEKS), path + "?from=" + from + "&to=" + to, weeks));
    }
}
