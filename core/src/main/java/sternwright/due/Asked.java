package sternwright.due;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.history.ServiceEntry;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;

/**
 * One rule asked of one part.
 *
 * @param inForce the rule with the figures that hold
 * @param part the part
 * @param ref its name
 * @param counting ids of all rules that count as this one being done
 * @param born when the part was fitted or last renewed, null if not known
 * @param last the last time it was done, null if never or not known
 */
record Asked(
        RuleInForce inForce,
        Part part,
        PartRef ref,
        Set<String> counting,
        @Nullable LocalDate born,
        @Nullable ServiceEntry last) {
    Rule rule() {
        return inForce.rule();
    }

    @Nullable
    LocalDate lastDate() {
        return last == null ? null : last.date();
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
