package sternwright.protection.solver;

/** The numbers of a {@link SymmetricMatrix} and its factorisation L D L^T. One per solve; not shared. */
final class Factor {
    private final SymmetricMatrix pattern;

    /** Diagonal in elimination order. */
    final double[] diagonal;

    /** Strict upper triangle, as laid out by the pattern. */
    final double[] upper;

    private final double[] perPivot;
    private final double[] lower;
    private final double[] work;
    private double lowestPivot;

    Factor(SymmetricMatrix pattern) {
        this.pattern = pattern;
        diagonal = new double[pattern.size];
        upper = new double[pattern.row.length];
        perPivot = new double[pattern.size];
        lower = new double[pattern.factorRow.length];
        work = new double[pattern.size];
    }

    /** Factorises the present numbers; false when a pivot vanishes. */
    boolean factorise() {
        int[] factorStart = pattern.factorStart;
        int[] factorRow = pattern.factorRow;
        lowestPivot = Double.POSITIVE_INFINITY;
        for (int k = 0; k < pattern.size; k++) {
            for (int p = pattern.columnStart[k]; p < pattern.columnStart[k + 1]; p++) {
                work[pattern.row[p]] = upper[p];
            }
            double d = diagonal[k];
            for (int q = pattern.rowStart[k]; q < pattern.rowStart[k + 1]; q++) {
                int i = pattern.rowColumn[q];
                int entry = pattern.rowEntry[q];
                double y = work[i];
                work[i] = 0;
                for (int p = factorStart[i]; p < entry; p++) {
                    work[factorRow[p]] -= lower[p] * y;
                }
                double l = y * perPivot[i];
                d -= l * y;
                lower[entry] = l;
            }
            if (d == 0 || Double.isNaN(d)) {
                return false;
            }
            lowestPivot = Math.min(lowestPivot, d);
            perPivot[k] = 1 / d;
        }
        return true;
    }

    /** Solves in place; the vector is in elimination order. */
    void solve(double[] x) {
        int[] start = pattern.factorStart;
        int[] row = pattern.factorRow;
        int n = pattern.size;
        for (int j = 0; j < n; j++) {
            double xj = x[j];
            for (int p = start[j]; p < start[j + 1]; p++) {
                x[row[p]] -= lower[p] * xj;
            }
        }
        for (int j = n - 1; j >= 0; j--) {
            double xj = x[j] * perPivot[j];
            for (int p = start[j]; p < start[j + 1]; p++) {
                xj -= lower[p] * x[row[p]];
            }
            x[j] = xj;
        }
    }

    /** Lowest pivot of the last factorisation. */
    double lowestPivot() {
        return lowestPivot;
    }
}
