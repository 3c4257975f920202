package sternwright.season.arrays;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import sternwright.season.Axis;
import sternwright.season.Hoist;
import sternwright.season.LiftClass;
import sternwright.season.Technician;
import sternwright.season.Yard;

/** The Hall limits of a yard's people, hoists, places and pools. */
final class YardLimits {
    private YardLimits() {}

    static Limits people(Yard yard) {
        List<Technician> crew = yard.technicians();
        List<BitSet> able = new ArrayList<>();
        for (int k = 0; k < yard.skills().size(); k++) {
            BitSet set = new BitSet();
            for (int t = 0; t < crew.size(); t++) {
                set.set(t, crew.get(t).skills().contains(k));
            }
            able.add(set);
        }
        List<BitSet> away = crew.stream().map(t -> days(t.awayDays())).toList();
        Axis axis = yard.axis();
        return Limits.of(
                able, crew.size(), axis.quarters(), (t, q) -> away.get(t).get(axis.dayOf(q)) ? 0 : 1);
    }

    static Limits hoists(Yard yard) {
        List<Hoist> hoists = yard.hoists();
        List<BitSet> able = new ArrayList<>();
        for (LiftClass c : yard.liftClasses()) {
            able.add(days(c.hoists()));
        }
        List<BitSet> down = hoists.stream().map(h -> days(h.downDays())).toList();
        Axis axis = yard.axis();
        return Limits.of(
                able,
                hoists.size(),
                axis.quarters(),
                (h, q) -> down.get(h).get(axis.dayOf(q))
                        ? 0
                        : hoists.get(h).slotsByQuarter().get(q % axis.quartersPerDay()));
    }

    static Limits places(Yard yard) {
        int classes = yard.placeClasses().size();
        List<BitSet> able = new ArrayList<>();
        for (int c = 0; c < classes; c++) {
            BitSet longer = new BitSet();
            longer.set(c, classes);
            able.add(longer);
        }
        return Limits.of(
                able,
                classes,
                yard.axis().quarters(),
                (c, q) -> yard.placeClasses().get(c).places());
    }

    static Limits pools(Yard yard) {
        return Limits.singles(
                yard.pools().size(),
                yard.axis().quarters(),
                p -> yard.pools().get(p).capacity());
    }

    private static BitSet days(List<Integer> days) {
        BitSet set = new BitSet();
        days.stream().filter(d -> d >= 0).forEach(set::set);
        return set;
    }
}
