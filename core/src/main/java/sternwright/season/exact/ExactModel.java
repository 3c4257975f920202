package sternwright.season.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.util.Domain;
import java.util.Arrays;
import java.util.stream.IntStream;
import sternwright.season.Lag;
import sternwright.season.SeasonPlan;
import sternwright.season.arrays.Limits;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/** The variables and constraints of one season. */
final class ExactModel {
    private final SeasonArrays a;
    private final CpModel cp = new CpModel();
    private final IntVar[] start;
    private final IntervalVar[] interval;
    private final IntVar[] extra;
    private final IntVar[] peak;
    private final int mostExtra;
    private final int mostPeak;
    private boolean windowEmpty;

    ExactModel(SeasonArrays a) {
        this.a = a;
        start = IntStream.range(0, a.n)
                .mapToObj(i -> cp.newIntVarFromDomain(starts(i), "s" + i))
                .toArray(IntVar[]::new);
        interval = IntStream.range(0, a.n)
                .mapToObj(i -> cp.newFixedSizeIntervalVar(start[i], a.length[i], "i" + i))
                .toArray(IntervalVar[]::new);
        mostExtra = Arrays.stream(a.extraHands).max().orElse(0);
        mostPeak = a.problem.yard().technicians().size() + mostExtra;
        extra = IntStream.range(0, a.extraHands.length)
                .mapToObj(w -> cp.newIntVar(0, a.extraHands[w], "o" + w))
                .toArray(IntVar[]::new);
        peak = IntStream.range(0, a.extraHands.length)
                .mapToObj(w -> cp.newIntVar(0, mostPeak, "p" + w))
                .toArray(IntVar[]::new);
    }

    IntVar start(int i) {
        return start[i];
    }

    private Domain starts(int i) {
        long[] allowed = IntStream.rangeClosed(a.earliest[i], a.latest[i])
                .filter(q -> a.dayAllowed(i, q))
                .asLongStream()
                .toArray();
        if (allowed.length == 0) {
            windowEmpty = true;
            return new Domain(0);
        }
        return Domain.fromValues(allowed);
    }

    /** Whether some operation has no start at all, so that nothing needs to be solved. */
    boolean windowEmpty() {
        return windowEmpty;
    }

    CpModel constraints() {
        lags();
        for (int l = 0; l < a.people.count; l++) {
            people(l);
        }
        for (int l = 0; l < a.hoists.count; l++) {
            int limit = l;
            CumulativeConstraint c = limited(a.hoists, l, 0);
            IntStream.range(0, a.n)
                    .filter(i -> a.liftClass[i] >= 0 && counts(a.hoists, limit, a.liftClass[i]))
                    .forEach(i -> c.addDemand(interval[i], 1));
        }
        for (int l = 0; l < a.places.count; l++) {
            places(l);
        }
        for (int l = 0; l < a.pools.count; l++) {
            pool(l);
        }
        return cp;
    }

    private void lags() {
        for (Lag lag : a.problem.lags()) {
            LinearExpr distance = LinearExpr.newBuilder()
                    .add(start[lag.after()])
                    .addTerm(start[lag.before()], -1)
                    .build();
            long most = lag.maxQ() >= Lag.FREE ? a.quarters : lag.maxQ();
            cp.addLinearConstraint(distance, lag.minQ(), most);
        }
    }

    private static boolean counts(Limits limits, int limit, int kind) {
        return Arrays.stream(limits.ofKind[kind]).anyMatch(l -> l == limit);
    }

    /** A cumulative constraint of the limit's highest capacity, with fixed intervals where there is less. */
    private CumulativeConstraint limited(Limits limits, int l, int more) {
        int most = 0;
        for (int q = 0; q < a.quarters; q++) {
            most = Math.max(most, limits.capacity[q * limits.count + l]);
        }
        CumulativeConstraint c = cp.addCumulative(most + more);
        for (int q = 0; q < a.quarters; ) {
            int capacity = limits.capacity[q * limits.count + l];
            int end = q + 1;
            while (end < a.quarters && limits.capacity[end * limits.count + l] == capacity) {
                end++;
            }
            if (capacity < most) {
                c.addDemand(cp.newFixedInterval(q, end - q, "f"), most - capacity);
            }
            q = end;
        }
        return c;
    }

