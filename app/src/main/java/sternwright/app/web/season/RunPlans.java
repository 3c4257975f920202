package sternwright.app.web.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Component;
import sternwright.app.desk.derived.LastFew;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.MoveVisit;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.PublishSeason;
import sternwright.app.desk.season.board.JudgedRuns;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.ShownSeason;
import sternwright.app.desk.season.run.RunAsk;
import sternwright.app.desk.season.run.SeasonJobs;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.shelf.Kept;
import sternwright.app.store.job.SeasonRun;
import sternwright.app.web.page.Page;
import sternwright.season.dated.answer.DatedSeason;

/** The plan a run ended with, to the letter, beside the one the yard works by. */
@Component
class RunPlans {
    private static final int MOST = 60;

    /** What a page shows of a plan is a few lines, the plan itself may be megabytes. */
    private static final int KEPT = 12;

    private final OpenYard yard;
    private final SeasonJobs jobs;
    private final SeasonBoards boards;
    private final JudgedRuns judged;
    private final LastFew<Key, RunView.Plan> known = new LastFew<>(KEPT);
    private final LastFew<String, Boolean> worksBy = new LastFew<>(KEPT);

    /**
     * What a plan is shown from.
     *
     * @param run the run and how long it had searched
     * @param yard the state of the yard, and the day
     * @param published the plan it is shown beside, and how far that was looked through
     * @param locale the reader's
     */
    private record Key(String run, String yard, String published, Locale locale) {}

    RunPlans(OpenYard yard, SeasonJobs jobs, SeasonBoards boards, JudgedRuns judged) {
        this.yard = yard;
        this.jobs = jobs;
        this.boards = boards;
        this.judged = judged;
    }

    /** The plan of a run that has one, which may be left out of {@code head}; empty while it is being looked through. */
    Optional<RunView.Plan> of(Page page, SeasonRun head, RunText text) {
        Optional<ShownSeason> shown = boards.published();
        Optional<Kept> now = now();
        Key key = new Key(
                head.id() + " " + head.spentS(),
                yard.state() + " " + yard.today(),
                now.map(Kept::version).orElse("") + shown.map(ShownSeason::standing),
                page.locale());
        RunView.Plan before = known.find(key);
        if (before != null) {
            return Optional.of(before);
        }
        if (judged.underWay(head)) {
            return Optional.empty();
        }
        Optional<RunView.Plan> made = jobs.one(head.id()).flatMap(run -> of(page, run, text, shown, now));
        made.ifPresent(plan -> known.keep(key, plan));
        return made;
    }

    private Optional<RunView.Plan> of(
            Page page, SeasonRun run, RunText text, Optional<ShownSeason> shown, Optional<Kept> now) {
        RunAsk ask = SeasonJobs.asked(run);
        boolean published = isPlan(now, run);
        Optional<PlannedSeason> planned = published && ask.events().isEmpty()
                ? shown.flatMap(ShownSeason::whole).or(() -> judged.of(run))
                : judged.of(run);
        if (planned.isEmpty()) {
            return Optional.empty();
        }
        PlannedSeason plan = planned.get();
        DatedSeason before = shown.filter(s -> s.standing() == ShownSeason.Standing.HOLDS)
                .map(ShownSeason::dated)
                .orElse(null);
        String asked = ask.published();
        boolean since = asked != null && !asked.equals(now.map(Kept::version).orElse(""));
        boolean same = published && (since || PublishSeason.recorded(yard.shelf(""), plan, ask.events()));
        boolean stale = !same && since;
        List<MoveVisit.Move> moves = same
                ? List.of()
                : MoveVisit.moves(plan).stream().filter(m -> !m.promised()).toList();
        String kept = same
                ? page.say("season.kept.same")
                : stale
                        ? page.say("season.kept.stale", now.map(Kept::by).orElse(""))
                        : page.say(shown.isEmpty() ? "season.kept.first" : "season.kept.open");
        return Optional.of(new RunView.Plan(
                text.sums().of(plan.dated(), plan.remarks(), same ? null : before),
                before == null || same ? "" : text.sums().money(before.cost().total()),
                moves.stream().limit(MOST).map(text::move).toList(),
                Math.max(0, moves.size() - MOST),
                kept,
                !same && !stale));
    }

    /** Whether the plan of a run is the one the yard works by. */
    boolean published(SeasonRun run) {
        // Both are megabytes, and the published one is among the texts that make the state.
        return worksBy.of(run.id() + " " + run.spentS() + " " + yard.state(), () -> isPlan(now(), run));
    }

    private static boolean isPlan(Optional<Kept> now, SeasonRun run) {
        return now.map(Kept::text).filter(t -> t.equals(run.plan())).isPresent();
    }

    private Optional<Kept> now() {
        try {
            return yard.shelf("").kept(SeasonFolder.PLAN);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the published plan", e);
        }
    }
}
