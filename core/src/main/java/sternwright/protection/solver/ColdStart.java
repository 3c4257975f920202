package sternwright.protection.solver;

import java.util.Arrays;

/**
 * A first guess for the node potentials: each group of joined metal at the one potential that would balance its current if every bond
 * were perfect and the water had no resistance.
 */
final class ColdStart {
    private ColdStart() {}

    static void set(Network net, double[] v) {
        int[] group = groups(net);
        double[] low = new double[net.nodes];
        double[] high = new double[net.nodes];
        double[] drawn = new double[net.nodes];
        Arrays.fill(low, -2.5);
        Arrays.fill(high, 1.5);
        for (int n = 0; n < net.nodes; n++) {
            drawn[group[n]] += net.drawnA[n];
        }
        double[] sum = new double[net.nodes];
        for (int k = 0; k < 6; k++) {
            System.arraycopy(drawn, 0, sum, 0, sum.length);
            for (int b = 0; b < net.bodies(); b++) {
                int g = group[net.node[b]];
                sum[g] += net.curves.current(b, (low[g] + high[g]) / 2);
            }
            for (int g = 0; g < net.nodes; g++) {
                if (group[g] == g) {
                    double middle = (low[g] + high[g]) / 2;
                    low[g] = sum[g] < 0 ? middle : low[g];
                    high[g] = sum[g] < 0 ? high[g] : middle;
                }
            }
        }
        for (int n = 0; n < net.nodes; n++) {
            v[n] = (low[group[n]] + high[group[n]]) / 2;
        }
    }

    private static int[] groups(Network net) {
        int[] root = new int[net.nodes];
        for (int n = 0; n < root.length; n++) {
            root[n] = n;
        }
        for (int k = 0; k < net.branchA.length; k++) {
            root[find(root, net.branchA[k])] = find(root, net.branchB[k]);
        }
        for (int n = 0; n < root.length; n++) {
            root[n] = find(root, n);
        }
        return root;
    }

    private static int find(int[] root, int start) {
        int i = start;
        while (root[i] != i) {
            root[i] = root[root[i]];
            i = root[i];
        }
        return i;
    }
}
