package sternwright.protection.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Can every group of joined metal balance its current? A group passes between the lowest and the highest sum its reactions can give;
 * what the sources take out of it must lie strictly between.
 */
final class CurrentBalance {
    private CurrentBalance() {}

    static List<CircuitProblem> problems(Circuit circuit) {
        Map<String, Integer> index = new HashMap<>();
        circuit.bodies().forEach(b -> index.put(b.id(), index.size()));
        int[] parent = new int[index.size()];
        for (int i = 0; i < parent.length; i++) {
            parent[i] = i;
        }
        for (Link l : circuit.links()) {
            if (l.conducts()) {
                parent[root(parent, at(index, l.a()))] = root(parent, at(index, l.b()));
            }
        }
        Map<Integer, Group> groups = new LinkedHashMap<>();
        for (int i = 0; i < parent.length; i++) {
            groups.computeIfAbsent(root(parent, i), r -> new Group())
                    .add(circuit.bodies().get(i));
        }
        for (CurrentSource s : circuit.sources()) {
            groups.computeIfAbsent(root(parent, at(index, s.from())), r -> new Group()).drawnA += s.currentA();
            groups.computeIfAbsent(root(parent, at(index, s.to())), r -> new Group()).drawnA -= s.currentA();
        }
        List<CircuitProblem> found = new ArrayList<>();
        groups.values().forEach(g -> g.report(found));
        return found;
    }

    private static int at(Map<String, Integer> index, String id) {
        return index.getOrDefault(id, 0);
    }

    private static int root(int[] parent, int start) {
        int i = start;
        while (parent[i] != i) {
            parent[i] = parent[parent[i]];
            i = parent[i];
        }
        return i;
    }

    /** Bodies joined in metal, with the range of current they can give to the water. */
    private static final class Group {
        private final List<String> names = new ArrayList<>();
        private boolean wet;
        private double lowestA;
        private double highestA;
        private double drawnA;

        void add(Body b) {
            if (names.size() < 8) {
                names.add(b.id());
            }
            if (!b.wet()) {
                return;
            }
            wet = true;
            for (Reaction r : b.reactions()) {
                double limitA = r.limitAPerM2() * b.bareAreaM2();
                if (r.kind() == Reaction.Kind.ANODIC) {
                    highestA += limitA;
                } else {
                    lowestA -= limitA;
                }
            }
        }

        void report(List<CircuitProblem> found) {
            String where = (names.size() == 1 ? "body " : "group ") + String.join(", ", names);
            if (!wet) {
                found.add(new CircuitProblem(
                        where,
                        "it has no path to water",
                        "Give one of its bodies a bare wetted area and a metal, or join it to a wet part"));
            } else if (!(lowestA < -drawnA)) {
                found.add(new CircuitProblem(
                        where,
                        "nothing on it can take up the current that flows to it from the other metal",
                        "Its reactions take at most " + (0 - lowestA) + " A and " + drawnA
                                + " A must be taken; add a cathodic reaction or check the source"));
            } else if (!(highestA > -drawnA)) {
                found.add(new CircuitProblem(
                        where,
                        "nothing on it can give off the current that it must give to the water",
                        "Its reactions give at most " + highestA + " A and " + (0 - drawnA)
                                + " A must be given; add an anodic reaction or check the source"));
            }
        }
    }
}
