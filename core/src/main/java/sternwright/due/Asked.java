package sternwright.due;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.history.ServiceEntry;
import sternwright.service.Rule;

/**
 * One rule asked of one part.
 *
 * @param ready the rule made ready
 * @param part the part
 * @param ref its name
 * @param place its place in the boat's list of parts
 * @param engine its installation's place in the boat's list of installations
 * @param born when the part was fitted or last renewed, null if not known
 * @param last the last time it was done, null if never or not known
 */
record Asked(
        RulePlan.Ready ready,
        Part part,
        PartRef ref,
        int place,
        int engine,
        @Nullable LocalDate born,
        @Nullable ServiceEntry last) {
    Rule rule() {
        return ready.inForce().rule();
    }

    @Nullable
    LocalDate lastDate() {
        return last == null ? null : last.date();
    }

    /** Engine hours written with the last time it was done, null if none. */
    @Nullable
    Double hoursAtLast() {
        return last == null ? null : last.hours();
    }

    /** Where months and hours begin: the last time it was done, or the fitting of the part. */
    @Nullable
    LocalDate base() {
        LocalDate done = lastDate();
        LocalDate fitted = born;
        if (done == null) {
            return fitted;
        }
        return fitted != null && fitted.isAfter(done) ? fitted : done;
    }
}
