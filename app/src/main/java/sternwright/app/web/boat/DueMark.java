package sternwright.app.web.boat;

import java.util.Comparator;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.State;
import sternwright.due.Due;
import sternwright.due.DueState;

/** How works stand, in word, mark and tone, and in which order they press. */
public final class DueMark {
    /** What presses first: past its time before due before not known; safety items first; then by the day. */
    public static final Comparator<Due> PRESSING = Comparator.<Due>comparingInt(d -> rank(d.state()))
            .thenComparing(d -> !d.rule().safety())
            .thenComparing(Due::dueOn)
            .thenComparing(Due::part);

    private DueMark() {}

    /**
     * The mark.
     *
     * @param page the page
     * @param state how the work stands
     * @return word, mark and tone
     */
    public static State of(Page page, DueState state) {
        String word = page.say("boat.state." + OneBoat.word(state));
        return switch (state) {
            case OVERDUE -> new State(word, State.Mark.TRIANGLE, State.Tone.ACT);
            case DUE -> new State(word, State.Mark.DISC, State.Tone.WATCH);
            case UNKNOWN -> new State(word, State.Mark.GAP, State.Tone.WATCH);
            case EVERY_VISIT -> new State(word, State.Mark.DISC, State.Tone.PLAIN);
            case COMING -> new State(word, State.Mark.RING, State.Tone.SOFT);
            case REFUSED -> new State(word, State.Mark.BAR, State.Tone.WATCH);
        };
    }

    /**
     * Whether something is to be said about a work now.
     *
     * @param due the work
     * @return false if it is to come
     */
    public static boolean now(Due due) {
        return due.state() != DueState.COMING;
    }

    private static int rank(DueState state) {
        return switch (state) {
            case OVERDUE -> 0;
            case DUE -> 1;
            case UNKNOWN -> 2;
            case EVERY_VISIT -> 3;
            case REFUSED -> 4;
            case COMING -> 5;
        };
    }
}
