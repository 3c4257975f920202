package sternwright.season.arrays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import sternwright.season.Axis;
import sternwright.season.Due;
import sternwright.season.Half;
import sternwright.season.Lag;
import sternwright.season.Need;
import sternwright.season.Operation;
import sternwright.season.Promise;
import sternwright.season.SeasonProblem;
import sternwright.season.Stay;
import sternwright.season.Yard;

/** One season as arrays: entry i belongs to operation i. Nothing here changes after construction. */
public final class SeasonArrays {
    /** Stands for "none". */
    public static final int NONE = Operation.NONE;

    /** The season these arrays were made from. */
    public final SeasonProblem problem;

    /** Number of operations. */
    public final int n;

    /** Quarters on the axis. */
    public final int quarters;

    /** Quarters in a week. */
    public final int quartersPerWeek;

    /** Quarters in a day. */
    public final int quartersPerDay;

    /** Lengths in quarters. */
    public final int[] length;

    /** Earliest starts after the lags have been followed. */
    public final int[] earliest;

    /** Latest starts after the lags have been followed. */
    public final int[] latest;

    /** Latest starts that keep every date that can be kept by following operations; never before {@link #earliest}. */
    public final int[] easyLatest;

    /** Skills, hands of it, lift classes, days on which the start must lie, halves. */
    public final int[] skill;

    /** Hands needed at once. */
    public final int[] hands;

    /** Lift classes. */
    public final int[] liftClass;

    /** Whether an operation may start on a day; the same row for every operation with the same days; empty if any day does. */
    public final boolean[][] onDay;

    /** Half of each operation. */
    public final int[] half;

    /** Due dates in quarters of the end. */
    public final int[] due;

    /** Cost per quarter late. */
    public final int[] latePerQ;

    /** Cost per quarter early. */
    public final int[] earlyPerQ;

    /** Promised starts, or {@link #NONE}. */
    public final int[] promised;

    /** What it costs that a promise lands on another day. */
    public final int[] movedCost;

    /** Distances: for each operation triples (other operation, least start difference, greatest start difference). */
    public final int[][] lags;

    /** Stay of the lift or launch, or {@link #NONE}. */
    public final int[] stay;

    /** Lift of each stay. */
    public final int[] stayLift;

    /** Launch of each stay. */
    public final int[] stayLaunch;

    /** Class of each stay. */
    public final int[] stayClass;

    /** Pairs (pool, amount) of each operation. */
    public final int[][] needs;

    /** Operations of each half. */
    public final int[][] halfOperations;

    /** Halves of each visit. */
    public final int[][] visitHalves;

    /** Limits of people by skill. */
    public final Limits people;

    /** Limits of hoists by lift class. */
    public final Limits hoists;

    /** Limits of places by class. */
    public final Limits places;

    /** Limits of pools. */
    public final Limits pools;

    /** Most extra hands by week. */
    public final int[] extraHands;

    private SeasonArrays(SeasonProblem problem) {
        this.problem = problem;
        Axis axis = problem.yard().axis();
        List<Operation> ops = problem.operations();
        n = ops.size();
        quarters = axis.quarters();
        quartersPerWeek = axis.quartersPerWeek();
        quartersPerDay = axis.quartersPerDay();
        length = new int[n];
        earliest = new int[n];
        latest = new int[n];
        skill = new int[n];
        hands = new int[n];
        liftClass = new int[n];
        half = new int[n];
        due = new int[n];
        latePerQ = new int[n];
        earlyPerQ = new int[n];
        needs = new int[n][];
        read(ops);
        onDay = onDay(problem.yard(), ops);
        promised = new int[n];
        movedCost = new int[n];
        readPromises();
        lags = lags(problem);
        stayLift = problem.stays().stream().mapToInt(Stay::lift).toArray();
        stayLaunch = problem.stays().stream().mapToInt(Stay::launch).toArray();
        stayClass = problem.stays().stream().mapToInt(Stay::placeClass).toArray();
        stay = stays(problem);
        halfOperations = grouped(half, problem.halves().size());
        int[] visit = problem.halves().stream().mapToInt(Half::visit).toArray();
        visitHalves = grouped(visit, problem.visits().size());
        people = YardLimits.people(problem.yard());
        hoists = YardLimits.hoists(problem.yard());
        places = YardLimits.places(problem.yard());
        pools = YardLimits.pools(problem.yard());
        extraHands = ints(problem.yard().extraHandsByWeek());
        Windows.tighten(this, earliest, latest);
        easyLatest = Windows.easyLatest(this);
    }

    /** The arrays of {@code problem}. */
    public static SeasonArrays of(SeasonProblem problem) {
        return new SeasonArrays(problem);
    }

    /** What it costs, beside people, that operation {@code i} starts at {@code startQ}. */
    public int startCost(int i, int startQ) {
        return dueCost(i, startQ) + promiseCost(i, startQ);
    }

    /** The cost of the due date alone. */
    public int dueCost(int i, int startQ) {
        int late = startQ + length[i] - due[i];
        return late > 0 ? late * latePerQ[i] : -late * earlyPerQ[i];
    }

