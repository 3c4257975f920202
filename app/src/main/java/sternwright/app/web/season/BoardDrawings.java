package sternwright.app.web.season;

import java.util.Locale;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;
import sternwright.app.desk.derived.LastFew;

/** Boards that were drawn: the same plan is looked at again and again. */
@Component
class BoardDrawings {
    private static final int KEPT = 24;

    private final LastFew<Key, BoardView.Board> known = new LastFew<>(KEPT);

    /**
     * Of what a drawing is.
     *
     * @param plan changes with the plan and with how far it is judged
     * @param asked to what it is narrowed
     * @param locale the reader's
     * @param office whether the reader may set marks on another day
     */
    record Key(String plan, BoardAsked asked, Locale locale, boolean office) {}

    BoardView.Board of(Key key, Supplier<BoardView.Board> drawing) {
        return known.of(key, drawing);
    }
}
