package sternwright.visit.solver;

import java.util.ArrayList;
import java.util.List;
import sternwright.visit.problem.FollowOn;
import sternwright.visit.problem.LeftUntil;
import sternwright.visit.problem.VisitProblem;

/** The problem as arrays: one graph per work, the set-ups, the lifts, and the order in which works lead to others. */
final class PathModel {
    final VisitProblem problem;
    final int horizon;
    final int works;
    final int points;
    final WorkPaths[] paths;
    final double[] setUp;
    final HaulOut haulOut;
    /** The same without a limit on the number of visits. */
    final HaulOut anyNumber;
    /** Works so ordered that a trigger stands before its follower. */
    final int[] order;

    final FollowOn[] followOns;
    /** First month from each month on in which the work is possible, by work. */
    private final int[][] nextPossible;

    final List<List<FollowOn>> asTrigger = new ArrayList<>();
    final List<List<FollowOn>> asFollower = new ArrayList<>();

    PathModel(VisitProblem problem) {
        this.problem = problem;
        horizon = problem.horizon();
        works = problem.works().size();
        points = problem.servicePoints().size();
        paths = new WorkPaths[works];
        int[] notBefore = new int[works];
        for (LeftUntil l : problem.demands().left()) {
            notBefore[l.work()] = Math.max(notBefore[l.work()], l.month());
        }
        for (int j = 0; j < works; j++) {
            paths[j] = new WorkPaths(problem, j, notBefore[j]);
            asTrigger.add(new ArrayList<>());
            asFollower.add(new ArrayList<>());
        }
        setUp = new double[points];
        for (int g = 0; g < points; g++) {
            setUp[g] = problem.servicePoints().get(g).setUpCents();
        }
        haulOut = new HaulOut(
                problem, problem.demands().minVisits(), problem.demands().maxVisits());
        anyNumber = new HaulOut(problem, 0, Integer.MAX_VALUE);
        followOns = problem.followOns().toArray(FollowOn[]::new);
        for (FollowOn f : followOns) {
            asTrigger.get(f.trigger()).add(f);
            asFollower.get(f.follower()).add(f);
        }
        nextPossible = new int[works][];
        for (int j = 0; j < works; j++) {
            nextPossible[j] = possibleFrom(paths[j].firstFit);
        }
        order = ordered();
    }

    private int[] possibleFrom(byte[] fit) {
        int[] next = new int[horizon];
        int possible = horizon;
        for (int t = horizon - 1; t >= 0; t--) {
            possible = fit[t] != 0 ? t : possible;
            next[t] = possible;
        }
        return next;
    }

    private int[] ordered() {
        int[] result = new int[works];
        boolean[] placed = new boolean[works];
        int n = 0;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int j = 0; j < works; j++) {
                if (!placed[j] && asFollower.get(j).stream().allMatch(f -> placed[f.trigger()])) {
                    placed[j] = true;
                    result[n++] = j;
                    moved = true;
                }
            }
        }
        if (n < works) {
            throw new IllegalArgumentException(
                    "works follow each other in a ring: expected every chain of follow-on works to end");
        }
        return result;
    }

    /** Whether the follow-on asks for anything when its trigger is done in the month. */
    boolean asks(FollowOn f, int triggerMonth) {
        return lastFollowing(f, triggerMonth) < horizon;
    }

    /**
     * Last month in which the follower may be done: the lag, or if it is possible in none of those months the first in which it
     * is; the horizon if that lies beyond.
     */
    int lastFollowing(FollowOn f, int triggerMonth) {
        int first = triggerMonth + f.minLagMonths();
        int possible = first < horizon ? nextPossible[f.follower()][first] : horizon;
        return possible < horizon ? Math.max(possible, triggerMonth + f.maxLagMonths()) : horizon;
    }
}
