package sternwright.visit.check;

import java.util.List;
import sternwright.visit.check.VisitFault.Kind;
import sternwright.visit.problem.LeftUntil;
import sternwright.visit.problem.Life;
import sternwright.visit.problem.MonthSpan;
import sternwright.visit.problem.MonthVisit;
import sternwright.visit.problem.MonthWork;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkPhase;

/** Follows one work through the plan: its cycle, its life, its limits, and what it costs. */
final class WorkCheck {
    private static final double SAME = 1e-9;
    /** Amounts are rounded half up with a millionth in hand. */
    private static final double HALF_UP = 1e-6;

    private final VisitProblem problem;
    private final VisitPlan plan;
    private final int index;
    private final Work work;
    private final List<MonthVisit> done;
    private final List<VisitFault> wrong;

    /** What the works cost, by cause. */
    static final class Sums {
        long work;
        long unused;
        long risk;
        long end;
    }

    WorkCheck(VisitProblem problem, VisitPlan plan, int index, List<MonthVisit> done, List<VisitFault> wrong) {
        this.problem = problem;
        this.plan = plan;
        this.index = index;
        this.work = problem.works().get(index);
        this.done = done;
        this.wrong = wrong;
    }

    private void say(Kind kind, String text) {
        wrong.add(new VisitFault(kind, index, work.name() + " " + text));
    }

    void run(Sums sums) {
        boolean first = true;
        int since = -1;
        int phase = work.nextPhase();
        for (MonthVisit v : done) {
            int found = v.works().stream()
                    .filter(w -> w.work() == index)
                    .mapToInt(MonthWork::phase)
                    .findFirst()
                    .orElse(-1);
            if (found != phase) {
                say(Kind.FIGURES, "is done in phase " + found + ", phase " + phase + " is next");
            }
            step(first, since, v.month(), sums, phase);
            if (v.place() == Place.AFLOAT) {
                sums.work += work.phases().get(phase).afloatExtraCents();
            }
            since = v.month();
            first = false;
            phase = (phase + 1) % work.phases().size();
        }
        if (work.rules().once() && done.size() > 1) {
            say(Kind.EARLY, "is done more than once");
        }
        spans();
        left();
        firstVisit();
        end(first, since, phase, sums);
    }

    private void step(boolean first, int since, int month, Sums sums, int phase) {
        double share = share(first, since, month);
        long cost = work.phases().get(phase).costCents();
        sums.work += cost;
        if (!hasLife()) {
            return;
        }
        if (share < work.rules().earliestFraction() - SAME) {
            say(
                    Kind.EARLY,
                    "is done again in " + problem.monthName(month) + " with only " + Math.round(100 * share)
                            + " % of its life used");
        }
        int due = due(first, since);
        int limit = due + lateness(first);
        if (first && limit < 0) {
            limit = firstPossible();
        }
        if (month > limit) {
            say(Kind.LATE, "is done in " + problem.monthName(month) + ", past its limit");
        }
        sums.unused += Math.round(cost * work.materialShare() * Math.max(0, 1 - share) + HALF_UP);
        sums.risk += Math.max(0, month - due) * work.riskPerMonthCents();
    }

    private void end(boolean first, int since, int phase, Sums sums) {
        if (!hasLife() || work.rules().once() && !first) {
            return;
        }
        int due = due(first, since);
        if (due + lateness(first) < problem.horizon()) {
            say(Kind.LATE, "is not done before its limit in " + problem.monthName(due + lateness(first)));
        }
        sums.risk += Math.max(0, problem.horizon() - due) * work.riskPerMonthCents();
        sums.end += Math.round(
                work.phases().get(phase).costCents() * Math.min(1, share(first, since, problem.horizon())) + HALF_UP);
    }

    private int lateness(boolean first) {
        return first ? work.rules().maxLateFirstMonths() : work.rules().maxLateMonths();
    }

    private boolean hasLife() {
        return work.life().months() > 0 || work.life().hours() > 0;
    }

    /** Share of life used when a month begins. */
    private double share(boolean first, int since, int month) {
        if (first && work.rules().dueAtFirstVisit()) {
            return 1;
        }
        Life life = work.life();
        double months = first ? life.monthsUsed() + month : month - since;
        double hours = first ? life.hoursUsed() : 0;
        for (int m = first ? 0 : since; m < month; m++) {
            hours += life.use().hoursPerMonth().get(m);
        }
        double byMonths = life.months() > 0 ? months / life.months() : 0;
        double byHours = life.hours() > 0 ? hours / life.hours() : 0;
        return Math.max(byMonths, byHours);
    }

    /** Last month that begins with life not over; the month before the start if it is over already. */
    private int due(boolean first, int since) {
        if (first && work.rules().dueAtFirstVisit()) {
            return -1;
        }
        int due = problem.horizon();
        while (due > since && share(first, since, due) > 1 + SAME) {
            due--;
        }
        return due;
    }

    private boolean fits(int month, MonthVisit visit) {
        WorkPhase phase = work.phases().get(work.nextPhase());
        return phase.places().contains(visit.place())
                && phase.season()
                        .contains(problem.firstMonth().plusMonths(month).getMonth());
    }

    private int firstPossible() {
        WorkPhase phase = work.phases().get(work.nextPhase());
        for (int t = 0; t < problem.horizon(); t++) {
            int month = t;
            if (phase.season().contains(problem.firstMonth().plusMonths(t).getMonth())
                    && phase.places().stream()
                            .anyMatch(p -> problem.months().get(month).possible(p))) {
                return t;
            }
        }
        return problem.horizon();
    }

    private void spans() {
        for (MonthSpan span : work.rules().mustFallIn()) {
            boolean met = done.stream().anyMatch(v -> v.month() >= span.first() && v.month() <= span.last());
            if (span.first() < problem.horizon() && !met) {
                say(
                        Kind.SPAN,
                        "is not done from " + problem.monthName(span.first()) + " to "
                                + problem.monthName(span.last()));
            }
        }
    }

    private void left() {
        for (LeftUntil l : problem.demands().left()) {
            if (l.work() == index && !done.isEmpty() && done.get(0).month() < l.month()) {
                say(Kind.DEMAND, "is done before " + problem.monthName(l.month()));
            }
        }
    }

    /** A work of unknown history is done at the first visit that fits it, unless it is left on purpose until later. */
    private void firstVisit() {
        if (!work.rules().dueAtFirstVisit()) {
            return;
        }
        int left = problem.demands().left().stream()
                .filter(l -> l.work() == index)
                .mapToInt(LeftUntil::month)
                .max()
                .orElse(0);
        for (MonthVisit v : plan.visits()) {
            if (v.month() >= left && fits(v.month(), v)) {
                if (done.isEmpty() || done.get(0).month() > v.month()) {
                    say(Kind.FIRST_VISIT, "has no known history and is not done at the first visit that fits it");
                }
                return;
            }
        }
    }
}
