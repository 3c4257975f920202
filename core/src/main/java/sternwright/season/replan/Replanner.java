package sternwright.season.replan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import sternwright.season.Promise;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.check.SeasonCheck;
import sternwright.season.search.Budget;
import sternwright.season.search.SeasonSearch;
import sternwright.season.search.Watch;

/** Plans on after a disturbance. */
public final class Replanner {
    private final SeasonProblem before;
    private final SeasonProblem after;
    private final SeasonPlan old;
    private final List<Event> events;
    private final SeasonArrays a;
    private List<Integer> overruns = List.of();
    private SeasonPlan current;

    /**
     * A season after something has happened, with every promised date that can be kept kept: the first answer.
     *
     * @param before the season with its promises
     * @param old the plan in force
     * @param todayQ what starts before this quarter has begun and stays
     * @param events what has happened
     * @throws NoRoom if no plan is left even when all that has not begun may move
     */
    public Replanner(SeasonProblem before, SeasonPlan old, int todayQ, List<Event> events) {
        this.before = before;
        this.old = old;
        this.events = List.copyOf(events);
        SeasonProblem strict = new Disturbance(before, old, todayQ).after(events);
        SeasonProblem disturbed = strict.in(strict.yard().extraHands(handsForBegunWork(strict, old, todayQ)));
        Repair repair = new Repair(SeasonArrays.of(disturbed));
        if (!repair.without(old.startQ(), 1).isEmpty()) {
            Loosened loosened = Loosened.of(disturbed, old, todayQ);
            overruns = loosened.overruns();
            disturbed = loosened.season();
            repair = new Repair(SeasonArrays.of(disturbed));
            List<Integer> without = repair.without(old.startQ(), 1);
            if (!without.isEmpty()) {
                throw new NoRoom(without, disturbed);
            }
        }
        after = disturbed;
        a = SeasonArrays.of(after);
        current = proved(repair.starts(), "repair");
    }

    /** No plan is left after a disturbance. */
    public static final class NoRoom extends IllegalStateException {
        private static final long serialVersionUID = 1L;

        private final transient List<Integer> without;
        private final transient SeasonProblem season;

        NoRoom(List<Integer> without, SeasonProblem season) {
            super("after this no plan is left, even if every date that has not begun may move. Without room: "
                    + without.stream().limit(6).map(season::phrase).collect(Collectors.joining("; ")));
            this.without = List.copyOf(without);
            this.season = season;
        }

        /** The season that has no plan: what has begun is nailed in it. */
        public SeasonProblem season() {
            return season;
        }

        /** Operations without room. */
        public List<Integer> operations() {
            return without;
        }
    }

    /** Work that has begun goes on even if too few are there: those weeks may have as many extra hands as it needs. */
    private static List<Integer> handsForBegunWork(SeasonProblem disturbed, SeasonPlan old, int todayQ) {
        SeasonArrays arrays = SeasonArrays.of(disturbed);
        Timetable begun = new Timetable(arrays, 0);
        for (int i = 0; i < old.startQ().size(); i++) {
            if (old.startQ().get(i) < todayQ) {
                begun.add(i, old.startQ().get(i));
            }
        }
        List<Integer> hands = new ArrayList<>(disturbed.yard().extraHandsByWeek());
        for (int week = 0; week < hands.size(); week++) {
            hands.set(week, Math.max(hands.get(week), begun.extra[week]));
        }
        return hands;
    }

    private SeasonPlan proved(int[] starts, String how) {
        SeasonPlan plan = Plans.of(a, starts, how);
        var violations = SeasonCheck.of(after, plan);
        if (!violations.isEmpty()) {
            throw new IllegalStateException(
                    "the planner made a plan that its independent check refuses; please report this: " + violations);
        }
        return plan;
    }

    /** The season as it is now. */
    public SeasonProblem season() {
        return after;
    }

    /**
     * Operations that may now come later after begun work than the season allowed (a boat that stays ashore longer than agreed),
     * because otherwise no plan was left; mostly empty.
     */
    public List<Integer> overruns() {
        return overruns;
    }

    /** The best plan so far. */
    public SeasonPlan plan() {
        return current;
    }

    /** Searches on from the plan there is, beginning cold. */
    public SeasonPlan polish(Budget budget, long seed, Watch watch) {
        int[] starts = current.startQ().stream().mapToInt(Integer::intValue).toArray();
        int[] better = new SeasonSearch(a, SeasonSearch.Settings.polish(seed)).improve(starts, budget, watch);
        if (!Arrays.equals(starts, better)) {
            current = proved(better, "repair, then a cold search");
        }
        return current;
    }

    /** Promised dates that land on another day, in the order of their old dates. */
    public List<Move> moves() {
        Reasons reasons = new Reasons(before, old, events);
        List<Move> moves = new ArrayList<>();
        for (Promise p : before.promises()) {
            int start = current.startQ().get(p.operation());
            if (after.yard().axis().dayOf(start) != after.yard().axis().dayOf(p.startQ())) {
                moves.add(new Move(p.operation(), p.startQ(), start, reasons.of(p.operation(), start)));
            }
        }
        moves.sort(java.util.Comparator.comparingInt(Move::oldStartQ));
        return moves;
    }
}
