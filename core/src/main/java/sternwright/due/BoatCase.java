package sternwright.due;

import java.util.Map;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.history.BoatHistory;
import sternwright.yard.Use;

/**
 * All that the due list of one boat is made from.
 *
 * @param boat the boat
 * @param berth its berth
 * @param use its kind of use
 * @param history what is written down
 * @param wear dates of renewal by measured or predicted wear, by part; may be empty
 */
public record BoatCase(Boat boat, Berth berth, Use use, BoatHistory history, Map<PartRef, WearDate> wear) {
    /** Copies the map. */
    public BoatCase {
        wear = Map.copyOf(wear);
    }
}
