package sternwright.app.desk.find;

import java.util.Set;
import sternwright.boat.Arrangement;
import sternwright.due.DueState;

/**
 * Which boats are asked for.
 *
 * @param words each of them must stand in name, id, owner, berth, arrangement or engine; empty for every boat
 * @param arrangements one of these on board; empty for any
 * @param berths ids of berths; empty for any
 * @param rules ids of rules of which one must be in one of the states; empty for any rule
 * @param states states of what is due; empty for any. Without rules: the boat's own state is one of them
 */
public record BoatQuery(
        String words, Set<Arrangement> arrangements, Set<String> berths, Set<String> rules, Set<DueState> states) {
    /** Copies the sets. */
    public BoatQuery {
        arrangements = Set.copyOf(arrangements);
        berths = Set.copyOf(berths);
        rules = Set.copyOf(rules);
        states = Set.copyOf(states);
    }

    /**
     * Boats by words alone.
     *
     * @param words as typed
     * @return the query
     */
    public static BoatQuery of(String words) {
        return new BoatQuery(words, Set.of(), Set.of(), Set.of(), Set.of());
    }
}
