package sternwright.season.replan;

import java.util.List;
import sternwright.season.Operation;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;

/** Finds, for a date that moved, the event behind it. */
final class Reasons {
    private final SeasonProblem before;
    private final SeasonPlan old;
    private final List<Event> events;

    Reasons(SeasonProblem before, SeasonPlan old, List<Event> events) {
        this.before = before;
        this.old = old;
        this.events = events;
    }

    String of(int operation, int newStartQ) {
        int visit = visit(operation);
        for (Event event : events) {
            if (event instanceof Event.PartLate e && visit(e.operation()) == visit) {
                return "the part for " + before.operations().get(e.operation()).name() + " comes late";
            }
            if (event instanceof Event.OwnersDate e && visit(e.operation()) == visit) {
                return "the owner asked for another date";
            }
        }
        for (Event event : events) {
            if (event instanceof Event.HoistDown e && lifts(visit, e)) {
                return before.yard().hoists().get(e.hoist()).name() + " is out of order on its day";
            }
            if (event instanceof Event.PersonAway e && works(visit, e)) {
                return before.yard().technicians().get(e.technician()).name() + " is away when its work was planned";
            }
        }
        for (Event event : events) {
            if (event instanceof Event.EmergencyLift e) {
                return "makes room for the emergency lift of " + e.boat();
            }
        }
        return (newStartQ < old.startQ().get(operation) ? "brought forward" : "put back")
                + " to make room for a boat that had to move";
    }

    private int visit(int operation) {
        return before.halves().get(before.operations().get(operation).half()).visit();
    }

    private boolean lifts(int visit, Event.HoistDown e) {
        return touches(
                visit,
                e.fromDay(),
                e.toDay(),
                o -> o.liftClass() >= 0
                        && before.yard()
                                .liftClasses()
                                .get(o.liftClass())
                                .hoists()
                                .contains(e.hoist()));
    }

    private boolean works(int visit, Event.PersonAway e) {
        List<Integer> skills = before.yard().technicians().get(e.technician()).skills();
        return touches(visit, e.fromDay(), e.toDay(), o -> skills.contains(o.skill()));
    }

    private boolean touches(int visit, int fromDay, int toDay, java.util.function.Predicate<Operation> uses) {
        for (int i = 0; i < old.startQ().size(); i++) {
            Operation o = before.operations().get(i);
            if (before.halves().get(o.half()).visit() == visit && uses.test(o)) {
                int first = before.yard().axis().dayOf(old.startQ().get(i));
                int last = before.yard().axis().dayOf(Math.max(old.startQ().get(i), old.endQ(before, i) - 1));
                if (first <= toDay && last >= fromDay) {
                    return true;
                }
            }
        }
        return false;
    }
}
