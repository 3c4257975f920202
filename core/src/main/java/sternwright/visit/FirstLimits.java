package sternwright.visit;

import java.util.ArrayList;
import java.util.List;
import sternwright.visit.problem.Life;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkPhase;
import sternwright.visit.problem.WorkRules;

/**
 * Eases the first limit of works that cannot be done in time by anybody: the boat stands ashore until spring, say, and the work
 * is done afloat. They wait for the first month in which they can be done. Safety items are not eased: the clash is said.
 */
final class FirstLimits {
    private FirstLimits() {}

    static VisitProblem eased(VisitProblem problem) {
        List<Work> works = new ArrayList<>();
        for (Work w : problem.works()) {
            works.add(eased(problem, w));
        }
        return problem.withWorks(works, problem.followOns());
    }

    private static Work eased(VisitProblem problem, Work w) {
        WorkRules r = w.rules();
        boolean safety = r.maxLateMonths() == 0;
        if (safety || !w.life().bounded() || r.dueAtFirstVisit()) {
            return w;
        }
        int due = due(problem, w);
        int possible = firstPossible(problem, w);
        int late = possible - due;
        if (late <= r.maxLateFirstMonths() || due + r.maxLateFirstMonths() >= problem.horizon()) {
            return w;
        }
        return w.with(new WorkRules(
                r.maxLateMonths(), late, r.earliestFraction(), r.once(), r.dueAtFirstVisit(), r.mustFallIn()));
    }

    /** Last month that begins with life not over. */
    private static int due(VisitProblem problem, Work w) {
        int due = -1;
        for (int t = 0; t < problem.horizon() && used(w.life(), t) <= 1; t++) {
            due = t;
        }
        return due;
    }

    private static double used(Life life, int month) {
        double months = life.months() > 0 ? (life.monthsUsed() + month) / life.months() : 0;
        double hours = life.hours() > 0 ? (life.hoursUsed() + life.use().between(0, month)) / life.hours() : 0;
        return Math.max(months, hours);
    }

    private static int firstPossible(VisitProblem problem, Work w) {
        WorkPhase phase = w.phases().get(w.nextPhase());
        for (int t = 0; t < problem.horizon(); t++) {
            int month = t;
            boolean place = phase.places().stream()
                    .anyMatch(p -> problem.months().get(month).possible(p));
            boolean ripe = used(w.life(), t) >= w.rules().earliestFraction();
            if (place && ripe && phase.season().contains(problem.calendarMonth(t))) {
                return t;
            }
        }
        return problem.horizon();
    }
}
