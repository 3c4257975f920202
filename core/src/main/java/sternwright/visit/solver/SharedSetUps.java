package sternwright.visit.solver;

import java.util.stream.IntStream;

/** Betters a plan on given visits: opens a set-up in a month for all works that share it, or closes one, where that costs less. */
final class SharedSetUps {
    private static final int CLOSED = -1_000_000;
    private static final int ROUNDS = 2;
    private static final double HALF_A_CENT = 0.5;

    private final PathModel model;
    private final ScheduleBuilder builder;
    private final int horizon;

    /** The works of each service point that stand in no follow-on. */
    private final int[][] works;

    SharedSetUps(PathModel model, ScheduleBuilder builder) {
        this.model = model;
        this.builder = builder;
        horizon = model.horizon;
        works = new int[model.points][];
        for (int g = 0; g < model.points; g++) {
            int point = g;
            works[g] = IntStream.range(0, model.works)
                    .filter(j -> model.paths[j].servicePoint == point)
                    .filter(j -> model.asTrigger.get(j).isEmpty()
                            && model.asFollower.get(j).isEmpty())
                    .toArray();
        }
    }

    /** Betters what the builder built last, until nothing helps. */
    void settle() {
        boolean better = true;
        while (better) {
            better = false;
            for (int g = 0; g < works.length; g++) {
                for (int t = 0; works[g].length > 1 && t < horizon; t++) {
                    better |= builder.visited(t) && tried(g, t);
                }
            }
        }
    }

    private boolean tried(int g, int t) {
        int[][] months = new int[works[g].length][];
        int[][] phases = new int[works[g].length][];
        for (int i = 0; i < works[g].length; i++) {
            months[i] = builder.built.months[works[g][i]];
            phases[i] = builder.built.phases[works[g][i]];
        }
        double before = cost(g);
        int at = g * horizon + t;
        int trial = builder.pointUse[at] > 0 ? CLOSED : 1;
        builder.pointUse[at] += trial;
        boolean placed = true;
        for (int round = 0; round < ROUNDS; round++) {
            for (int j : works[g]) {
                placed = placed && builder.replace(j);
            }
        }
        builder.pointUse[at] -= trial;
        if (placed && cost(g) < before - HALF_A_CENT) {
            return true;
        }
        for (int i = 0; i < works[g].length; i++) {
            builder.restore(works[g][i], months[i], phases[i]);
        }
        return false;
    }

    private double cost(int g) {
        double sum = 0;
        for (int j : works[g]) {
            sum += builder.workCost(j);
        }
        for (int t = 0; t < horizon; t++) {
            sum += builder.pointUse[g * horizon + t] > 0 ? model.setUp[g] : 0;
        }
        return sum;
    }
}
