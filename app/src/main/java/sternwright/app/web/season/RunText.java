package sternwright.app.web.season;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.web.util.UriUtils;
import sternwright.app.desk.season.EventWords;
import sternwright.app.desk.season.MoveVisit;
import sternwright.app.desk.season.run.RunAsk;
import sternwright.app.desk.season.run.RunCourse;
import sternwright.app.desk.season.run.SeasonJobs;
import sternwright.app.paper.Words;
import sternwright.app.paper.board.CourseDrawing;
import sternwright.app.store.job.SeasonRun;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.State;
import sternwright.season.dated.event.SeasonEvent;

/** Words a run of the season for a reader. */
final class RunText {
    private static final int POINTS = 12;

    private final Page page;
    private final SumsText sums;
    private final ZoneId zone;

    RunText(Page page, Currency currency, ZoneId zone) {
        this.page = page;
        this.sums = new SumsText(page, currency);
        this.zone = zone;
    }

    SumsText sums() {
        return sums;
    }

    /** A run in one line. */
    String line(SeasonRun run) {
        Double cost = run.cost();
        return cost == null
                ? page.say("season.run.line", run.by(), at(run.at()), state(run).word())
                : page.say(
                        "season.run.line.cost",
                        run.by(),
                        at(run.at()),
                        state(run).word(),
                        sums.money(cost));
    }

    private String at(Instant at) {
        LocalDateTime time = LocalDateTime.ofInstant(at, zone);
        return page.say(
                "season.at",
                page.figures().shortDate(time.toLocalDate()),
                DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT)
                        .withLocale(page.locale())
                        .format(time));
    }

    State state(SeasonRun run) {
        String word = page.say("season.run." + run.state().name().toLowerCase(java.util.Locale.ROOT));
        return switch (run.state()) {
            case WAITING -> new State(word, State.Mark.RING, State.Tone.PLAIN);
            case RUNNING ->
                run.stopAsked()
                        ? new State(page.say("season.run.stopping"), State.Mark.DISC, State.Tone.WATCH)
                        : new State(word, State.Mark.DISC, State.Tone.WATCH);
            case DONE, STOPPED -> new State(word, State.Mark.TICK, State.Tone.WATCH);
            case REFUSED, FAILED -> new State(word, State.Mark.TRIANGLE, State.Tone.ACT);
        };
    }

    RunView view(SeasonRun run, List<String> events, Optional<RunView.Plan> plan) {
        RunAsk ask = SeasonJobs.asked(run);
        RunCourse course = RunCourse.of(run.course());
        return new RunView(
                run.id(),
                page.say(
                        ask.fresh() ? "season.run.lead.fresh" : "season.run.lead",
                        run.by(),
                        at(run.at()),
                        span(ask.seconds())),
                events,
                again(ask.events()),
                state(run),
                !run.ended(),
                run.ended()
                        ? ""
                        : page.say("season.run.live", Words.full(run.says().replace("...", ""))),
                (int) Math.round(100 * Math.min(1, run.spentS() / Math.max(0.001, ask.seconds()))),
                figures(run, ask),
                drawing(course, run.spentS(), ask.seconds()),
                points(course),
                run.state() == SeasonRun.State.REFUSED ? SeasonJobs.refused(run) : List.of(),
                run.state() == SeasonRun.State.REFUSED ? List.of() : SeasonJobs.refused(run),
                run.state() == SeasonRun.State.FAILED ? run.says() : "",
                run.ended() && run.plan() != null && plan.isEmpty(),
                plan);
    }

    private static String again(List<SeasonEvent> events) {
        return events.stream()
                .map(e -> "e=" + UriUtils.encode(EventWords.text(e), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&", HappenedPage.PATH + (events.isEmpty() ? "" : "?"), ""));
    }

    private List<RunView.Figure> figures(SeasonRun run, RunAsk ask) {
        Double cost = run.cost();
        Double bound = run.bound();
        List<RunView.Figure> figures = new ArrayList<>();
        figures.add(new RunView.Figure(
                page.say("season.run.spent"),
                page.say("season.run.spent.of", span(Math.min(run.spentS(), ask.seconds())), span(ask.seconds()))));
        if (cost != null && bound != null) {
            double gap = cost <= 0 ? 0 : Math.max(0, (cost - bound) / cost);
            figures.add(new RunView.Figure(page.say("season.run.cost"), sums.money(cost)));
            figures.add(new RunView.Figure(page.say("season.run.bound"), sums.money(bound)));
            figures.add(new RunView.Figure(
                    page.say("season.run.gap"),
                    gap == 0
                            ? page.say("season.run.gap.none")
                            : page.say(
                                    "season.run.gap.of",
                                    sums.money(cost - bound),
                                    page.figures().quantity(Math.round(1000 * gap) / 10.0, "%"))));
        }
        return figures;
    }

    /** A stretch of search. */
    private String span(double seconds) {
        return seconds < 100
                ? page.figures().quantity(Math.round(seconds), "s")
                : page.figures().time(seconds / 60);
    }

    private String drawing(RunCourse course, double spentS, double seconds) {
        List<CourseDrawing.Point> points = course.points().stream()
                .map(p -> new CourseDrawing.Point(p.spentS(), p.cost(), p.bound()))
                .toList();
        return new CourseDrawing(points, spentS, seconds, sums::money)
                .svg(
                        page.say("season.course"),
                        page.say("season.course.cost"),
                        page.say("season.course.bound"),
                        span(0),
                        span(seconds));
    }

    /** Some of the points, the last among them. */
    private List<RunView.Point> points(RunCourse course) {
        List<RunCourse.Point> all = course.points();
        int step = Math.max(1, (all.size() + POINTS - 1) / POINTS);
        List<RunView.Point> shown = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (i % step == 0 || i == all.size() - 1) {
                RunCourse.Point p = all.get(i);
                shown.add(new RunView.Point(span(p.spentS()), sums.money(p.cost()), sums.money(p.bound())));
            }
        }
        return shown;
    }

    RunView.Move move(MoveVisit.Move m) {
        return new RunView.Move(
                m.name().boatId(),
                m.boat(),
                page.say(
                        "season.what",
                        page.figures().dated(m.name().visit()),
                        m.name().operation()),
                page.figures().shortDate(m.was()),
                page.figures().shortDate(m.is()),
                m.promised(),
                page.figures().dated(m.reason()));
    }
}
