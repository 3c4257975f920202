package sternwright.season.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sternwright.season.Axis;
import sternwright.season.Cost;
import sternwright.season.Lag;
import sternwright.season.Operation;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.check.Violation.Kind;

/** Proves a plan against the season's own words, without the planner's arrays. */
public final class SeasonCheck {
    private final SeasonProblem problem;
    private final SeasonPlan plan;
    private final List<Violation> found = new ArrayList<>();

    private SeasonCheck(SeasonProblem problem, SeasonPlan plan) {
        this.problem = problem;
        this.plan = plan;
    }

    /** Everything that is wrong with {@code plan} as a plan of {@code problem}; empty if nothing is. */
    public static List<Violation> of(SeasonProblem problem, SeasonPlan plan) {
        SeasonCheck check = new SeasonCheck(problem, plan);
        if (check.complete()) {
            check.windows();
            check.lags();
            if (check.found.isEmpty()) {
                ResourceCheck resources = new ResourceCheck(problem, plan, check.found);
                int[] extra = resources.all();
                check.cost(extra, resources.peaks());
            }
        }
        return List.copyOf(check.found);
    }

    private boolean complete() {
        int wanted = problem.operations().size();
        if (plan.startQ().size() != wanted) {
            add(
                    Kind.INCOMPLETE,
                    "the plan has " + plan.startQ().size() + " starts, the season " + wanted + " operations");
        }
        return found.isEmpty();
    }

    private void windows() {
        Axis axis = problem.yard().axis();
        for (int i = 0; i < plan.startQ().size(); i++) {
            Operation o = problem.operations().get(i);
            int start = plan.startQ().get(i);
            int end = start + o.lengthQ();
            if (start < 0 || end > axis.quarters()) {
                add(Kind.WINDOW, problem.phrase(i) + " lies outside the season, at quarters " + start + " to " + end);
            } else if (start < o.earliestQ() || end > o.latestEndQ()) {
                add(
                        Kind.WINDOW,
                        problem.phrase(i) + " from " + start + " to " + end + " is not within " + o.earliestQ() + " to "
                                + o.latestEndQ());
            } else if (o.days() >= 0
                    && !problem.yard().daySets().get(o.days()).days().contains(axis.dayOf(start))) {
                add(
                        Kind.TIDE,
                        problem.phrase(i) + " starts on working day " + axis.dayOf(start) + ", which is not one of "
                                + problem.yard().daySets().get(o.days()).name());
            }
        }
    }

    private void lags() {
        for (Lag lag : problem.lags()) {
            int distance = plan.startQ().get(lag.after()) - plan.startQ().get(lag.before());
            if (distance < lag.minQ() || lag.maxQ() < Lag.FREE && distance > lag.maxQ()) {
                add(
                        Kind.LAG,
                        problem.phrase(lag.after()) + " starts " + distance + " quarters after "
                                + problem.operations().get(lag.before()).name() + "; it should be " + lag.minQ()
                                + " to "
                                + (lag.maxQ() >= Lag.FREE ? "any" : lag.maxQ()));
            }
        }
    }

    private void cost(int[] extra, int[] peaks) {
        long frost = 0;
        long late = 0;
        long early = 0;
        for (int i = 0; i < plan.startQ().size(); i++) {
            var due = problem.operations().get(i).due();
            int over = plan.endQ(problem, i) - due.byQ();
            switch (due.kind()) {
                case FROST -> frost += (long) due.latePerQ() * Math.max(0, over);
                case WANTED -> late += (long) due.latePerQ() * Math.max(0, over);
            }
            early += (long) due.earlyPerQ() * Math.max(0, -over);
        }
        long overtime = (long) problem.weights().overtimePerHandWeek()
                * Arrays.stream(extra).sum();
        int even = problem.yard().evenHands();
        long uneven = (long) problem.weights().unevenPerHand()
                * Arrays.stream(peaks).map(p -> Math.max(0, p - even)).sum();
        Cost cost = new Cost(frost, promises(), late, early, overtime, uneven);
        if (!cost.equals(plan.cost())) {
            add(Kind.COST, "the plan says it costs " + plan.cost() + "; added up again it is " + cost);
        }
    }

    private long promises() {
        Axis axis = problem.yard().axis();
        long sum = 0;
        for (var promise : problem.promises()) {
            if (promise.movedCost() == 0) {
                continue;
            }
            int start = plan.startQ().get(promise.operation());
            sum += (long) problem.weights().promisePerQ() * Math.abs(start - promise.startQ());
            if (axis.dayOf(start) != axis.dayOf(promise.startQ())) {
                sum += promise.movedCost() < 0 ? problem.weights().promiseMoved() : promise.movedCost();
            }
        }
        return sum;
    }

    private void add(Kind kind, String message) {
        found.add(new Violation(kind, message));
    }
}
