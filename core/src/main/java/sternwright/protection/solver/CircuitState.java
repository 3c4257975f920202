package sternwright.protection.solver;

import java.util.Map;

/** The solution of a circuit: one potential and one current for each body, one current for each link. */
public final class CircuitState {
    private final Map<String, Integer> bodyIndex;
    private final Map<String, Integer> linkIndex;
    private final double[] metalV;
    private final double[] interfaceV;
    private final double[] bodyA;
    private final double[] anodicA;
    private final double[] linkA;
    private final double residualA;
    private final int steps;

    CircuitState(
            Map<String, Integer> bodyIndex,
            Map<String, Integer> linkIndex,
            double[] metalV,
            double[] interfaceV,
            double[] bodyA,
            double[] anodicA,
            double[] linkA,
            double residualA,
            int steps) {
        this.bodyIndex = bodyIndex;
        this.linkIndex = linkIndex;
        this.metalV = metalV;
        this.interfaceV = interfaceV;
        this.bodyA = bodyA;
        this.anodicA = anodicA;
        this.linkA = linkA;
        this.residualA = residualA;
        this.steps = steps;
    }

    /** State of a body; fails for an unknown name. */
    public BodyState body(String id) {
        return body(index(bodyIndex, id, "body"));
    }

    /** State of a body by its place in the circuit. */
    public BodyState body(int place) {
        return new BodyState(metalV[place], interfaceV[place], bodyA[place], anodicA[place]);
    }

    double metalV(int place) {
        return metalV[place];
    }

    double interfaceV(int place) {
        return interfaceV[place];
    }

    double currentA(int place) {
        return bodyA[place];
    }

    /** Current through a link from a to b, A; fails for an unknown name. */
    public double linkCurrentA(String id) {
        return linkA[index(linkIndex, id, "link")];
    }

    /** Current through a link by its place in the circuit, from a to b, A. */
    public double linkCurrentA(int place) {
        return linkA[place];
    }

    /** Largest imbalance of current left at any joint of the circuit, A. */
    public double residualA() {
        return residualA;
    }

    /** Newton steps taken. */
    public int steps() {
        return steps;
    }

    private static int index(Map<String, Integer> index, String id, String kind) {
        Integer place = index.get(id);
        if (place == null) {
            throw new IllegalArgumentException("no " + kind + " \"" + id + "\" in this circuit");
        }
        return place;
    }
}
