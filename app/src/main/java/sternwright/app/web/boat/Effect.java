package sternwright.app.web.boat;

import java.util.List;
import sternwright.app.desk.due.DueMove;
import sternwright.app.files.YardFiles;
import sternwright.app.web.page.Page;

/**
 * What a change would do to the due list of the yard.
 *
 * @param asked whether it was asked
 * @param lines how many lines move
 * @param boats on how many boats
 * @param first the first of them
 */
public record Effect(boolean asked, int lines, long boats, List<Moved> first) {
    /** Nobody has asked. */
    public static final Effect NONE = new Effect(false, 0, 0, List.of());

    private static final int SHOWN = 20;

    /** Copies the list. */
    public Effect {
        first = List.copyOf(first);
    }

    /**
     * Puts moves into words.
     *
     * @param page the page
     * @param files the yard
     * @param moves what moves
     * @return how much moves, and the first twenty lines
     */
    public static Effect of(Page page, YardFiles files, List<DueMove> moves) {
        long boats = moves.stream().map(m -> m.due().boatId()).distinct().count();
        return new Effect(
                true,
                moves.size(),
                boats,
                Moved.of(page, files, moves.stream().limit(SHOWN).toList()));
    }
}
