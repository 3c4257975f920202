package sternwright.season.arrays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntBinaryOperator;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/** Hall limits of one family of suppliers (people, hoists, places, pools) over time. */
public final class Limits {
    private static final int MOST_KINDS = 12;

    /** Number of limits. */
    public final int count;

    /** Number of kinds of work. */
    public final int kinds;

    /** For each kind the limits it counts in. */
    public final int[][] ofKind;

    /** For each limit the kinds that count in it. */
    public final int[][] kindsOf;

    /** Capacity of limit l in quarter q at [q * count + l]. */
    public final int[] capacity;

    private Limits(int kinds, List<int[]> sets, int[] capacity) {
        this.kinds = kinds;
        this.count = sets.size();
        this.kindsOf = sets.toArray(new int[0][]);
        this.capacity = capacity;
        List<List<Integer>> byKind = new ArrayList<>();
        for (int k = 0; k < kinds; k++) {
            byKind.add(new ArrayList<>());
        }
        for (int l = 0; l < count; l++) {
            for (int k : kindsOf[l]) {
                byKind.get(k).add(l);
            }
        }
        ofKind = byKind.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    /**
     * Limits for kinds that some suppliers can serve.
     *
     * @param suppliersOf for each kind the suppliers that can serve it
     * @param suppliers number of suppliers
     * @param quarters length of the axis
     * @param supply what supplier (first argument) gives in quarter (second argument)
     */
    static Limits of(List<BitSet> suppliersOf, int suppliers, int quarters, IntBinaryOperator supply) {
        int kinds = suppliersOf.size();
        if (kinds > MOST_KINDS) {
            throw new IllegalArgumentException(kinds + " kinds of one resource are more than the " + MOST_KINDS
                    + " the planner takes; merge skills or lift classes that always go together");
        }
        List<int[]> sets = new ArrayList<>();
        List<BitSet> unions = new ArrayList<>();
        for (int mask = 1; mask < 1 << kinds; mask++) {
            BitSet union = new BitSet();
            for (int k = 0; k < kinds; k++) {
                if ((mask >> k & 1) != 0) {
                    union.or(suppliersOf.get(k));
                }
            }
            if (closed(mask, union, suppliersOf)) {
                sets.add(members(mask, kinds));
                unions.add(union);
            }
        }
        int[] capacity = new int[quarters * sets.size()];
        for (int l = 0; l < sets.size(); l++) {
            for (int s = unions.get(l).nextSetBit(0); s >= 0; s = unions.get(l).nextSetBit(s + 1)) {
                for (int q = 0; q < quarters; q++) {
                    capacity[q * sets.size() + l] += supply.applyAsInt(s, q);
                }
            }
        }
        return new Limits(kinds, sets, capacity);
    }

    /** One limit of its own for each kind, the same in every quarter. */
    static Limits singles(int kinds, int quarters, IntUnaryOperator supply) {
        List<int[]> sets = new ArrayList<>();
        int[] capacity = new int[quarters * kinds];
        for (int k = 0; k < kinds; k++) {
            sets.add(new int[] {k});
            for (int q = 0; q < quarters; q++) {
                capacity[q * kinds + k] = supply.applyAsInt(k);
            }
        }
        return new Limits(kinds, sets, capacity);
    }

    /** A set is worth keeping only if no further kind is served by the same suppliers alone: then the larger set says more. */
    private static boolean closed(int mask, BitSet union, List<BitSet> suppliersOf) {
        for (int k = 0; k < suppliersOf.size(); k++) {
            if ((mask >> k & 1) == 0) {
                BitSet extra = (BitSet) suppliersOf.get(k).clone();
                extra.andNot(union);
                if (extra.isEmpty()) {
                    return false;
                }
            }
        }
        return true;
    }

    private static int[] members(int mask, int kinds) {
        return IntStream.range(0, kinds).filter(k -> (mask >> k & 1) != 0).toArray();
    }

    /** A fresh copy of the capacities, to be used up. */
    int[] slack() {
        return Arrays.copyOf(capacity, capacity.length);
    }
}
