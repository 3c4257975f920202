package sternwright.app.web.boat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.due.DueMove;
import sternwright.app.files.YardFiles;
import sternwright.app.web.page.Page;
import sternwright.due.Due;

/**
 * A line of a due list that moves, in the words of its reader.
 *
 * @param boat the boat
 * @param work the work
 * @param part on which part
 * @param was how it stands
 * @param is how it would stand
 */
public record Moved(String boat, String work, String part, String was, String is) {
    /**
     * Puts moves into words.
     *
     * @param page the page
     * @param files the yard
     * @param moves what moves
     * @return a line each
     */
    public static List<Moved> of(Page page, YardFiles files, List<DueMove> moves) {
        return moves.stream().map(m -> of(page, files, m)).toList();
    }

    private static Moved of(Page page, YardFiles files, DueMove move) {
        Due due = move.due();
        OneBoat one = OneBoat.of(files, due.boatId());
        return new Moved(
                one.boat().name(),
                due.rule().work(),
                one.name(page, due.part()),
                stands(page, move.before()),
                stands(page, move.after()));
    }

    private static String stands(Page page, @Nullable Due due) {
        return due == null
                ? page.say("boat.moved.none")
                : page.say(
                        "boat.moved.stands",
                        page.say("boat.state." + OneBoat.word(due.state())),
                        page.figures().shortDate(due.dueOn()));
    }
}
