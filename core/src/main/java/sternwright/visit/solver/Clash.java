package sternwright.visit.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitRefusal;
import sternwright.visit.problem.VisitTariff;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkPhase;

/**
 * Finds which demands clash when there is no plan: halves the list of demands again and again until only those are left without
 * which there would be one (Junker, "QuickXplain: preferred explanations and relaxations for over-constrained problems", AAAI
 * 2004, from memory).
 */
final class Clash {
    private static final long NODES = 60;
    private static final long MOST_NANOS = 2_000_000_000L;

    private final VisitProblem problem;
    private final boolean counted;
    private final SolveLimits limits;
    private final long started;
    private boolean certain = true;

    /** Which demands clash, looked for with the clock of the limits for two seconds at most. */
    Clash(VisitProblem problem, SolveLimits limits) {
        this.problem = problem;
        this.limits = limits;
        started = limits.nanoClock().getAsLong();
        counted = problem.demands().minVisits() > 0
                || problem.demands().maxVisits() < 2 * problem.horizon()
                || !problem.followOns().isEmpty();
    }

    /** The refusal, with the demands that clash. */
    VisitRefusal find() {
        List<Demand> all = new ArrayList<>();
        List<Demand> idle = new ArrayList<>();
        PathModel model = new PathModel(problem);
        for (Demand d : Demand.all(problem)) {
            (idle(d, model) ? idle : all).add(d);
        }
        List<Demand> clash = explain(idle, false, all);
        return new VisitRefusal(clash.stream().map(Demand::words).toList(), certain);
    }

    private List<Demand> explain(List<Demand> background, boolean grown, List<Demand> rest) {
        if (grown && !feasible(background)) {
            return List.of();
        }
        if (rest.size() <= 1) {
            return rest;
        }
        if (late()) {
            certain = false;
            return rest;
        }
        List<Demand> first = rest.subList(0, rest.size() / 2);
        List<Demand> second = rest.subList(rest.size() / 2, rest.size());
        List<Demand> inSecond = explain(join(background, first), true, second);
        List<Demand> inFirst = explain(join(background, inSecond), !inSecond.isEmpty(), first);
        return join(inFirst, inSecond);
    }

    private boolean late() {
        return limits.nanoClock().getAsLong() - started > MOST_NANOS;
    }

    /** A limit that lets the work rest all through the horizon asks for nothing. */
    private static boolean idle(Demand d, PathModel model) {
        if (d.kind() != Demand.Kind.LIMIT) {
            return false;
        }
        WorkPaths w = model.paths[d.work()];
        return w.end[w.firstPhase][0] < WorkPaths.NONE;
    }

    private static List<Demand> join(List<Demand> a, List<Demand> b) {
        List<Demand> both = new ArrayList<>(a);
        both.addAll(b);
        return both;
    }

    private boolean feasible(List<Demand> kept) {
        VisitProblem relaxed = Demand.only(problem, kept);
        PathModel model = new PathModel(relaxed);
        ScheduleBuilder builder = new ScheduleBuilder(model);
        boolean[] every = new boolean[2 * problem.horizon()];
        Arrays.fill(every, true);
        if (!builder.eachHasAPath(every)) {
            return false;
        }
        boolean linked =
                counted || relaxed.works().stream().anyMatch(w -> w.rules().dueAtFirstVisit());
        return !linked || anyPlan(countingOnly(relaxed)) != null;
    }

    /** Some plan that keeps every demand, whatever it costs; null if none was found. */
    @Nullable
    Schedule anyPlan() {
        return anyPlan(countingOnly(problem));
    }

    private @Nullable Schedule anyPlan(VisitProblem relaxed) {
        BranchAndBound search = new BranchAndBound(
                new PathModel(relaxed), SolveLimits.ofNodes(NODES).withGap(0.99));
        Schedule plan = search.anyPlan();
        certain &= plan != null || search.exhausted();
        return plan;
    }

    /** The same rules where only visits cost: whether their number can be met is then quick to see. */
    private static VisitProblem countingOnly(VisitProblem p) {
        List<Work> works = new ArrayList<>();
        for (Work w : p.works()) {
            List<WorkPhase> free = w.phases().stream()
                    .map(k -> new WorkPhase(k.places(), k.season(), 0, 0))
                    .toList();
            works.add(new Work(w.name(), -1, w.life(), free, w.nextPhase(), 0, 0, w.rules()));
        }
        return new VisitProblem(
                p.firstMonth(),
                p.months(),
                p.ashoreAtStart(),
                new VisitTariff(100, 100, 0),
                List.of(),
                works,
                p.followOns(),
                p.demands());
    }
}
