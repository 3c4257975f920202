package sternwright.season.check;

import java.util.Arrays;
import java.util.List;

/** Largest matching of jobs to suppliers that take a given number of jobs each, by augmenting paths. */
final class Matching {
    private final List<List<Integer>> able;
    private final int[] room;
    private final List<List<Integer>> taken;
    private final boolean[] seen;

    private Matching(List<List<Integer>> able, int[] room) {
        this.able = able;
        this.room = room;
        taken = java.util.stream.IntStream.range(0, room.length)
                .mapToObj(s -> (List<Integer>) new java.util.ArrayList<Integer>())
                .toList();
        seen = new boolean[room.length];
    }

    /**
     * How many of the jobs find no supplier.
     *
     * @param able for each job the suppliers that can take it
     * @param room for each supplier how many jobs it takes
     */
    static int unmatched(List<List<Integer>> able, int[] room) {
        Matching matching = new Matching(able, room);
        int left = 0;
        for (int job = 0; job < able.size(); job++) {
            Arrays.fill(matching.seen, false);
            if (!matching.augment(job)) {
                left++;
            }
        }
        return left;
    }

    private boolean augment(int job) {
        for (int supplier : able.get(job)) {
            if (seen[supplier]) {
                continue;
            }
            seen[supplier] = true;
            List<Integer> jobs = taken.get(supplier);
            if (jobs.size() < room[supplier]) {
                jobs.add(job);
                return true;
            }
            for (int at = 0; at < jobs.size(); at++) {
                if (augment(jobs.get(at))) {
                    jobs.set(at, job);
                    return true;
                }
            }
        }
        return false;
    }
}
