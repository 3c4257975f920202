package sternwright.protection.solver;

import java.util.Arrays;

/** The numbers of a {@link SymmetricMatrix} and its factorisation L D L^T. One per solve; not shared. */
final class Factor {
    private final SymmetricMatrix pattern;

    /** Diagonal in elimination order. */
    final double[] diagonal;

    /** Strict upper triangle, as laid out by the pattern. */
    final double[] upper;

    private final double[] pivot;
    private final double[] lower;
    private final int[] lowerRow;
    private final int[] filled;
    private final double[] work;
    private final int[] path;
    private final int[] flag;

    Factor(SymmetricMatrix pattern) {
        this.pattern = pattern;
        int n = pattern.size;
        diagonal = new double[n];
        upper = new double[pattern.row.length];
        pivot = new double[n];
        lower = new double[pattern.factorStart[n]];
        lowerRow = new int[lower.length];
        filled = new int[n];
        work = new double[n];
        path = new int[n];
        flag = new int[n];
    }

    /** Factorises the present numbers; false when a pivot vanishes. */
    boolean factorise() {
        int n = pattern.size;
        Arrays.fill(flag, -1);
        for (int k = 0; k < n; k++) {
            int top = scatter(k);
            double d = diagonal[k];
            for (; top < n; top++) {
                int i = path[top];
                double y = work[i];
                work[i] = 0;
                int end = pattern.factorStart[i] + filled[i];
                for (int p = pattern.factorStart[i]; p < end; p++) {
                    work[lowerRow[p]] -= lower[p] * y;
                }
                double l = y / pivot[i];
                d -= l * y;
                lowerRow[end] = k;
                lower[end] = l;
                filled[i]++;
            }
            pivot[k] = d;
            if (d == 0 || Double.isNaN(d)) {
                Arrays.fill(work, 0);
                return false;
            }
        }
        return true;
    }

    /** Puts column k of the matrix into the work vector and lists, in order, the rows that it reaches; returns where the list starts. */
    private int scatter(int k) {
        int n = pattern.size;
        int top = n;
        flag[k] = k;
        filled[k] = 0;
        for (int p = pattern.columnStart[k]; p < pattern.columnStart[k + 1]; p++) {
            int i = pattern.row[p];
            work[i] += upper[p];
            int length = 0;
            for (; flag[i] != k; i = pattern.parent[i]) {
                path[length++] = i;
                flag[i] = k;
            }
            while (length > 0) {
                path[--top] = path[--length];
            }
        }
        return top;
    }

    /** Solves in place; the vector is in elimination order. */
    void solve(double[] x) {
        int n = pattern.size;
        int[] start = pattern.factorStart;
        for (int j = 0; j < n; j++) {
            double xj = x[j];
            for (int p = start[j]; p < start[j + 1]; p++) {
                x[lowerRow[p]] -= lower[p] * xj;
            }
        }
        for (int j = n - 1; j >= 0; j--) {
            double xj = x[j] / pivot[j];
            for (int p = start[j]; p < start[j + 1]; p++) {
                xj -= lower[p] * x[lowerRow[p]];
            }
            x[j] = xj;
        }
    }

    /** Lowest pivot of the last factorisation. */
    double lowestPivot() {
        double lowest = Double.POSITIVE_INFINITY;
        for (double d : pivot) {
            lowest = Math.min(lowest, d);
        }
        return lowest;
    }
}