    /** The cost of a moved promise alone. */
    public int promiseCost(int i, int startQ) {
        int promise = promised[i];
        if (promise < 0 || promise == startQ) {
            return 0;
        }
        int days = startQ / quartersPerDay != promise / quartersPerDay ? movedCost[i] : 0;
        return days + problem.weights().promisePerQ() * Math.abs(startQ - promise);
    }

    /** Whether the due date of operation {@code i} is a frost date. */
    public boolean frost(int i) {
        return problem.operations().get(i).due().kind() == Due.Kind.FROST;
    }

    /** Whether operation {@code i} may start on the day of {@code startQ}. */
    public boolean dayAllowed(int i, int startQ) {
        boolean[] row = onDay[i];
        return row.length == 0 || row[startQ / quartersPerDay];
    }

    private void readPromises() {
        Arrays.fill(promised, NONE);
        for (Promise p : problem.promises()) {
            if (p.free()) {
                continue;
            }
            promised[p.operation()] = p.startQ();
            boolean usual = p.movedCost() == Promise.USUAL;
            movedCost[p.operation()] = usual ? problem.weights().promiseMoved() : p.movedCost();
        }
    }

    private void read(List<Operation> operations) {
        for (int i = 0; i < n; i++) {
            read(i, operations.get(i));
        }
    }

    private void read(int i, Operation o) {
        length[i] = o.lengthQ();
        earliest[i] = o.earliestQ();
        latest[i] = Math.min(o.latestEndQ(), quarters) - o.lengthQ();
        skill[i] = o.skill();
        hands[i] = o.hands();
        liftClass[i] = o.liftClass();
        half[i] = o.half();
        due[i] = o.due().byQ();
        latePerQ[i] = o.due().latePerQ();
        earlyPerQ[i] = o.due().earlyPerQ();
        needs[i] = needs(o);
    }

    private static boolean[][] onDay(Yard yard, List<Operation> ops) {
        List<boolean[]> rows = new ArrayList<>();
        for (var set : yard.daySets()) {
            boolean[] row = new boolean[yard.axis().days()];
            set.days().stream().filter(d -> d >= 0 && d < row.length).forEach(d -> row[d] = true);
            rows.add(row);
        }
        boolean[] any = {};
        boolean[][] onDay = new boolean[ops.size()][];
        for (int i = 0; i < onDay.length; i++) {
            int days = ops.get(i).days();
            onDay[i] = days < 0 ? any : rows.get(days);
        }
        return onDay;
    }

    private static int[] stays(SeasonProblem problem) {
        int[] stay = new int[problem.operations().size()];
        Arrays.fill(stay, NONE);
        for (int s = 0; s < problem.stays().size(); s++) {
            stay[problem.stays().get(s).lift()] = s;
            stay[problem.stays().get(s).launch()] = s;
        }
        return stay;
    }

    private static int[] ints(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int[] needs(Operation operation) {
        int[] pairs = new int[2 * operation.needs().size()];
        for (int x = 0; x < operation.needs().size(); x++) {
            Need need = operation.needs().get(x);
            pairs[2 * x] = need.pool();
            pairs[2 * x + 1] = need.amount();
        }
        return pairs;
    }

    private static int[][] lags(SeasonProblem problem) {
        int[] count = new int[problem.operations().size()];
        for (Lag lag : problem.lags()) {
            count[lag.before()]++;
            count[lag.after()]++;
        }
        int[][] lags = new int[count.length][];
        for (int i = 0; i < count.length; i++) {
            lags[i] = new int[3 * count[i]];
        }
        for (int l = problem.lags().size() - 1; l >= 0; l--) {
            Lag lag = problem.lags().get(l);
            put(lags[lag.before()], --count[lag.before()], lag.after(), lag.minQ(), lag.maxQ());
            put(lags[lag.after()], --count[lag.after()], lag.before(), -lag.maxQ(), -lag.minQ());
        }
        return lags;
    }

    private static void put(int[] triples, int at, int other, int min, int max) {
        triples[3 * at] = other;
        triples[3 * at + 1] = min;
        triples[3 * at + 2] = max;
    }

    private static int[][] grouped(int[] groupOf, int groups) {
        int[] count = new int[groups];
        for (int g : groupOf) {
            count[g]++;
        }
        int[][] members = new int[groups][];
        for (int g = 0; g < groups; g++) {
            members[g] = new int[count[g]];
        }
        for (int i = groupOf.length - 1; i >= 0; i--) {
            members[groupOf[i]][--count[groupOf[i]]] = i;
        }
        return members;
    }

    /** Names of the kinds in limit {@code limit} of people, such as "engine or drive". */
    public String skillsIn(int limit) {
        BitSet set = new BitSet();
        Arrays.stream(people.kindsOf[limit]).forEach(set::set);
        return String.join(
                " or ", set.stream().mapToObj(problem.yard().skills()::get).toList());
    }
}
