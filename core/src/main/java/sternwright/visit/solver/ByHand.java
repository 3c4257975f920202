package sternwright.visit.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sternwright.visit.problem.Doing;
import sternwright.visit.problem.MonthVisit;
import sternwright.visit.problem.MonthWork;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.Proof;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;

/**
 * Writes visits out that a person has chosen: the phase and the price of each step, and where the boat stands ashore. Whether they
 * keep the rules is for the check to say.
 */
public final class ByHand {
    private ByHand() {}

    /**
     * The plan of some visits.
     *
     * @param problem what it is a plan of
     * @param visits month, place and works; the phases in them are passed over and counted anew
     * @return the plan with its cost; its bound is 0, nothing is proved of it
     */
    public static VisitPlan of(VisitProblem problem, List<MonthVisit> visits) {
        List<MonthVisit> order = visits.stream()
                .sorted(Comparator.comparingInt(MonthVisit::month)
                        .thenComparing(v -> v.place() == Place.ASHORE ? 0 : 1))
                .toList();
        List<Doing> doings = new ArrayList<>();
        List<List<MonthWork>> works = new ArrayList<>();
        order.forEach(v -> works.add(new ArrayList<>()));
        for (int j = 0; j < problem.works().size(); j++) {
            follow(problem, j, order, doings, works);
        }
        List<MonthVisit> written = new ArrayList<>();
        boolean[] held = new boolean[2 * problem.horizon()];
        for (int v = 0; v < order.size(); v++) {
            MonthVisit visit = order.get(v);
            written.add(new MonthVisit(visit.month(), visit.place(), works.get(v)));
            boolean possible = problem.months().get(visit.month()).possible(visit.place());
            held[visit.place().ordinal() * problem.horizon() + visit.month()] = possible;
        }
        return new PlanWriter(problem).write(written, doings, held, new Proof(0, Proof.Status.STOPPED, 0, 0));
    }

    /** Follows one work through the visits. */
    private static void follow(
            VisitProblem problem, int work, List<MonthVisit> order, List<Doing> doings, List<List<MonthWork>> works) {
        LifeSteps steps = new LifeSteps(problem.works().get(work), problem.horizon());
        int phases = problem.works().get(work).phases().size();
        int phase = problem.works().get(work).nextPhase();
        int from = LifeSteps.START;
        for (int v = 0; v < order.size(); v++) {
            MonthVisit visit = order.get(v);
            if (visit.works().stream().noneMatch(w -> w.work() == work)) {
                continue;
            }
            Doing done = steps.done(work, phase, from, visit.month());
            doings.add(visit.place() == Place.AFLOAT ? steps.afloat(done) : done);
            works.get(v).add(new MonthWork(work, phase));
            from = visit.month();
            phase = (phase + 1) % phases;
        }
        doings.add(steps.end(work, phase, from));
    }
}
