package sternwright.visit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.due.Due;
import sternwright.service.RuleInForce;
import sternwright.visit.planned.Named;
import sternwright.yard.SeasonDates.Window;

/**
 * What a work of the lean problem is on the boat.
 *
 * @param ref the part
 * @param part the part as registered
 * @param partName as people say it
 * @param phases the rule of each phase; more than one where every n-th time is another rule
 * @param due the due entry of the first doing, null for a work that only follows another
 * @param windows windows of its occasion, empty for none
 * @param after what it follows, in words; empty for none
 */
record BoatWork(
        PartRef ref,
        Part part,
        String partName,
        List<RuleInForce> phases,
        @Nullable Due due,
        List<Window> windows,
        String after) {
    BoatWork {
        phases = List.copyOf(phases);
        windows = List.copyOf(windows);
    }

    /** Where one works on it. */
    String servicePoint() {
        String point = phases.get(0).rule().servicePoint();
        return point == null ? ref.partId() : point;
    }

    /** Its name, as an order. */
    String name() {
        return phases.get(0).rule().work() + " (" + partName + ")";
    }

    /** The work with its part, as printed. */
    String words() {
        return Named.of(phases.get(0).rule().work(), partName);
    }
}
