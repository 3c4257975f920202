package sternwright.protection.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CurrentSource;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.MutualResistance;

/**
 * The lean form of a circuit: numbers in arrays, bodies joined below a micro-ohm merged into one node, and the pattern of the matrix.
 *
 * <p>Unknowns are the node potentials and, for bodies that share a water path with another, their currents.
 */
final class Network {
    /** Joints below this are solved as one piece of metal, ohm. */
    static final double MERGED_BELOW_OHM = 1e-6;

    final Map<String, Integer> bodyIndex;
    final int[] linkFrom;
    final int[] linkTo;
    final int nodes;
    final int[] node;
    final Curves curves;
    final double[] waterOhm;
    final double[] drawnA;

    /** Unknown of a body's own current, or -1 where the current is eliminated. */
    final int[] currentUnknown;

    /** Mutual water resistances by pairs of bodies. */
    final int[] mutualA;

    final int[] mutualB;
    final double[] mutualOhm;

    /** Resistors between different nodes, and then isolators; ends are nodes. */
    final int[] branchA;

    final int[] branchB;
    final double[] conductanceS;
    final int resistors;
    final List<Link.Isolator> isolators;

    final SymmetricMatrix matrix;
    final int[] branchEntry;
    final double[] fixedDiagonal;
    final double[] fixedUpper;

    Network(Circuit circuit) {
        List<Body> bodies = circuit.bodies();
        int n = bodies.size();
        bodyIndex = new HashMap<>(2 * n);
        for (Body b : bodies) {
            bodyIndex.put(b.id(), bodyIndex.size());
        }
        linkFrom = ends(circuit.links(), true);
        linkTo = ends(circuit.links(), false);
        node = new int[n];
        nodes = mergeNodes(circuit.links());
        curves = new Curves(bodies);
        waterOhm = bodies.stream().mapToDouble(Body::waterOhm).toArray();
        drawnA = drawn(circuit.sources());
        int pairs = circuit.mutualResistances().size();
        mutualA = new int[pairs];
        mutualB = new int[pairs];
        mutualOhm = new double[pairs];
        currentUnknown = new int[n];
        int unknowns = mutuals(circuit.mutualResistances());
        isolators = new ArrayList<>();
        List<int[]> branches = new ArrayList<>();
        double[] conductances = branches(circuit.links(), branches);
        resistors = branches.size() - isolators.size();
        branchA = branches.stream().mapToInt(x -> x[0]).toArray();
        branchB = branches.stream().mapToInt(x -> x[1]).toArray();
        conductanceS = conductances;
        matrix = layOut(unknowns);
        branchEntry = new int[branchA.length];
        fixedDiagonal = new double[unknowns];
        fixedUpper = new double[matrix.row.length];
        fixedNumbers();
    }

    /** The same bodies and joints with other areas and water resistances; the pattern is shared. */
    private Network(Network same, double[] bareAreaM2, double[] waterOhm, double mutualScale) {
        bodyIndex = same.bodyIndex;
        linkFrom = same.linkFrom;
        linkTo = same.linkTo;
        nodes = same.nodes;
        node = same.node;
        curves = same.curves.on(bareAreaM2);
        this.waterOhm = waterOhm;
        drawnA = same.drawnA;
        currentUnknown = same.currentUnknown;
        mutualA = same.mutualA;
        mutualB = same.mutualB;
        mutualOhm = Arrays.stream(same.mutualOhm).map(r -> r * mutualScale).toArray();
        branchA = same.branchA;
        branchB = same.branchB;
        conductanceS = same.conductanceS;
        resistors = same.resistors;
        isolators = same.isolators;
        matrix = same.matrix;
        branchEntry = same.branchEntry;
        if (mutualOhm.length == 0) {
            fixedDiagonal = same.fixedDiagonal;
            fixedUpper = same.fixedUpper;
        } else {
            fixedDiagonal = new double[same.fixedDiagonal.length];
            fixedUpper = new double[same.fixedUpper.length];
            fixedNumbers();
        }
    }

    Network with(double[] bareAreaM2, double[] water, double mutualScale) {
        return new Network(this, bareAreaM2, water, mutualScale);
    }

    int bodies() {
        return node.length;
    }

    private int at(String body) {
        Integer i = bodyIndex.get(body);
        return i == null ? -1 : i;
    }

    private int[] ends(List<Link> links, boolean from) {
        return links.stream().mapToInt(l -> at(from ? l.a() : l.b())).toArray();
    }

