package sternwright.app.web.boat;

import sternwright.app.web.page.Page;
import sternwright.app.web.page.State;
import sternwright.finding.Severity;

/** How readings were judged, in word, mark and tone. */
public final class Verdict {
    private Verdict() {}

    /**
     * The mark.
     *
     * @param page the page
     * @param severity how much it matters
     * @return word, mark and tone
     */
    public static State of(Page page, Severity severity) {
        String word = page.say("history.verdict." + OneBoat.word(severity));
        return switch (severity) {
            case FINE -> new State(word, State.Mark.TICK, State.Tone.SOFT);
            case WATCH -> new State(word, State.Mark.RING, State.Tone.WATCH);
            case ACT -> new State(word, State.Mark.TRIANGLE, State.Tone.ACT);
            case UNSAFE -> new State(word, State.Mark.BAR, State.Tone.ACT);
        };
    }
}
