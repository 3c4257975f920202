package sternwright.season.project;

import java.util.SplittableRandom;

/** A population of activity lists, every one justified; the lists are crossed, or a stretch of one is shuffled. */
final class Population {
    private final ProjectArrays p;
    private final SerialScheme scheme;
    private final SplittableRandom random;
    private final int[][] lists;
    private final int[] length;
    private final boolean[] taken;
    private final int[] waiting;
    private int[] child;
    private final int[] end;
    private int[] bestList;
    private int best = Integer.MAX_VALUE;
    private int idle;

    Population(ProjectArrays p, SplittableRandom random, int size) {
        this.p = p;
        this.random = random;
        scheme = new SerialScheme(p);
        lists = new int[size][p.n];
        length = new int[size];
        taken = new boolean[p.n];
        waiting = new int[p.n];
        child = new int[p.n];
        end = new int[p.n];
        bestList = new int[p.n];
        found(0);
    }

    long schedules() {
        return scheme.schedules;
    }

    int best() {
        return best;
    }

    int[] bestList() {
        return bestList;
    }

    /** Takes in a list found elsewhere, in place of the worst. */
    void takeIn(int[] list, int makespan) {
        int worst = worst();
        if (makespan < length[worst]) {
            System.arraycopy(list, 0, lists[worst], 0, p.n);
            length[worst] = makespan;
            keep(list, makespan);
        }
    }

    /** New lists, drawn with a bias to those with a long tail, in place of all from {@code from} on. */
    private void found(int from) {
        for (int x = from; x < lists.length; x++) {
            sampleInto(lists[x]);
            int makespan = scheme.forwards(lists[x], end);
            length[x] = scheme.justify(lists[x], end, makespan);
            keep(lists[x], length[x]);
        }
        idle = 0;
    }

    private void sampleInto(int[] list) {
        int[] ready = new int[p.n];
        int count = 0;
        for (int i = 0; i < p.n; i++) {
            waiting[i] = p.before[i].length;
            if (waiting[i] == 0) {
                ready[count++] = i;
            }
        }
        for (int at = 0; at < p.n; at++) {
            int pick = random.nextInt(count);
            for (int tries = 0; tries < 2; tries++) {
                int other = random.nextInt(count);
                pick = p.tail[ready[other]] > p.tail[ready[pick]] ? other : pick;
            }
            int i = ready[pick];
            ready[pick] = ready[--count];
            list[at] = i;
            for (int s : p.after[i]) {
                if (--waiting[s] == 0) {
                    ready[count++] = s;
                }
            }
        }
    }

    /** One more child. */
    void step() {
        int mother = tournament();
        if (random.nextInt(3) == 0) {
            shuffleStretch(lists[mother]);
        } else {
            cross(lists[mother], lists[tournament()]);
            if (random.nextInt(3) == 0) {
                swapNeighbours(1 + random.nextInt(4));
            }
        }
        int makespan = scheme.forwards(child, end);
        if (makespan <= best * 1.10 + 2) {
            makespan = scheme.justify(child, end, makespan);
        }
        enter(mother, makespan);
        if (idle > 60 * lists.length) {
            refresh();
        }
    }

    private void enter(int mother, int makespan) {
        idle++;
        if (makespan < best) {
            idle = 0;
        }
        keep(child, makespan);
        int loser = makespan <= length[mother] && random.nextInt(2) == 0 ? mother : tournamentOfWorst();
        if (makespan < length[loser] || makespan == length[loser] && random.nextInt(2) == 0) {
            int[] swap = lists[loser];
            lists[loser] = child;
            child = swap;
            length[loser] = makespan;
        }
    }

    private void keep(int[] list, int makespan) {
        if (makespan < best) {
            best = makespan;
            bestList = list.clone();
        }
    }

    /** The best few stay, the others are drawn anew. */
    private void refresh() {
        for (int x = 0; x < lists.length / 8; x++) {
            int least = x;
            for (int y = x; y < lists.length; y++) {
                least = length[y] < length[least] ? y : least;
            }
            int[] swap = lists[x];
            lists[x] = lists[least];
            lists[least] = swap;
            int value = length[x];
            length[x] = length[least];
            length[least] = value;
        }
        found(lists.length / 8);
    }

    private int tournament() {
        int one = random.nextInt(lists.length);
        int two = random.nextInt(lists.length);
        return length[one] <= length[two] ? one : two;
    }

    private int tournamentOfWorst() {
        int one = random.nextInt(lists.length);
        int two = random.nextInt(lists.length);
        return length[one] >= length[two] ? one : two;
    }

    private int worst() {
        int worst = 0;
        for (int x = 1; x < lists.length; x++) {
            worst = length[x] > length[worst] ? x : worst;
        }
        return worst;
    }

    /** Beginning and end of one list, the stretch between in the order of the other. */
    private void cross(int[] mother, int[] father) {
        int from = random.nextInt(p.n);
        int to = from + 1 + random.nextInt(p.n - from);
        System.arraycopy(mother, 0, child, 0, from);
        java.util.Arrays.fill(taken, false);
        for (int at = from; at < to; at++) {
            taken[mother[at]] = true;
        }
        int at = from;
        for (int i : father) {
            if (taken[i]) {
                child[at++] = i;
            }
        }
        System.arraycopy(mother, to, child, to, p.n - to);
    }

    /** A stretch of the list in a new random order that keeps precedence. */
    private void shuffleStretch(int[] list) {
        System.arraycopy(list, 0, child, 0, p.n);
        int size = Math.min(p.n, 4 + random.nextInt(12));
        int from = random.nextInt(p.n - size + 1);
        swapWithin(from, from + size, 2 * size);
    }

    private void swapNeighbours(int times) {
        swapWithin(0, p.n, times);
    }

    private void swapWithin(int from, int to, int times) {
        for (int t = 0; t < times; t++) {
            int x = from + random.nextInt(to - from);
            int y = from + random.nextInt(to - from);
            move(x, y);
        }
    }

    /** Moves the activity at {@code x} towards {@code y} as far as precedence lets it. */
    private void move(int x, int y) {
        int i = child[x];
        int at = x;
        int step = y > x ? 1 : -1;
        int[] blocks = y > x ? p.after[i] : p.before[i];
        while (at != y && !contains(blocks, child[at + step])) {
            child[at] = child[at + step];
            at += step;
        }
        child[at] = i;
    }

    private static boolean contains(int[] list, int value) {
        for (int x : list) {
            if (x == value) {
                return true;
            }
        }
        return false;
    }
}
