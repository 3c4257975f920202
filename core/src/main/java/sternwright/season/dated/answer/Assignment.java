package sternwright.season.dated.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Who serves which job, one quarter at a time. */
final class Assignment {
    /** Nobody serves it. */
    static final int NOBODY = -1;

    private final List<List<Integer>> able;
    private final int[] capacity;
    private final List<List<Integer>> jobsOf = new ArrayList<>();
    private final int[] server;

    private Assignment(List<List<Integer>> able, int[] capacity) {
        this.able = able;
        this.capacity = capacity;
        server = new int[able.size()];
        Arrays.fill(server, NOBODY);
        for (int s = 0; s < capacity.length; s++) {
            jobsOf.add(new ArrayList<>());
        }
    }

    /**
     * Serves as many jobs as can be served.
     *
     * @param able for each job the servers that can do it, the preferred first
     * @param capacity jobs that each server can do at once
     * @param keep for each job the server that had begun it, or {@link #NOBODY}
     * @return the server of each job, or {@link #NOBODY}
     */
    static int[] of(List<List<Integer>> able, int[] capacity, int[] keep) {
        Assignment assignment = new Assignment(able, capacity);
        for (int job = 0; job < keep.length; job++) {
            if (keep[job] != NOBODY && able.get(job).contains(keep[job]) && assignment.free(keep[job])) {
                assignment.give(job, keep[job]);
            }
        }
        for (int job = 0; job < keep.length; job++) {
            if (assignment.server[job] == NOBODY) {
                assignment.serve(job, new boolean[capacity.length]);
            }
        }
        return assignment.server;
    }

    private boolean free(int s) {
        return jobsOf.get(s).size() < capacity[s];
    }

    private void give(int job, int s) {
        server[job] = s;
        jobsOf.get(s).add(job);
    }

    private boolean serve(int job, boolean[] asked) {
        for (int s : able.get(job)) {
            if (!asked[s] && free(s)) {
                give(job, s);
                return true;
            }
        }
        for (int s : able.get(job)) {
            if (asked[s]) {
                continue;
            }
            asked[s] = true;
            for (Integer other : List.copyOf(jobsOf.get(s))) {
                jobsOf.get(s).remove(other);
                server[other] = NOBODY;
                if (serve(other, asked)) {
                    give(job, s);
                    return true;
                }
                give(other, s);
            }
        }
        return false;
    }
}