    private int mergeNodes(List<Link> links) {
        int[] root = new int[node.length];
        for (int b = 0; b < root.length; b++) {
            root[b] = b;
        }
        for (int l = 0; l < linkFrom.length; l++) {
            if (merges(links.get(l))) {
                root[find(root, linkFrom[l])] = find(root, linkTo[l]);
            }
        }
        int count = 0;
        for (int b = 0; b < root.length; b++) {
            if (find(root, b) == b) {
                node[b] = count++;
            }
        }
        for (int b = 0; b < root.length; b++) {
            node[b] = node[find(root, b)];
        }
        return count;
    }

    static boolean merges(Link link) {
        return link instanceof Link.Resistor r && r.ohm() < MERGED_BELOW_OHM;
    }

    private static int find(int[] root, int start) {
        int i = start;
        while (root[i] != i) {
            root[i] = root[root[i]];
            i = root[i];
        }
        return i;
    }

    private double[] drawn(List<CurrentSource> sources) {
        double[] drawn = new double[nodes];
        for (CurrentSource s : sources) {
            drawn[node[at(s.from())]] += s.currentA();
            drawn[node[at(s.to())]] -= s.currentA();
        }
        return drawn;
    }

    private int mutuals(List<MutualResistance> list) {
        Arrays.fill(currentUnknown, -1);
        int unknowns = nodes;
        for (int m = 0; m < mutualOhm.length; m++) {
            mutualA[m] = at(list.get(m).a());
            mutualB[m] = at(list.get(m).b());
            mutualOhm[m] = list.get(m).ohm();
            for (int b : new int[] {mutualA[m], mutualB[m]}) {
                if (currentUnknown[b] < 0 && curves.wet(b)) {
                    currentUnknown[b] = unknowns++;
                }
            }
        }
        return unknowns;
    }

    private double[] branches(List<Link> links, List<int[]> branches) {
        List<Double> conductances = new ArrayList<>();
        List<int[]> diodes = new ArrayList<>();
        for (int l = 0; l < linkFrom.length; l++) {
            int[] ends = {node[linkFrom[l]], node[linkTo[l]]};
            if (ends[0] == ends[1]) {
                continue;
            }
            if (links.get(l) instanceof Link.Resistor r) {
                branches.add(ends);
                conductances.add(1 / r.ohm());
            } else if (links.get(l) instanceof Link.Isolator i) {
                diodes.add(ends);
                isolators.add(i);
            }
        }
        branches.addAll(diodes);
        return conductances.stream().mapToDouble(c -> c).toArray();
    }

    private SymmetricMatrix layOut(int unknowns) {
        List<int[]> entries = new ArrayList<>();
        // A node of a body with its own current unknown may have no other diagonal: the current goes first.
        int[] releases = new int[unknowns];
        Arrays.fill(releases, -1);
        for (int k = 0; k < branchA.length; k++) {
            entries.add(new int[] {branchA[k], branchB[k]});
        }
        for (int b = 0; b < node.length; b++) {
            if (currentUnknown[b] >= 0) {
                entries.add(new int[] {node[b], currentUnknown[b]});
                releases[currentUnknown[b]] = node[b];
            }
        }
        for (int m = 0; m < mutualOhm.length; m++) {
            if (coupled(m)) {
                entries.add(new int[] {currentUnknown[mutualA[m]], currentUnknown[mutualB[m]]});
            }
        }
        return new SymmetricMatrix(
                unknowns,
                entries.stream().mapToInt(e -> e[0]).toArray(),
                entries.stream().mapToInt(e -> e[1]).toArray(),
                releases);
    }

    private boolean coupled(int pair) {
        return currentUnknown[mutualA[pair]] >= 0 && currentUnknown[mutualB[pair]] >= 0;
    }

    private void fixedNumbers() {
        for (int k = 0; k < branchA.length; k++) {
            branchEntry[k] = matrix.entry(branchA[k], branchB[k]);
            if (k < resistors) {
                fixedDiagonal[matrix.place[branchA[k]]] += conductanceS[k];
                fixedDiagonal[matrix.place[branchB[k]]] += conductanceS[k];
                fixedUpper[branchEntry[k]] -= conductanceS[k];
            }
        }
        for (int b = 0; b < node.length; b++) {
            if (currentUnknown[b] >= 0) {
                fixedDiagonal[matrix.place[currentUnknown[b]]] = -waterOhm[b];
                fixedUpper[matrix.entry(node[b], currentUnknown[b])] = 1;
            }
        }
        for (int m = 0; m < mutualOhm.length; m++) {
            if (coupled(m)) {
                fixedUpper[matrix.entry(currentUnknown[mutualA[m]], currentUnknown[mutualB[m]])] -= mutualOhm[m];
            }
        }
    }
}
