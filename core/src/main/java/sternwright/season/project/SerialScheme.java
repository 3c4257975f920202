package sternwright.season.project;

import java.util.Arrays;

/** Turns activity lists into schedules, forwards or backwards, and justifies them; one instance per thread. */
final class SerialScheme {
    private final ProjectArrays p;
    private final long[] free;
    private final int[] first;
    private final int[] next;
    private final int[] work;
    private final int[] begin;
    private int used;

    /** Schedules made so far. */
    long schedules;

    SerialScheme(ProjectArrays p) {
        this.p = p;
        free = new long[p.horizon + 2];
        Arrays.fill(free, p.capacity | ProjectArrays.GUARD);
        first = new int[p.horizon + 2];
        next = new int[p.n];
        work = new int[p.n];
        begin = new int[p.n];
    }

    /** Schedules the list forwards; ends are left in {@code end}. Returns the makespan. */
    int forwards(int[] list, int[] end) {
        return schedule(list, 0, p.n, 1, p.before, end);
    }

    private int schedule(int[] list, int from, int to, int step, int[][] waitsFor, int[] end) {
        Arrays.fill(free, 0, used + 1, p.capacity | ProjectArrays.GUARD);
        schedules++;
        int last = 0;
        for (int at = from; at != to; at += step) {
            int i = list[at];
            int start = 0;
            for (int b : waitsFor[i]) {
                start = Math.max(start, end[b]);
            }
            int finish = p.demand[i] == 0 ? start + p.duration[i] : fit(start, p.duration[i], p.demand[i]);
            end[i] = finish;
            last = Math.max(last, finish);
        }
        used = last;
        return last;
    }

    /** End of the first stretch from {@code start} on in which {@code demand} is free for {@code length}; takes it. */
    private int fit(int start, int length, long demand) {
        int begin = start;
        int end = begin + length;
        for (int t = begin; t < end; t++) {
            if ((free[t] - demand & ProjectArrays.GUARD) != ProjectArrays.GUARD) {
                begin = t + 1;
                end = begin + length;
            }
        }
        for (int t = begin; t < end; t++) {
            free[t] -= demand;
        }
        return end;
    }

    /**
     * Right and left justification until it does not get shorter. The list is put into the order of the starts.
     *
     * @param end ends of the activities, as left by {@link #forwards}
     * @return the makespan
     */
    int justify(int[] list, int[] end, int makespan) {
        int best = makespan;
        while (true) {
            byTime(end, best, work);
            int back = schedule(work, p.n - 1, -1, -1, p.after, end);
            for (int i = 0; i < p.n; i++) {
                end[i] = back - end[i];
            }
            byTime(end, back, list);
            int forth = schedule(list, 0, p.n, 1, p.before, end);
            if (forth >= best) {
                byStart(list, end, forth);
                return forth;
            }
            best = forth;
        }
    }

    private void byStart(int[] list, int[] end, int makespan) {
        for (int i = 0; i < p.n; i++) {
            begin[i] = end[i] - p.duration[i];
        }
        byTime(begin, makespan, list);
    }

    /**
     * Sorts the activities by {@code time}; of equal ones those with small numbers stand first, so that precedence is kept.
     */
    private void byTime(int[] time, int latest, int[] out) {
        Arrays.fill(first, 0, latest + 1, -1);
        for (int i = p.n - 1; i >= 0; i--) {
            next[i] = first[time[i]];
            first[time[i]] = i;
        }
        int at = 0;
        for (int t = 0; t <= latest; t++) {
            for (int i = first[t]; i >= 0; i = next[i]) {
                out[at++] = i;
            }
        }
    }
}
