package sternwright.visit.sample;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import sternwright.visit.problem.MonthSpan;
import sternwright.visit.problem.VisitDemands;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkPhase;
import sternwright.visit.problem.WorkRules;

/** What would be done without planning, as problems in which every work is tied to its months. Limits are not held against it. */
public final class Habits {
    private static final int NO_LIMIT = 1000;
    private static final double SAME = 1e-9;

    private final VisitProblem problem;

    private Habits(VisitProblem problem) {
        this.problem = problem;
    }

    /** Each work in the last month before it is late, or the first possible one after. */
    public static VisitProblem ownDueDates(VisitProblem problem) {
        return new Habits(problem).tied(m -> true, false);
    }

    /** Visits in October and April: each does what would be late before the next one. */
    public static VisitProblem octoberAndApril(VisitProblem problem) {
        return new Habits(problem)
                .tied(m -> problem.calendarMonth(m) == Month.OCTOBER || problem.calendarMonth(m) == Month.APRIL, true);
    }

    private VisitProblem tied(IntPredicate visited, boolean ahead) {
        List<Work> works = new ArrayList<>();
        for (Work w : problem.works()) {
            List<MonthSpan> months = new ArrayList<>();
            int from = -1;
            int phase = w.nextPhase();
            int to = next(w, phase, from, visited, ahead);
            while (to < problem.horizon()) {
                months.add(new MonthSpan(to, to));
                from = to;
                phase = (phase + 1) % w.phases().size();
                to = next(w, phase, from, visited, ahead);
            }
            works.add(w.with(new WorkRules(NO_LIMIT, 0, false, false, months)));
        }
        return problem.withWorks(works, problem.followOns()).with(VisitDemands.NONE);
    }

    /** The month in which the habit does the work next; the horizon if nothing asks for it before then. */
    private int next(Work w, int phase, int from, IntPredicate visited, boolean ahead) {
        int next = nextByLife(w, phase, from, visited, ahead);
        for (MonthSpan span : w.rules().mustFallIn()) {
            if (from < span.first()) {
                next = Math.min(next, within(w, phase, span, visited));
            }
        }
        return next;
    }

    /** The last month of a span in which there is a visit anyway, else the last that fits; the horizon if none does. */
    private int within(Work w, int phase, MonthSpan span, IntPredicate visited) {
        int last = Math.min(span.last(), problem.horizon() - 1);
        int visit = IntStream.rangeClosed(span.first(), last)
                .filter(t -> visited.test(t) && fits(w, phase, t))
                .max()
                .orElse(-1);
        return visit >= 0
                ? visit
                : IntStream.rangeClosed(span.first(), last)
                        .filter(t -> fits(w, phase, t))
                        .max()
                        .orElse(problem.horizon());
    }

    private int nextByLife(Work w, int phase, int from, IntPredicate visited, boolean ahead) {
        if (from >= 0 && w.rules().once()) {
            return problem.horizon();
        }
        int due = due(w, from);
        if (due >= problem.horizon()) {
            return problem.horizon();
        }
        int habit = ahead ? lastVisitBefore(w, phase, from, due, visited) : -1;
        if (habit > from) {
            return habit;
        }
        for (int t = due; t > from; t--) {
            if (!ahead && fits(w, phase, t)) {
                return t;
            }
        }
        for (int t = Math.max(due, from) + 1; t < problem.horizon(); t++) {
            if (fits(w, phase, t) && visited.test(t)) {
                return t;
            }
        }
        for (int t = Math.max(due, from) + 1; t < problem.horizon(); t++) {
            if (fits(w, phase, t)) {
                return t;
            }
        }
        return problem.horizon();
    }

    private int lastVisitBefore(Work w, int phase, int from, int due, IntPredicate visited) {
        for (int t = due; t > from; t--) {
            if (visited.test(t) && fits(w, phase, t)) {
                return t;
            }
        }
        return -1;
    }

    private boolean fits(Work w, int phase, int t) {
        WorkPhase p = w.phases().get(phase);
        return t >= 0
                && p.season().contains(problem.calendarMonth(t))
                && p.places().stream().anyMatch(x -> problem.months().get(t).possible(x));
    }

    private int due(Work w, int from) {
        if (from < 0 && w.rules().dueAtFirstVisit()) {
            return -1;
        }
        int due = from;
        while (due < problem.horizon() && used(w, from, due + 1) <= 1 + SAME) {
            due++;
        }
        return due;
    }

    private double used(Work w, int from, int to) {
        if (to > problem.horizon()) {
            return 0;
        }
        var life = w.life();
        double months = from < 0 ? life.monthsUsed() + to : to - from;
        double hours = from < 0
                ? life.hoursUsed() + life.use().between(0, to)
                : life.use().between(from, to);
        return Math.max(life.months() > 0 ? months / life.months() : 0, life.hours() > 0 ? hours / life.hours() : 0);
    }
}
