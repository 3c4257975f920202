package sternwright.season.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/**
 * Makes room for halves that found none: the halves they hang together with and a few that lie in their way are taken out, the
 * one without room goes in first and the others after it (ejection chains, F. Glover, Discrete Applied Mathematics 65, 1996, 223-253).
 */
final class MakingRoom {
    /** With more halves left out than this the season is short of something that no order of boats can give. */
    private static final int MOST_LEFT_OUT = 40;

    private static final int TRIES_WITHOUT_GAIN = 300;
    private static final int OTHERS_TRIED = 4;
    private static final int MOST_IN_THE_WAY = 5;

    private final SeasonArrays a;
    private final Timetable t;
    private final Insertion insertion;
    private final int[] fixed;
    private final SplittableRandom random;

    /** Only operations that {@code fixed} has as out are moved. */
    MakingRoom(Timetable t, Insertion insertion, int[] fixed, SplittableRandom random) {
        this.t = t;
        this.a = t.a;
        this.insertion = insertion;
        this.fixed = fixed;
        this.random = random;
    }

    /** Tries to place these halves and leaves the timetable with as few without room as it found. */
    void settle(List<Integer> failed) {
        List<Integer> out = List.copyOf(failed);
        int idle = out.size() > MOST_LEFT_OUT ? TRIES_WITHOUT_GAIN : 0;
        for (; idle < TRIES_WITHOUT_GAIN && !out.isEmpty(); idle++) {
            int[] before = t.start.clone();
            insertion.wander(idle % 4 == 3);
            List<Integer> still = reordered(out);
            if (still.size() < out.size()) {
                idle = 0;
            }
            if (still.size() <= out.size()) {
                out = still;
            } else {
                restore(before);
            }
        }
        insertion.wander(false);
    }

    /** Takes halves out around one that has no room and puts all back, that one first; returns those without room. */
    private List<Integer> reordered(List<Integer> out) {
        int first = out.get(random.nextInt(out.size()));
        Set<Integer> moved = new LinkedHashSet<>(kin(first));
        inTheWay(first, 1 + random.nextInt(MOST_IN_THE_WAY), moved);
        moved.forEach(this::takeOut);
        takeOut(first);
        List<Integer> order = new ArrayList<>(moved);
        order.remove(Integer.valueOf(first));
        List<Integer> others = new ArrayList<>(
                out.stream().filter(h -> h != first && !moved.contains(h)).toList());
        shuffle(others);
        order.addAll(others.subList(0, Math.min(OTHERS_TRIED, others.size())));
        shuffle(order);
        order.add(0, first);
        List<Integer> still = new ArrayList<>(others.subList(Math.min(OTHERS_TRIED, others.size()), others.size()));
        order.stream().filter(h -> !insertion.half(h)).forEach(still::add);
        return still;
    }

    private void shuffle(List<Integer> list) {
        for (int x = list.size() - 1; x > 0; x--) {
            Collections.swap(list, x, random.nextInt(x + 1));
        }
    }

    /** Halves that lags join to {@code h}, now and then further ones. */
    private Set<Integer> kin(int h) {
        Set<Integer> kin = new LinkedHashSet<>(Set.of(h));
        int steps = 1 + random.nextInt(3);
        for (int step = 0; step < steps; step++) {
            for (int one : List.copyOf(kin)) {
                for (int i : a.halfOperations[one]) {
                    for (int e = 0; e < a.lags[i].length; e += 3) {
                        kin.add(a.half[a.lags[i][e]]);
                    }
                }
            }
        }
        return kin;
    }

    private void inTheWay(int h, int most, Set<Integer> into) {
        int[] ops = a.halfOperations[h];
        for (int tries = 0, found = 0; tries < 8 * most && found < most; tries++) {
            int i = ops[random.nextInt(ops.length)];
            int width = a.latest[i] + a.length[i] - a.earliest[i];
            if (width <= 0) {
                continue;
            }
            int other = t.firstAt(Math.min(a.quarters - 1, a.earliest[i] + random.nextInt(width)));
            for (int skip = random.nextInt(3); skip > 0 && other != Timetable.OUT; skip--) {
                int next = t.nextWithSameStart(other);
                other = next == Timetable.OUT ? other : next;
            }
            if (other != Timetable.OUT && into.add(a.half[other])) {
                found++;
            }
        }
    }

    private void takeOut(int h) {
        for (int i : a.halfOperations[h]) {
            if (fixed[i] == Timetable.OUT && t.start[i] != Timetable.OUT) {
                t.remove(i);
            }
        }
    }

    private void restore(int[] before) {
        for (int i = 0; i < a.n; i++) {
            if (t.start[i] != before[i] && t.start[i] != Timetable.OUT) {
                t.remove(i);
            }
        }
        for (int i = 0; i < a.n; i++) {
            if (t.start[i] != before[i]) {
                t.add(i, before[i]);
            }
        }
    }
}
