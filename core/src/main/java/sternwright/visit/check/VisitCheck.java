package sternwright.visit.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import sternwright.visit.check.VisitFault.Kind;
import sternwright.visit.problem.BoatMonth;
import sternwright.visit.problem.CostSplit;
import sternwright.visit.problem.FollowOn;
import sternwright.visit.problem.MonthVisit;
import sternwright.visit.problem.MonthWork;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitSlot;
import sternwright.visit.problem.Work;

/** Checks one plan against its problem. */
public final class VisitCheck {
    private final VisitProblem problem;
    private final VisitPlan plan;
    private final List<VisitFault> wrong = new ArrayList<>();

    private VisitCheck(VisitProblem problem, VisitPlan plan) {
        this.problem = problem;
        this.plan = plan;
    }

    /** Everything that is wrong with the plan; empty if it is sound. */
    public static List<String> violations(VisitProblem problem, VisitPlan plan) {
        return faults(problem, plan).stream().map(VisitFault::words).toList();
    }

    /** The same with the sort of each fault and the work it is about. */
    public static List<VisitFault> faults(VisitProblem problem, VisitPlan plan) {
        VisitCheck check = new VisitCheck(problem, plan);
        check.visits();
        check.standing();
        List<List<MonthVisit>> done = check.doneByWork();
        WorkCheck.Sums sums = new WorkCheck.Sums();
        for (int j = 0; j < problem.works().size(); j++) {
            new WorkCheck(problem, plan, j, done.get(j), check.wrong).run(sums);
        }
        check.followOns(done);
        check.cost(sums);
        return List.copyOf(check.wrong);
    }

    private void say(Kind kind, int work, String text) {
        wrong.add(new VisitFault(kind, work, text));
    }

    private String name(VisitSlot slot) {
        String month = slot.month() < problem.horizon() ? problem.monthName(slot.month()) : "month " + slot.month();
        return words(slot.place()) + " in " + month;
    }

    private static String words(Place place) {
        return place.name().toLowerCase(Locale.ROOT);
    }

    private void visits() {
        Set<VisitSlot> held = new HashSet<>();
        for (MonthVisit v : plan.visits()) {
            if (!held.add(v.slot())) {
                say(Kind.FIGURES, -1, "two visits " + name(v.slot()));
            }
            if (v.month() >= problem.horizon()) {
                say(Kind.IMPOSSIBLE, -1, "a visit after the horizon " + name(v.slot()));
                continue;
            }
            BoatMonth month = problem.months().get(v.month());
            if (v.place() == Place.AFLOAT ? !month.afloatPossible() : !month.ashorePossible()) {
                say(Kind.IMPOSSIBLE, -1, "a visit where none is possible: " + name(v.slot()));
            }
            for (MonthWork w : v.works()) {
                allowed(v, w);
            }
        }
        for (VisitSlot slot : problem.demands().forced()) {
            if (!held.contains(slot)) {
                say(Kind.DEMAND, -1, "a visit promised is not held: " + name(slot));
            }
        }
        for (VisitSlot slot : problem.demands().forbidden()) {
            if (held.contains(slot)) {
                say(Kind.DEMAND, -1, "a visit ruled out is held: " + name(slot));
            }
        }
        int n = plan.visits().size();
        if (n < problem.demands().minVisits() || n > problem.demands().maxVisits()) {
            say(
                    Kind.DEMAND,
                    -1,
                    n + " visits, asked for " + problem.demands().minVisits() + " to "
                            + problem.demands().maxVisits());
        }
    }

    private void allowed(MonthVisit v, MonthWork w) {
        Work work = problem.works().get(w.work());
        var phase = work.phases().get(w.phase());
        if (!phase.places().contains(v.place())) {
            say(Kind.IMPOSSIBLE, w.work(), work.name() + " may not be done " + words(v.place()));
        }
        if (!phase.season().contains(problem.firstMonth().plusMonths(v.month()).getMonth())) {
            say(Kind.SEASON, w.work(), work.name() + " is out of season in " + problem.monthName(v.month()));
        }
    }

    private void standing() {
        for (MonthVisit v : plan.visits()) {
            if (v.place() == Place.ASHORE
                    && !problem.months().get(v.month()).ashorePaid()
                    && !plan.hauledMonths().contains(v.month())) {
                say(
                        Kind.IMPOSSIBLE,
                        -1,
                        "work ashore in " + problem.monthName(v.month()) + " while the boat is in the water");
            }
        }
        for (int t : plan.hauledMonths()) {
            if (problem.months().get(t).ashorePaid()) {
                say(Kind.FIGURES, -1, "standing charged in a month already paid " + problem.monthName(t));
            }
        }
    }

