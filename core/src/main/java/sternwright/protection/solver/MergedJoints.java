package sternwright.protection.solver;

/**
 * Currents in the joints that were solved as one piece of metal: each merged node's bodies form a small resistive network of their own,
 * fed by what every body gives to the water, to its other links and to the sources. Joints of no resistance share alike.
 */
final class MergedJoints {
    /** Stands for zero ohm, so that a ring of perfect joints still has one answer. */
    private static final double LEAST_OHM = 1e-12;

    private MergedJoints() {}

    /**
     * Fills in the currents of the merged joints.
     *
     * @param network the network
     * @param joint which links are merged joints
     * @param ohm their resistances
     * @param injectedA current that each body receives from everything but the merged joints
     * @param linkA receives the currents, from a to b
     */
    static void currents(Network network, boolean[] joint, double[] ohm, double[] injectedA, double[] linkA) {
        int count = 0;
        for (boolean merged : joint) {
            count += merged ? 1 : 0;
        }
        int[] a = new int[count];
        int[] b = new int[count];
        int n = 0;
        for (int l = 0; l < joint.length; l++) {
            if (joint[l]) {
                a[n] = network.linkFrom[l];
                b[n++] = network.linkTo[l];
            }
        }
        SymmetricMatrix pattern = new SymmetricMatrix(network.bodies(), a, b);
        Factor factor = new Factor(pattern);
        for (int l = 0; l < joint.length; l++) {
            if (joint[l]) {
                double weight = LEAST_OHM / Math.max(LEAST_OHM, ohm[l]);
                factor.diagonal[pattern.place[network.linkFrom[l]]] += weight;
                factor.diagonal[pattern.place[network.linkTo[l]]] += weight;
                factor.upper[pattern.entry(network.linkFrom[l], network.linkTo[l])] -= weight;
            }
        }
        ground(network, pattern, factor);
        factor.factorise();
        double[] x = new double[network.bodies()];
        for (int k = 0; k < x.length; k++) {
            x[pattern.place[k]] = injectedA[k];
        }
        factor.solve(x);
        for (int l = 0; l < joint.length; l++) {
            if (joint[l]) {
                double weight = LEAST_OHM / Math.max(LEAST_OHM, ohm[l]);
                linkA[l] = weight * (x[pattern.place[network.linkFrom[l]]] - x[pattern.place[network.linkTo[l]]]);
            }
        }
    }

    /** Holds one body of each node at zero. */
    private static void ground(Network network, SymmetricMatrix pattern, Factor factor) {
        boolean[] held = new boolean[network.nodes];
        for (int b = 0; b < network.bodies(); b++) {
            if (!held[network.node[b]]) {
                held[network.node[b]] = true;
                factor.diagonal[pattern.place[b]] += 1;
            }
        }
    }
}