    private void people(int l) {
        CumulativeConstraint c = limited(a.people, l, mostExtra);
        IntStream.range(0, a.n)
                .filter(i -> a.skill[i] >= 0 && counts(a.people, l, a.skill[i]))
                .forEach(i -> c.addDemand(interval[i], a.hands[i]));
        weekly(c, extra, mostExtra);
    }

    private void weekly(CumulativeConstraint c, IntVar[] amount, int most) {
        for (int w = 0; w < amount.length; w++) {
            IntervalVar week = cp.newFixedInterval((long) w * a.quartersPerWeek, a.quartersPerWeek, "w");
            c.addDemand(
                    week,
                    LinearExpr.newBuilder().add(most).addTerm(amount[w], -1).build());
        }
    }

    private void places(int l) {
        CumulativeConstraint c = limited(a.places, l, 0);
        for (int s = 0; s < a.stayLift.length; s++) {
            if (counts(a.places, l, a.stayClass[s])) {
                IntVar size = cp.newIntVar(0, a.quarters, "z" + s);
                LinearExpr end = LinearExpr.newBuilder()
                        .add(start[a.stayLaunch[s]])
                        .add(a.length[a.stayLaunch[s]])
                        .build();
                c.addDemand(cp.newIntervalVar(start[a.stayLift[s]], size, end, "y" + s), 1);
            }
        }
    }

    private void pool(int l) {
        CumulativeConstraint c = limited(a.pools, l, 0);
        for (int i = 0; i < a.n; i++) {
            for (int x = 0; x < a.needs[i].length; x += 2) {
                if (a.needs[i][x] == l) {
                    c.addDemand(interval[i], a.needs[i][x + 1]);
                }
            }
        }
    }

    /** Adds the cost and hints every variable: with a part of them hinted a whole season finds no plan at all. */
    CpModel objective(SeasonPlan hint) {
        Timetable t = new Timetable(a, 0);
        t.set(hint.startQ().stream().mapToInt(Integer::intValue).toArray());
        LinearExprBuilder cost = LinearExpr.newBuilder();
        CumulativeConstraint all = cp.addCumulative(mostPeak);
        IntStream.range(0, a.n).filter(i -> a.skill[i] >= 0).forEach(i -> all.addDemand(interval[i], a.hands[i]));
        weekly(all, peak, mostPeak);
        int even = a.problem.yard().evenHands();
        for (int w = 0; w < extra.length; w++) {
            IntVar over = cp.newIntVar(0, mostPeak, "u" + w);
            cp.addGreaterOrEqual(
                    over, LinearExpr.newBuilder().add(peak[w]).add(-even).build());
            cost.addTerm(extra[w], a.problem.weights().overtimePerHandWeek());
            cost.addTerm(over, a.problem.weights().unevenPerHand());
            cp.addHint(extra[w], t.extra[w]);
            cp.addHint(peak[w], t.peak[w]);
            cp.addHint(over, Math.max(0, t.peak[w] - even));
        }
        for (int i = 0; i < a.n; i++) {
            cp.addHint(start[i], t.start[i]);
            late(i, t.start[i] + a.length[i] - a.due[i], cost);
        }
        cp.minimize(cost);
        return cp;
    }

    private void late(int i, int hinted, LinearExprBuilder cost) {
        int[] price = {a.latePerQ[i], a.earlyPerQ[i]};
        for (int side = 0; side < 2; side++) {
            if (price[side] > 0) {
                int sign = side == 0 ? 1 : -1;
                IntVar over = cp.newIntVar(0, a.quarters, "l");
                cp.addGreaterOrEqual(
                        over,
                        LinearExpr.newBuilder()
                                .addTerm(start[i], sign)
                                .add((long) sign * (a.length[i] - a.due[i]))
                                .build());
                cost.addTerm(over, price[side]);
                cp.addHint(over, Math.max(0, sign * hinted));
            }
        }
    }
}