    private List<List<MonthVisit>> doneByWork() {
        List<List<MonthVisit>> done = new ArrayList<>();
        for (int j = 0; j < problem.works().size(); j++) {
            int work = j;
            done.add(plan.visits().stream()
                    .filter(v -> v.works().stream().anyMatch(w -> w.work() == work))
                    .toList());
        }
        return done;
    }

    private void followOns(List<List<MonthVisit>> done) {
        for (FollowOn f : problem.followOns()) {
            for (MonthVisit v : done.get(f.trigger())) {
                int a = v.month() + f.minLagMonths();
                int b = Math.max(v.month() + f.maxLagMonths(), firstPossible(f.follower(), a));
                boolean met = done.get(f.follower()).stream().anyMatch(u -> u.month() >= a && u.month() <= b);
                boolean asked = v.works().stream().anyMatch(w -> w.work() == f.trigger() && f.calledBy(w.phase()));
                if (asked && b < problem.horizon() && !met) {
                    say(
                            Kind.FOLLOW_ON,
                            f.follower(),
                            problem.works().get(f.follower()).name() + " does not follow "
                                    + problem.works().get(f.trigger()).name() + " of " + problem.monthName(v.month()));
                }
            }
        }
    }

    /** First month from the one given in which the next doing of a work is possible by place and season. */
    private int firstPossible(int work, int from) {
        Work w = problem.works().get(work);
        var phase = w.phases().get(w.nextPhase());
        for (int t = from; t < problem.horizon(); t++) {
            int month = t;
            boolean season =
                    phase.season().contains(problem.firstMonth().plusMonths(t).getMonth());
            boolean ruledOut = phase.places().stream()
                    .noneMatch(p -> problem.months().get(month).possible(p)
                            && !problem.demands().forbidden().contains(new VisitSlot(month, p)));
            if (season && !ruledOut) {
                return t;
            }
        }
        return problem.horizon();
    }

    /** A run of months ashore needs a lift unless it touches a paid stay or the boat stood ashore when it began. */
    private int liftsNeeded() {
        Set<Integer> hauled = new TreeSet<>(plan.hauledMonths());
        int lifts = 0;
        for (int t : hauled) {
            if (hauled.contains(t - 1)) {
                continue;
            }
            int end = t;
            while (hauled.contains(end + 1)) {
                end++;
            }
            boolean joinsBefore = t == 0
                    ? problem.ashoreAtStart()
                    : problem.months().get(t - 1).ashorePaid();
            boolean joinsAfter =
                    end + 1 < problem.horizon() && problem.months().get(end + 1).ashorePaid();
            lifts += joinsBefore || joinsAfter ? 0 : 1;
        }
        return lifts;
    }

    private void cost(WorkCheck.Sums sums) {
        long visits = 0;
        for (MonthVisit v : plan.visits()) {
            visits += v.place() == Place.AFLOAT
                    ? problem.tariff().callOutAfloatCents()
                    : problem.tariff().workVisitAshoreCents();
        }
        long standing = 0;
        long lost = 0;
        for (int t : plan.hauledMonths()) {
            standing += problem.months().get(t).standingCents();
            lost += problem.months().get(t).lossOfUseCents();
        }
        long setUps = 0;
        for (int t = 0; t < problem.horizon(); t++) {
            Set<Integer> points = new TreeSet<>();
            for (MonthVisit v : plan.visits()) {
                for (MonthWork w : v.month() == t ? v.works() : List.<MonthWork>of()) {
                    points.add(problem.works().get(w.work()).servicePoint());
                }
            }
            points.remove(-1);
            setUps += points.stream()
                    .mapToLong(g -> problem.servicePoints().get(g).setUpCents())
                    .sum();
        }
        long lifts = (long) liftsNeeded() * problem.tariff().liftLaunchCents();
        CostSplit should =
                new CostSplit(visits, lifts, standing, lost, setUps, sums.work, sums.unused, sums.risk, sums.end);
        if (!should.equals(plan.cost())) {
            say(Kind.FIGURES, -1, "the cost is " + should + ", the plan says " + plan.cost());
        }
        if (plan.proof().boundCents() > should.total()) {
            say(Kind.FIGURES, -1, "the bound " + plan.proof().boundCents() + " is above the cost " + should.total());
        }
    }
}
