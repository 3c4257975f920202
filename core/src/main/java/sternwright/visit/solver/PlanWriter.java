package sternwright.visit.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sternwright.visit.problem.BoatMonth;
import sternwright.visit.problem.CostSplit;
import sternwright.visit.problem.Doing;
import sternwright.visit.problem.MonthVisit;
import sternwright.visit.problem.MonthWork;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.Proof;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.WorkPhase;

/** Writes a schedule out as a plan, its cost split by cause. */
final class PlanWriter {
    private final VisitProblem problem;
    private final int horizon;

    PlanWriter(VisitProblem problem) {
        this.problem = problem;
        horizon = problem.horizon();
    }

    /** The plan of a schedule, with the proof given. */
    VisitPlan write(Schedule schedule, Proof proof) {
        List<Doing> doings = doings(schedule);
        return write(visits(schedule, doings), doings, schedule.open, proof);
    }

    /**
     * The plan of visits and steps, the boat ashore in the cheapest months that they allow.
     *
     * @param held by slot, whether a visit is held that is possible there
     */
    VisitPlan write(List<MonthVisit> visits, List<Doing> doings, boolean[] held, Proof proof) {
        byte[] fixed = new byte[2 * horizon];
        for (int s = 0; s < 2 * horizon; s++) {
            fixed[s] = held[s] ? HaulOut.OPEN : HaulOut.CLOSED;
        }
        HaulOut haulOut = new HaulOut(problem, 0, Integer.MAX_VALUE);
        haulOut.solve(new HaulOut.Gains(horizon), fixed, new boolean[2 * horizon]);
        List<Integer> hauled = new ArrayList<>();
        int lifts = 0;
        for (int t = 0; t < horizon; t++) {
            lifts += haulOut.lifts(t) ? 1 : 0;
            if (haulOut.ashore(t) && !problem.months().get(t).ashorePaid()) {
                hauled.add(t);
            }
        }
        return new VisitPlan(visits, doings, hauled, lifts, split(visits, doings, hauled, lifts), proof);
    }

    private List<Doing> doings(Schedule schedule) {
        List<Doing> doings = new ArrayList<>();
        for (int j = 0; j < problem.works().size(); j++) {
            LifeSteps steps = new LifeSteps(problem.works().get(j), horizon);
            int from = LifeSteps.START;
            int phases = problem.works().get(j).phases().size();
            int phase = problem.works().get(j).nextPhase();
            for (int t : schedule.months[j]) {
                Doing done = steps.done(j, phase, from, t);
                doings.add(slot(done, schedule) < horizon ? steps.afloat(done) : done);
                from = t;
                phase = (phase + 1) % phases;
            }
            doings.add(steps.end(j, phase, from));
        }
        return doings;
    }

    private List<MonthVisit> visits(Schedule schedule, List<Doing> doings) {
        List<List<MonthWork>> bySlot = new ArrayList<>();
        for (int s = 0; s < 2 * horizon; s++) {
            bySlot.add(new ArrayList<>());
        }
        for (Doing d : doings) {
            if (d.to() < horizon) {
                bySlot.get(slot(d, schedule)).add(new MonthWork(d.work(), d.phase()));
            }
        }
        List<MonthVisit> visits = new ArrayList<>();
        for (int t = 0; t < horizon; t++) {
            if (schedule.open[horizon + t]) {
                visits.add(new MonthVisit(t, Place.ASHORE, bySlot.get(horizon + t)));
            }
            if (schedule.open[t]) {
                visits.add(new MonthVisit(t, Place.AFLOAT, bySlot.get(t)));
            }
        }
        return visits;
    }

    private int slot(Doing d, Schedule schedule) {
        WorkPhase phase = problem.works().get(d.work()).phases().get(d.phase());
        boolean ashore = schedule.open[horizon + d.to()] && phase.places().contains(Place.ASHORE);
        return ashore ? horizon + d.to() : d.to();
    }

    private CostSplit split(List<MonthVisit> visits, List<Doing> doings, List<Integer> hauled, int lifts) {
        long fixed = 0;
        boolean[] opened = new boolean[Math.max(1, problem.servicePoints().size()) * horizon];
        for (MonthVisit v : visits) {
            fixed += v.place() == Place.AFLOAT
                    ? problem.tariff().callOutAfloatCents()
                    : problem.tariff().workVisitAshoreCents();
        }
        long setUps = 0;
        for (Doing d : doings) {
            int g = problem.works().get(d.work()).servicePoint();
            if (g >= 0 && d.to() < horizon && !opened[g * horizon + d.to()]) {
                opened[g * horizon + d.to()] = true;
                setUps += problem.servicePoints().get(g).setUpCents();
            }
        }
        List<BoatMonth> months = hauled.stream().map(problem.months()::get).toList();
        return new CostSplit(
                fixed,
                lifts * problem.tariff().liftLaunchCents(),
                months.stream().mapToLong(BoatMonth::standingCents).sum(),
                months.stream().mapToLong(BoatMonth::lossOfUseCents).sum(),
                setUps,
                doings.stream().mapToLong(Doing::workCents).sum(),
                doings.stream().mapToLong(Doing::unusedCents).sum(),
                doings.stream().mapToLong(Doing::riskCents).sum(),
                doings.stream().mapToLong(Doing::endCents).sum());
    }

    /** The schedule of a plan, to start a search from. */
    static Schedule read(VisitPlan plan, VisitProblem problem) {
        Schedule s = new Schedule(2 * problem.horizon(), problem.works().size());
        for (MonthVisit v : plan.visits()) {
            s.open[v.place().ordinal() * problem.horizon() + v.month()] = true;
        }
        for (int j = 0; j < s.months.length; j++) {
            int work = j;
            List<Doing> done = plan.doings().stream()
                    .filter(d -> d.work() == work && d.to() < problem.horizon())
                    .toList();
            s.months[j] = done.stream().mapToInt(Doing::to).toArray();
            s.phases[j] = done.stream().mapToInt(Doing::phase).toArray();
        }
        Arrays.stream(s.months).forEach(Arrays::sort);
        s.cost = plan.cost().total();
        return s;
    }
}
