package sternwright.visit.solver;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Links of works of unknown history: a visit that fits such a work asks for its first doing by then. */
final class FirstVisits {
    private final PathModel model;
    private final Scope scope;
    private final int base;
    private final int slots;
    private final int horizon;
    private final int[] unknown;

    /** Prices on the first doing by work and month; none for works of known history. */
    private final double[][] price;

    FirstVisits(PathModel model, Scope scope, int base) {
        this.model = model;
        this.scope = scope;
        this.base = base;
        horizon = model.horizon;
        slots = 2 * horizon;
        unknown = IntStream.range(0, model.works)
                .filter(j -> model.paths[j].dueAtFirstVisit)
                .toArray();
        price = new double[model.works][0];
        for (int j : unknown) {
            price[j] = new double[horizon];
        }
    }

    /** Number of the first of these links. */
    int begin() {
        return base;
    }

    /** Number after the last. */
    int end() {
        return base + unknown.length * slots;
    }

    /** Lists the links that can bind: where the work is not done by then anyway. Returns how many are listed then. */
    int addAlive(int[] alive, int count, int[] asks) {
        int n = count;
        for (int i = 0; i < unknown.length; i++) {
            WorkPaths w = model.paths[unknown[i]];
            int by = scope.mayEnd[unknown[i]][0] ? horizon : scope.last[unknown[i]][0];
            for (int s = 0; s < slots; s++) {
                int t = s % horizon;
                boolean fits = (w.firstFit[t] & (s < horizon ? 1 : 2)) != 0;
                if (fits && t >= w.first[0] && t < by && scope.visit[s] != HaulOut.CLOSED) {
                    asks[base + i * slots + s] = s;
                    alive[n++] = base + i * slots + s;
                }
            }
        }
        return n;
    }

    /** Prices on the first doing of a work, by month; null if its history is known. */
    double @Nullable [] price(int work) {
        return price[work].length == 0 ? null : price[work];
    }

    void clear() {
        for (int j : unknown) {
            Arrays.fill(price[j], 0);
        }
    }

    /** Notes what a link pays for a first doing up to the month of its slot; to be summed up once all are noted. */
    void spread(int link, int slot, double p) {
        price[unknown[(link - base) / slots]][slot % horizon] -= p;
    }

    void sum() {
        for (int j : unknown) {
            double[] row = price[j];
            for (int t = horizon - 2; t >= 0; t--) {
                row[t] += row[t + 1];
            }
        }
    }

    /** Whether the work of a link is done by the month of its slot. */
    boolean doneBy(int link, int slot, int[][] doneMonths) {
        int[] months = doneMonths[unknown[(link - base) / slots]];
        return months.length > 0 && months[0] <= slot % horizon;
    }
}
