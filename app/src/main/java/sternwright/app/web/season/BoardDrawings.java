package sternwright.app.web.season;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** Boards that were drawn: the same plan is looked at again and again. */
@Component
class BoardDrawings {
    private static final int KEPT = 24;

    private final Map<Key, BoardView.Board> known = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, BoardView.Board> eldest) {
            return size() > KEPT;
        }
    };

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
        synchronized (known) {
            BoardView.Board board = known.get(key);
            if (board != null) {
                return board;
            }
        }
        BoardView.Board drawn = drawing.get();
        synchronized (known) {
            known.put(key, drawn);
        }
        return drawn;
    }
}
