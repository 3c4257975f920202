package sternwright.app.desk.season.board;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.function.LongSupplier;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.MoveVisit;
import sternwright.app.desk.season.Onlooker;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.SeasonAsk;

/**
 * What becomes of the published season when something is asked of it that takes seconds: a visit set on another day, one more of
 * everything. Each question is worked out once, one after the other, behind the asker; the last few answers are kept.
 */
public final class TriedMoves implements AutoCloseable {
    /** Seconds of search for a visit on another day: half with it, half without. */
    private static final double SECONDS = 4;

    private static final double SECONDS_EACH = 1;
    private static final int WAITING = 30;

    private final OpenYard yard;
    private final SeasonBoards boards;
    private final LongSupplier nanoClock;
    private final ThreadPoolExecutor worker;
    private final Answers<MoveAsked, MoveVisit.Moved> moves;
    private final Answers<String, List<PlannedSeason.OneMoreOf>> more;

    /**
     * Opens it; nothing is worked out yet.
     *
     * @param yard the yard
     * @param boards the published season
     * @param nanoClock a clock of nanoseconds
     */
    public TriedMoves(OpenYard yard, SeasonBoards boards, LongSupplier nanoClock) {
        this.yard = yard;
        this.boards = boards;
        this.nanoClock = nanoClock;
        worker = Answers.behind("trying-moves", WAITING);
        moves = new Answers<>(worker);
        more = new Answers<>(worker);
    }

    private record MoveAsked(String ground, MoveTo to) {}

    /**
     * Asks what moves when an operation is set on a day.
     *
     * @param shown the plan
     * @param to the operation and the day
     * @return the answer; empty while it is being worked out
     * @throws sternwright.app.files.problem.BadInput if the plan has no such operation, or it has begun
     */
    public Optional<MoveVisit.Moved> move(ShownSeason shown, MoveTo to) {
        SeasonAsk ask = new SeasonAsk(
                yard.shelf(""), yard.today(), yard.today(), null, false, List.of(), SECONDS, 1, nanoClock);
        return moves.ask(
                new MoveAsked(shown.ground(), to),
                () -> MoveVisit.of(
                        ask, to.name(), to.day(), Onlooker.NOBODY, shown.whole().orElse(null)));
    }

    /**
     * Asks what one more of everything would save.
     *
     * @param shown the plan
     * @return the answer, the most first; empty while it is being worked out
     * @throws sternwright.app.files.problem.BadInput if the plan does not hold any more
     */
    public Optional<List<PlannedSeason.OneMoreOf>> oneMore(ShownSeason shown) {
        return more.ask(shown.ground(), () -> boards.whole(shown).oneMore(SECONDS_EACH, nanoClock));
    }

    /**
     * What one more of everything would save, if somebody has asked already.
     *
     * @param shown the plan
     * @return the answer; empty if nobody has asked or it is being worked out
     */
    public Optional<List<PlannedSeason.OneMoreOf>> oneMoreKnown(ShownSeason shown) {
        return more.known(shown.ground());
    }

    /** Ends what is being worked out. */
    @Override
    public void close() {
        worker.shutdownNow();
    }
}
