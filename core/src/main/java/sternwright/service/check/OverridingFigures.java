package sternwright.service.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.service.Overriding;

/** Whether the figures of one overriding can be. */
record OverridingFigures(Spot at, Overriding over, List<ProgrammeFault> faults) {

    void check() {
        atLeast("months", over.months(), 1);
        atLeast("life-months", over.lifeMonths(), 1);
        atLeast("nth", over.nth(), 2);
        atLeast("minutes", over.minutes(), 1);
        if (over.hours() != null && !(over.hours() > 0)) {
            fault("hours", over.hours(), "must be above 0");
        }
    }

    private void atLeast(String field, @Nullable Number value, int least) {
        if (value != null && !(value.doubleValue() >= least)) {
            fault(field, value, "must be at least " + least);
        }
    }

    private void fault(String field, Number written, String expected) {
        faults.add(new ProgrammeFault(at.at(field), "" + written, expected, null));
    }
}
