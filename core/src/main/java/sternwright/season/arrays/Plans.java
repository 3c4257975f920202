package sternwright.season.arrays;

import java.util.Arrays;
import sternwright.season.Cost;
import sternwright.season.SeasonPlan;

/** From starts to a plan with its cost split. */
public final class Plans {
    private Plans() {}

    /** The plan with these starts, all of them placed; {@code how} says in one phrase how it was made. */
    public static SeasonPlan of(SeasonArrays a, int[] starts, String how) {
        Timetable t = new Timetable(a, 0);
        t.set(starts);
        return new SeasonPlan(Arrays.stream(starts).boxed().toList(), cost(t), how);
    }

    /** The cost of a timetable that holds every operation, split by what it is paid for. */
    public static Cost cost(Timetable t) {
        SeasonArrays a = t.a;
        long frost = 0;
        long promises = 0;
        long late = 0;
        long early = 0;
        for (int i = 0; i < a.n; i++) {
            int due = a.dueCost(i, t.start[i]);
            promises += a.promiseCost(i, t.start[i]);
            if (t.start[i] + a.length[i] <= a.due[i]) {
                early += due;
            } else if (a.frost(i)) {
                frost += due;
            } else {
                late += due;
            }
        }
        long overtime = (long) t.overtimePrice * Arrays.stream(t.extra).sum();
        long uneven = 0;
        for (int peak : t.peak) {
            uneven += (long) t.unevenPrice * Math.max(0, peak - t.even);
        }
        return new Cost(frost, promises, late, early, overtime, uneven);
    }
}
