package sternwright.season.replan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import sternwright.season.Due;
import sternwright.season.Half;
import sternwright.season.Hoist;
import sternwright.season.Lag;
import sternwright.season.Operation;
import sternwright.season.Promise;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.Stay;
import sternwright.season.Technician;
import sternwright.season.Visit;
import sternwright.season.Yard;

/** Turns a season, its plan in force and what has happened into the season that is left to plan. */
final class Disturbance {
    private final SeasonProblem before;
    private final SeasonPlan plan;
    private final int todayQ;
    private final List<Operation> operations;
    private final List<Visit> visits;
    private final List<Half> halves;
    private final List<Lag> lags;
    private final List<Stay> stays;
    private final List<Technician> technicians;
    private final List<Hoist> hoists;
    private final Set<Integer> released = new HashSet<>();

    Disturbance(SeasonProblem before, SeasonPlan plan, int todayQ) {
        this.before = before;
        this.plan = plan;
        this.todayQ = todayQ;
        operations = new ArrayList<>(before.operations());
        visits = new ArrayList<>(before.visits());
        halves = new ArrayList<>(before.halves());
        lags = new ArrayList<>(before.lags());
        stays = new ArrayList<>(before.stays());
        technicians = new ArrayList<>(before.yard().technicians());
        hoists = new ArrayList<>(before.yard().hoists());
    }

    SeasonProblem after(List<Event> events) {
        events.forEach(this::apply);
        int known = plan.startQ().size();
        for (int i = 0; i < known; i++) {
            int start = plan.startQ().get(i);
            Operation o = operations.get(i);
            operations.set(
                    i, start < todayQ ? o.begun(start) : o.within(Math.max(o.earliestQ(), todayQ), o.latestEndQ()));
        }
        Yard yard = before.yard().technicians(technicians).hoists(hoists);
        return new SeasonProblem(yard, visits, halves, operations, lags, stays, promises(), before.weights());
    }

    private void apply(Event event) {
        if (event instanceof Event.PersonAway e) {
            Technician t = technicians.get(e.technician());
            technicians.set(
                    e.technician(), new Technician(t.name(), t.skills(), with(t.awayDays(), e.fromDay(), e.toDay())));
        } else if (event instanceof Event.HoistDown e) {
            Hoist h = hoists.get(e.hoist());
            hoists.set(e.hoist(), new Hoist(h.name(), h.slotsByQuarter(), with(h.downDays(), e.fromDay(), e.toDay())));
        } else if (event instanceof Event.PartLate e) {
            Operation o = operations.get(e.operation());
            operations.set(e.operation(), o.within(Math.max(o.earliestQ(), e.notBeforeQ()), o.latestEndQ()));
        } else if (event instanceof Event.OwnersDate e) {
            ownersDate(e);
        } else if (event instanceof Event.EmergencyLift e) {
            emergency(e);
        }
    }

    private void ownersDate(Event.OwnersDate e) {
        Operation o = operations.get(e.operation());
        Due due = o.due();
        int earliest = Math.min(o.earliestQ(), Math.max(todayQ, e.byQ() - o.lengthQ()));
        Due moved = new Due(due.kind(), e.byQ(), Math.max(1, due.latePerQ()), due.earlyPerQ());
        operations.set(e.operation(), o.within(earliest, o.latestEndQ()).due(moved));
        released.add(e.operation());
    }

    private static List<Integer> with(List<Integer> days, int from, int to) {
        Set<Integer> all = new TreeSet<>(days);
        for (int day = from; day <= to; day++) {
            all.add(day);
        }
        return List.copyOf(all);
    }

    private void emergency(Event.EmergencyLift e) {
        visits.add(new Visit(e.boat(), "emergency"));
        halves.add(new Half(visits.size() - 1, "emergency"));
        int lift = add(hoisted("lift", e, Due.NONE));
        int last = lift;
        for (Event.Work w : e.work()) {
            last = following(last, ashore(w, e.fromQ()));
        }
        int launch = following(last, hoisted("launch", e, e.due()));
        stays.add(new Stay(lift, launch, e.placeClass()));
    }

    private int following(int last, Operation operation) {
        int next = add(operation);
        lags.add(Lag.endToStart(last, operations.get(last).lengthQ(), next));
        return next;
    }

    private Operation hoisted(String name, Event.EmergencyLift e, Due due) {
        int end = before.yard().axis().quarters();
        int half = halves.size() - 1;
        int none = Operation.NONE;
        return new Operation(name, half, 1, e.fromQ(), end, none, 0, e.liftClass(), none, List.of(), due);
    }

    private Operation ashore(Event.Work w, int fromQ) {
        int end = before.yard().axis().quarters();
        int half = halves.size() - 1;
        int none = Operation.NONE;
        return new Operation(w.name(), half, w.lengthQ(), fromQ, end, w.skill(), 1, none, none, List.of(), Due.NONE);
    }

    private int add(Operation operation) {
        operations.add(operation);
        return operations.size() - 1;
    }

    /** Dates still ahead that owners were given, except where the owner asked for another. */
    private List<Promise> promises() {
        return before.promises().stream()
                .filter(p -> p.startQ() >= todayQ && plan.startQ().get(p.operation()) >= todayQ)
                .filter(p -> !released.contains(p.operation()))
                .toList();
    }
}
