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
        length = ops.stream().mapToInt(Operation::lengthQ).toArray();
        earliest = ops.stream().mapToInt(Operation::earliestQ).toArray();
        latest = ops.stream()
                .mapToInt(o -> Math.min(o.latestEndQ(), quarters) - o.lengthQ())
                .toArray();
        skill = ops.stream().mapToInt(Operation::skill).toArray();
        hands = ops.stream().mapToInt(Operation::hands).toArray();
        liftClass = ops.stream().mapToInt(Operation::liftClass).toArray();
        half = ops.stream().mapToInt(Operation::half).toArray();
        due = ops.stream().mapToInt(o -> o.due().byQ()).toArray();
        latePerQ = ops.stream().mapToInt(o -> o.due().latePerQ()).toArray();
        earlyPerQ = ops.stream().mapToInt(o -> o.due().earlyPerQ()).toArray();
        onDay = onDay(problem.yard(), ops);
        promised = promised(problem);
        lags = lags(problem);
        stayLift = problem.stays().stream().mapToInt(Stay::lift).toArray();
        stayLaunch = problem.stays().stream().mapToInt(Stay::launch).toArray();
        stayClass = problem.stays().stream().mapToInt(Stay::placeClass).toArray();
        stay = stays(problem);
        needs = ops.stream().map(SeasonArrays::needs).toArray(int[][]::new);
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
        int days = startQ / quartersPerDay != promise / quartersPerDay
                ? problem.weights().promiseMoved()
                : 0;
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

    private static boolean[][] onDay(Yard yard, List<Operation> ops) {
        List<boolean[]> rows = new ArrayList<>();
        for (var set : yard.daySets()) {
            boolean[] row = new boolean[yard.axis().days()];
            set.days().stream().filter(d -> d >= 0 && d < row.length).forEach(d -> row[d] = true);
            rows.add(row);
        }
        boolean[] any = {};
        return ops.stream().map(o -> o.days() < 0 ? any : rows.get(o.days())).toArray(boolean[][]::new);
    }

    private static int[] promised(SeasonProblem problem) {
        int[] promised = new int[problem.operations().size()];
        Arrays.fill(promised, NONE);
        for (Promise p : problem.promises()) {
            promised[p.operation()] = p.startQ();
        }
        return promised;
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
        return operation.needs().stream()
                .flatMapToInt((Need need) -> java.util.stream.IntStream.of(need.pool(), need.amount()))
                .toArray();
    }

    private static int[][] lags(SeasonProblem problem) {
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < problem.operations().size(); i++) {
            lists.add(new ArrayList<>());
        }
        for (Lag lag : problem.lags()) {
            lists.get(lag.before()).addAll(List.of(lag.after(), lag.minQ(), lag.maxQ()));
            lists.get(lag.after()).addAll(List.of(lag.before(), -lag.maxQ(), -lag.minQ()));
        }
        return lists.stream().map(SeasonArrays::ints).toArray(int[][]::new);
    }

    private static int[][] grouped(int[] groupOf, int groups) {
        List<List<Integer>> lists = new ArrayList<>();
        for (int g = 0; g < groups; g++) {
            lists.add(new ArrayList<>());
        }
        for (int i = 0; i < groupOf.length; i++) {
            lists.get(groupOf[i]).add(i);
        }
        return lists.stream().map(SeasonArrays::ints).toArray(int[][]::new);
    }

    /** Names of the kinds in limit {@code limit} of people, such as "engine or drive". */
    public String skillsIn(int limit) {
        BitSet set = new BitSet();
        Arrays.stream(people.kindsOf[limit]).forEach(set::set);
        return String.join(
                " or ", set.stream().mapToObj(problem.yard().skills()::get).toList());
    }
}
