package sternwright.season.project;

import java.util.Arrays;
import java.util.List;

/** A project as arrays; the demands of up to four resources are packed into one long, 15 bits each below a guard bit. */
final class ProjectArrays {
    private static final int BITS = 16;

    /** The guard bits: set in a difference as long as no resource is overdrawn. */
    static final long GUARD = 0x8000_8000_8000_8000L;

    final int n;
    final int[] duration;
    final long[] demand;
    final long capacity;
    final int[][] before;
    final int[][] after;
    final int horizon;

    /** Least time from the start of each activity to the end of the project. */
    final int[] tail;

    /** Earliest start of each activity by precedence alone. */
    final int[] head;

    final int bound;

    ProjectArrays(Project project) {
        n = project.activities().size();
        duration = project.activities().stream()
                .mapToInt(Project.Activity::duration)
                .toArray();
        demand = project.activities().stream().mapToLong(x -> pack(x.demands())).toArray();
        capacity = pack(project.capacities());
        before = project.activities().stream()
                .map(x -> x.after().stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
        after = reversed(before);
        horizon = Math.max(1, Arrays.stream(duration).sum());
        head = new int[n];
        tail = duration.clone();
        for (int i = 0; i < n; i++) {
            for (int b : before[i]) {
                head[i] = Math.max(head[i], head[b] + duration[b]);
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int s : after[i]) {
                tail[i] = Math.max(tail[i], duration[i] + tail[s]);
            }
        }
        bound = bound(project);
    }

    private static long pack(List<Integer> amounts) {
        long packed = 0;
        for (int r = 0; r < amounts.size(); r++) {
            packed |= (long) amounts.get(r) << (BITS * r);
        }
        return packed;
    }

    private static int[][] reversed(int[][] before) {
        int n = before.length;
        int[] count = new int[n];
        Arrays.stream(before).flatMapToInt(Arrays::stream).forEach(b -> count[b]++);
        int[][] after = new int[n][];
        for (int i = 0; i < n; i++) {
            after[i] = new int[count[i]];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int b : before[i]) {
                after[b][--count[b]] = i;
            }
        }
        return after;
    }

    /** The longest path, and for every head and tail the work that must fit between them. */
    private int bound(Project project) {
        int best = 0;
        for (int i = 0; i < n; i++) {
            best = Math.max(best, head[i] + tail[i]);
        }
        int[] heads = Arrays.stream(head).distinct().toArray();
        for (int r = 0; r < project.capacities().size(); r++) {
            int units = project.capacities().get(r);
            for (int h : heads) {
                best = Math.max(best, energyBound(project, r, units, h));
            }
        }
        return best;
    }

    private int energyBound(Project project, int r, int units, int from) {
        int best = 0;
        int[] rest = new int[n];
        for (int i = 0; i < n; i++) {
            rest[i] = tail[i] - duration[i];
        }
        for (int least : Arrays.stream(rest).distinct().toArray()) {
            long energy = 0;
            for (int i = 0; i < n; i++) {
                if (head[i] >= from && rest[i] >= least) {
                    energy += (long) duration[i]
                            * project.activities().get(i).demands().get(r);
                }
            }
            if (energy > 0) {
                best = Math.max(best, from + (int) ((energy + units - 1) / units) + least);
            }
        }
        return best;
    }
}
