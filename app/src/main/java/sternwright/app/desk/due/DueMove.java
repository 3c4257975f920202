package sternwright.app.desk.due;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.due.Due;

/**
 * A work whose day or state is another one after something was done or said.
 *
 * @param before how it was; null if it was not on the list
 * @param after how it is; null if it is no longer on the list
 */
public record DueMove(@Nullable Due before, @Nullable Due after) {
    /** Refuses a move of nothing. */
    public DueMove {
        if (before == null && after == null) {
            throw new IllegalArgumentException("nothing moved");
        }
    }

    /**
     * The work, as it is or was.
     *
     * @return the later of the two
     */
    public Due due() {
        return after != null ? after : java.util.Objects.requireNonNull(before);
    }

    /**
     * Compares two due lists.
     *
     * @param before the list before
     * @param after the list after
     * @return what moved, in the order of the list after; what is gone last
     */
    public static List<DueMove> between(List<Due> before, List<Due> after) {
        Map<String, Due> was = byWork(before);
        Map<String, Due> is = byWork(after);
        List<DueMove> moves = new ArrayList<>();
        is.forEach((key, due) -> {
            Due old = was.get(key);
            if (old == null || old.state() != due.state() || !old.dueOn().equals(due.dueOn())) {
                moves.add(new DueMove(old, due));
            }
        });
        was.forEach((key, due) -> {
            if (!is.containsKey(key)) {
                moves.add(new DueMove(due, null));
            }
        });
        return List.copyOf(moves);
    }

    private static Map<String, Due> byWork(List<Due> dues) {
        Map<String, Due> byWork = new LinkedHashMap<>();
        dues.forEach(
                d -> byWork.put(d.boatId() + " " + d.part() + " " + d.rule().id(), d));
        return byWork;
    }
}
