package sternwright.app.store.job;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A run of the season as it stands in the store.
 *
 * @param id of the run
 * @param by who asked for it
 * @param at when
 * @param ask what was asked, as the desk writes it
 * @param state how far it is
 * @param stopAsked whether somebody wants it to stop and keep the best plan
 * @param node the program that works on it, or did last; empty before
 * @param tries how many programs have begun it
 * @param beatAt when its program last said something, null before it began
 * @param endedAt when it ended, null before
 * @param says what it does, or why it could not
 * @param spentS seconds of search spent so far, by all programs together
 * @param cost of the best plan so far in the yard's currency, null if there is none yet
 * @param bound no plan can cost less, null if not known yet
 * @param plan the best plan kept so far, columns of {@code season.csv}; null if there is none yet
 * @param course how cost and bound went, as the desk writes it; null before the first plan
 * @param refused why there is no plan, or why boats are not safe in it, as the desk writes it; null for neither
 */
public record SeasonRun(
        String id,
        String by,
        Instant at,
        String ask,
        State state,
        boolean stopAsked,
        String node,
        int tries,
        @Nullable Instant beatAt,
        @Nullable Instant endedAt,
        String says,
        double spentS,
        @Nullable Double cost,
        @Nullable Double bound,
        @Nullable String plan,
        @Nullable String course,
        @Nullable String refused) {
    /** How far a run is. */
    public enum State {
        /** Nobody works on it yet. */
        WAITING,
        /** A program works on it. */
        RUNNING,
        /** Its time is over; the best plan is kept. */
        DONE,
        /** Stopped by a person; the best plan so far is kept. */
        STOPPED,
        /** There is no plan, and {@code says} tells why. */
        REFUSED,
        /** A fault of the program ended it; {@code says} tells which, and the best plan until then is kept. */
        FAILED
    }

    /**
     * Whether nothing more will come.
     *
     * @return true if it is done, stopped or refused
     */
    public boolean ended() {
        return state != State.WAITING && state != State.RUNNING;
    }
}
