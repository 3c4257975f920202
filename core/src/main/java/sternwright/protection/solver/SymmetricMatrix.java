package sternwright.protection.solver;

import java.util.Arrays;

/**
 * The fixed pattern of a sparse symmetric matrix with its elimination order, and the places of its entries.
 *
 * <p>Shared between solves; the numbers live in {@link Factor}.
 */
final class SymmetricMatrix {
    /** Number of unknowns. */
    final int size;

    /** Place of each unknown in the order of elimination. */
    final int[] place;

    /** Columns of the strict upper triangle in elimination order. */
    final int[] columnStart;

    final int[] row;

    /** Elimination tree, -1 at roots. */
    final int[] parent;

    /** Columns of the factor. */
    final int[] factorStart;

    /** Row of each entry of the factor, column by column. */
    final int[] factorRow;

    /** Entries of the factor row by row: their columns in rising order, and where each is kept. */
    final int[] rowStart;

    final int[] rowColumn;
    final int[] rowEntry;

    /**
     * Lays out a pattern.
     *
     * @param size number of unknowns
     * @param a one end of each entry off the diagonal; the two ends differ, entries may repeat
     * @param b the other end
     * @param releases for each unknown the one that may be eliminated only after it, or -1
     */
    SymmetricMatrix(int size, int[] a, int[] b, int[] releases) {
        this.size = size;
        int[][] neighbours = rows(size, a, b);
        int[] order = MinimumDegree.order(neighbours.clone(), releases);
        place = new int[size];
        for (int k = 0; k < size; k++) {
            place[order[k]] = k;
        }
        columnStart = new int[size + 1];
        int entries = 0;
        for (int[] r : neighbours) {
            entries += r.length;
        }
        row = new int[entries / 2];
        fillColumns(neighbours, order);
        parent = new int[size];
        factorStart = new int[size + 1];
        rowStart = new int[size + 1];
        eliminationTree();
        factorRow = new int[factorStart[size]];
        rowColumn = new int[factorRow.length];
        rowEntry = new int[factorRow.length];
        factorPattern();
    }

    /** Lays out a pattern whose unknowns may be eliminated in any order. */
    SymmetricMatrix(int size, int[] a, int[] b) {
        this(size, a, b, none(size));
    }

    private static int[] none(int size) {
        int[] none = new int[size];
        Arrays.fill(none, -1);
        return none;
    }

    private static int[][] rows(int size, int[] a, int[] b) {
        int[] count = new int[size];
        for (int i = 0; i < a.length; i++) {
            count[a[i]]++;
            count[b[i]]++;
        }
        int[][] rows = new int[size][];
        for (int i = 0; i < size; i++) {
            rows[i] = new int[count[i]];
            count[i] = 0;
        }
        for (int i = 0; i < a.length; i++) {
            rows[a[i]][count[a[i]]++] = b[i];
            rows[b[i]][count[b[i]]++] = a[i];
        }
        for (int i = 0; i < size; i++) {
            rows[i] = sortedOnce(rows[i]);
        }
        return rows;
    }

    private static int[] sortedOnce(int[] r) {
        Arrays.sort(r);
        int n = 0;
        for (int i = 0; i < r.length; i++) {
            if (i == 0 || r[i] != r[i - 1]) {
                r[n++] = r[i];
            }
        }
        return n == r.length ? r : Arrays.copyOf(r, n);
    }

    private void fillColumns(int[][] neighbours, int[] order) {
        int n = 0;
        for (int k = 0; k < size; k++) {
            columnStart[k] = n;
            for (int u : neighbours[order[k]]) {
                if (place[u] < k) {
                    row[n++] = place[u];
                }
            }
            Arrays.sort(row, columnStart[k], n);
        }
        columnStart[size] = n;
    }

    /** Finds the elimination tree, and counts the entries of the factor by column and by row. */
    private void eliminationTree() {
        int[] flag = new int[size];
        int[] count = new int[size];
        for (int k = 0; k < size; k++) {
            parent[k] = -1;
            flag[k] = k;
            int inRow = 0;
            for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
                for (int i = row[p]; flag[i] != k; i = parent[i]) {
                    if (parent[i] == -1) {
                        parent[i] = k;
                    }
                    count[i]++;
                    inRow++;
                    flag[i] = k;
                }
            }
            rowStart[k + 1] = rowStart[k] + inRow;
        }
        for (int k = 0; k < size; k++) {
            factorStart[k + 1] = factorStart[k] + count[k];
        }
    }

    /** Lays out the factor: along the tree from each entry of a column upwards lie the entries of a row. */
    private void factorPattern() {
        int[] flag = new int[size];
        int[] filled = new int[size];
        for (int k = 0; k < size; k++) {
            flag[k] = k + 1;
            int n = rowStart[k];
            for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
                for (int i = row[p]; flag[i] != k + 1; i = parent[i]) {
                    rowColumn[n++] = i;
                    flag[i] = k + 1;
                }
            }
            Arrays.sort(rowColumn, rowStart[k], n);
            for (int q = rowStart[k]; q < n; q++) {
                int i = rowColumn[q];
                rowEntry[q] = factorStart[i] + filled[i]++;
                factorRow[rowEntry[q]] = k;
            }
        }
    }

    /** Where the entry of two different unknowns is kept. */
    int entry(int a, int b) {
        int column = Math.max(place[a], place[b]);
        return Arrays.binarySearch(row, columnStart[column], columnStart[column + 1], Math.min(place[a], place[b]));
    }
}
