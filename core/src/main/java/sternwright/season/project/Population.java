package sternwright.season.project;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import sternwright.season.search.Budget;

/**
 * A population of activity lists, every one justified; the lists are crossed, or a stretch of one is shuffled. No two members are the
 * same schedule: without that it is soon a crowd of one.
 */
final class Population {
    private static final int FEWEST = 200;
    private static final int MOST = 4000;

    /** Part of the budget in which the first members are drawn, beyond the fewest: a longer search lives on a larger population. */
    private static final double FOUNDING = 0.007;

    /** Births without a shorter schedule, for each member, after which most members are drawn anew. */
    private static final int PATIENCE = 60;

    private static final Comparator<Member> BETTER_FIRST =
            Comparator.<Member>comparingInt(m -> m.makespan).thenComparingLong(m -> m.endSum);

    private final ProjectArrays p;
    private final SerialScheme scheme;
    private final SplittableRandom random;
    private final List<Member> members = new ArrayList<>();
    private final Set<Long> known = new HashSet<>();
    private final boolean[] taken;
    private final int[] waiting;
    private final int[] end;
    private Member born;
    private int[] child;
    private int[] bestList;
    private int best = Integer.MAX_VALUE;
    private int idle;

    /** One list with its schedule: of equal makespans the one whose activities end earlier on the whole has the thinner tail. */
    private static final class Member {
        int[] list;
        int makespan;
        long endSum;
        long mark;

        Member(int activities) {
            list = new int[activities];
        }

        void read(int[] end, int length) {
            makespan = length;
            endSum = 0;
            mark = 1;
            for (int e : end) {
                endSum += e;
                mark = (mark ^ e) * 0x9E37_79B9_7F4A_7C15L;
                mark ^= mark >>> 29;
            }
        }
    }

    Population(ProjectArrays p, SplittableRandom random) {
        this.p = p;
        this.random = random;
        scheme = new SerialScheme(p);
        taken = new boolean[p.n];
        waiting = new int[p.n];
        end = new int[p.n];
        born = new Member(p.n);
        child = born.list;
        bestList = new int[p.n];
    }

    long schedules() {
        return scheme.schedules;
    }

    /** Children looked at so far; each takes about three schedules. */
    long children() {
        return scheme.schedules / 3;
    }

    int best() {
        return best;
    }

    int[] bestList() {
        return bestList;
    }

    /** Draws the first members, more of them the more the budget allows; does nothing if they are there. */
    void found(Budget budget, int bound) {
        double until = members.isEmpty() ? 1 : 0;
        while (members.isEmpty() || members.size() < MOST && best > bound && budget.spent(children()) < until) {
            draw();
            if (members.size() == FEWEST) {
                until = budget.spent(children()) + FOUNDING;
            }
        }
    }

    /** Takes in a list found elsewhere, in place of the worst. */
    void takeIn(int[] list, int makespan) {
        Member worst = members.stream().max(BETTER_FIRST).orElseThrow();
        if (makespan < worst.makespan) {
            System.arraycopy(list, 0, child, 0, p.n);
            born.read(end, scheme.forwards(child, end));
            keep(born);
            replace(worst);
        }
    }

    /** One more list, drawn with a bias to those with a long tail. */
    private void draw() {
        Member member = new Member(p.n);
        sampleInto(member.list);
        int makespan = scheme.forwards(member.list, end);
        member.read(end, scheme.justify(member.list, end, makespan));
        keep(member);
        known.add(member.mark);
        members.add(member);
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
        Member mother = tournament();
        if (random.nextInt(3) == 0) {
            shuffleStretch(mother.list);
        } else {
            cross(mother.list, tournament().list);
            if (random.nextInt(3) == 0) {
                swapNeighbours(1 + random.nextInt(4));
            }
        }
        int makespan = scheme.forwards(child, end);
        if (makespan <= best * 1.10 + 2) {
            makespan = scheme.justify(child, end, makespan);
        }
        born.read(end, makespan);
        enter(mother);
        if (idle > PATIENCE * members.size()) {
            refresh();
        }
    }

    private void enter(Member mother) {
        idle++;
        keep(born);
        if (known.contains(born.mark)) {
            return;
        }
        boolean follows = BETTER_FIRST.compare(born, mother) <= 0 && random.nextInt(2) == 0;
        Member loser = follows ? mother : tournamentOfWorst();
        if (BETTER_FIRST.compare(born, loser) <= 0) {
            replace(loser);
        }
    }

    /** Puts the child in the place of a member, whose list is used for the next one. */
    private void replace(Member loser) {
        known.remove(loser.mark);
        known.add(born.mark);
        int[] list = loser.list;
        loser.list = born.list;
        loser.makespan = born.makespan;
        loser.endSum = born.endSum;
        loser.mark = born.mark;
        born.list = list;
        child = list;
    }

    private void keep(Member member) {
        if (member.makespan < best) {
            best = member.makespan;
            bestList = member.list.clone();
            idle = 0;
        }
    }

    /** The best few stay, the others are drawn anew. */
    private void refresh() {
        int size = members.size();
        members.sort(BETTER_FIRST);
        List<Member> gone = members.subList(Math.max(1, size / 8), size);
        gone.forEach(member -> known.remove(member.mark));
        gone.clear();
        while (members.size() < size) {
            draw();
        }
        idle = 0;
    }

    private Member tournament() {
        Member one = members.get(random.nextInt(members.size()));
        Member two = members.get(random.nextInt(members.size()));
        return BETTER_FIRST.compare(one, two) <= 0 ? one : two;
    }

    private Member tournamentOfWorst() {
        Member one = members.get(random.nextInt(members.size()));
        Member two = members.get(random.nextInt(members.size()));
        return BETTER_FIRST.compare(one, two) >= 0 ? one : two;
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
