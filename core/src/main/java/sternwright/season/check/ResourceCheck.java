package sternwright.season.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sternwright.season.Axis;
import sternwright.season.Need;
import sternwright.season.Operation;
import sternwright.season.PlaceClass;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.Stay;
import sternwright.season.Yard;
import sternwright.season.check.Violation.Kind;

/** Hoists, places, people and pools, quarter by quarter. */
final class ResourceCheck {
    private final SeasonProblem problem;
    private final Yard yard;
    private final Axis axis;
    private final SeasonPlan plan;
    private final List<Violation> found;
    private final int[] extra;
    private final int[] peaks;
    private final List<List<Integer>> active;
    private final List<Set<Integer>> down;
    private final List<Set<Integer>> away;
    private final Map<Integer, List<Integer>> presentBySkill = new HashMap<>();
    private int presentOn = -1;

    ResourceCheck(SeasonProblem problem, SeasonPlan plan, List<Violation> found) {
        this.problem = problem;
        this.plan = plan;
        this.found = found;
        yard = problem.yard();
        axis = yard.axis();
        extra = new int[axis.weeks()];
        peaks = new int[axis.weeks()];
        active = new ArrayList<>();
        for (int q = 0; q < axis.quarters(); q++) {
            active.add(new ArrayList<>());
        }
        for (int i = 0; i < plan.startQ().size(); i++) {
            for (int q = plan.startQ().get(i); q < plan.endQ(problem, i); q++) {
                active.get(q).add(i);
            }
        }
        down = yard.hoists().stream()
                .map(h -> (Set<Integer>) new HashSet<>(h.downDays()))
                .toList();
        away = yard.technicians().stream()
                .map(t -> (Set<Integer>) new HashSet<>(t.awayDays()))
                .toList();
    }

    /** Checks all; returns the extra hands of every week. */
    int[] all() {
        for (int q = 0; q < axis.quarters(); q++) {
            hoists(q);
            people(q);
            pools(q);
        }
        places();
        for (int week = 0; week < extra.length; week++) {
            int most = yard.extraHandsByWeek().get(week);
            if (extra[week] > most) {
                add(
                        Kind.PEOPLE,
                        "week " + week + " needs " + extra[week] + " extra hands, at most " + most + " can be had");
            }
        }
        return extra;
    }

    int[] peaks() {
        return peaks;
    }

    private void hoists(int q) {
        List<List<Integer>> lifts = new ArrayList<>();
        for (int i : active.get(q)) {
            int liftClass = problem.operations().get(i).liftClass();
            if (liftClass >= 0) {
                lifts.add(yard.liftClasses().get(liftClass).hoists());
            }
        }
        if (lifts.isEmpty()) {
            return;
        }
        int[] slots = new int[yard.hoists().size()];
        for (int h = 0; h < slots.length; h++) {
            boolean works = !down.get(h).contains(axis.dayOf(q));
            slots[h] = works ? yard.hoists().get(h).slotsByQuarter().get(q % axis.quartersPerDay()) : 0;
        }
        int left = Matching.unmatched(lifts, slots);
        if (left > 0) {
            add(Kind.HOIST, lifts.size() + " lifts and launches at quarter " + q + ", " + left + " without a hoist");
        }
    }

    private void people(int q) {
        List<List<Integer>> jobs = new ArrayList<>();
        for (int i : active.get(q)) {
            Operation o = problem.operations().get(i);
            if (o.skill() >= 0) {
                jobs.addAll(Collections.nCopies(o.hands(), present(o.skill(), q)));
            }
        }
        int week = axis.weekOf(q);
        peaks[week] = Math.max(peaks[week], jobs.size());
        if (!jobs.isEmpty()) {
            int[] one = new int[yard.technicians().size()];
            java.util.Arrays.fill(one, 1);
            extra[week] = Math.max(extra[week], Matching.unmatched(jobs, one));
        }
    }

    /** Who is there for a skill; asked for each hand of each operation, so that it is remembered for the day. */
    private List<Integer> present(int skill, int q) {
        if (axis.dayOf(q) != presentOn) {
            presentOn = axis.dayOf(q);
            presentBySkill.clear();
        }
        return presentBySkill.computeIfAbsent(skill, s -> presentFor(s, q));
    }

    private List<Integer> presentFor(int skill, int q) {
        List<Integer> present = new ArrayList<>();
        for (int t = 0; t < yard.technicians().size(); t++) {
            if (yard.technicians().get(t).skills().contains(skill)
                    && !away.get(t).contains(axis.dayOf(q))) {
                present.add(t);
            }
        }
        return present;
    }

    private void pools(int q) {
        int[] used = new int[yard.pools().size()];
        for (int i : active.get(q)) {
            for (Need need : problem.operations().get(i).needs()) {
                used[need.pool()] += need.amount();
            }
        }
        for (int p = 0; p < used.length; p++) {
            if (used[p] > yard.pools().get(p).capacity()) {
                add(
                        Kind.POOL,
                        used[p] + " of " + yard.pools().get(p).name() + " in use at quarter " + q + ", there are "
                                + yard.pools().get(p).capacity());
            }
        }
    }

    private void places() {
        List<PlaceClass> classes = yard.placeClasses();
        int[][] standing = new int[axis.quarters()][classes.size()];
        for (Stay stay : problem.stays()) {
            int end = plan.endQ(problem, stay.launch());
            for (int q = plan.startQ().get(stay.lift()); q < end; q++) {
                standing[q][stay.placeClass()]++;
            }
        }
        for (int q = 0; q < standing.length; q++) {
            int free = 0;
            for (int c = classes.size() - 1; c >= 0; c--) {
                free += classes.get(c).places() - standing[q][c];
                if (free < 0) {
                    add(
                            Kind.PLACE,
                            "at quarter " + q + " " + -free + " boats too many stand ashore in class "
                                    + classes.get(c).name() + " and longer");
                    break;
                }
            }
        }
    }

    private void add(Kind kind, String message) {
        found.add(new Violation(kind, message));
    }
}
