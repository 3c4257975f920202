package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.visits.AshoreSince;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.season.Bound;
import sternwright.season.Cost;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.check.SeasonCheck;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import sternwright.season.dated.PublishedWork;
import sternwright.season.dated.SeasonBoat;
import sternwright.season.dated.SeasonFault;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.check.DatedSeasonCheck;
import sternwright.season.dated.event.AfterEvents;
import sternwright.season.dated.make.SeasonFaults;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.planner.Progress;
import sternwright.season.planner.SeasonAnswer;
import sternwright.season.planner.SeasonPlanner;
import sternwright.season.relief.WhyNoSeason;
import sternwright.season.replan.Replanner;
import sternwright.season.search.Budget;

/** Plans a yard's season, or plans on from the published one after something has happened. */
public final class PlanSeason {
    private static final double PROOF_SECONDS = 10;

    private final SeasonAsk ask;
    private final Onlooker onlooker;
    private final YardFiles yard;
    private final SeasonFiles files;
    private final List<String> remarks = new ArrayList<>();
    private final @Nullable PlannedSeason base;
    private final List<PromisedDate> fixed;
    private final List<OwnerDate> dates;

    private List<Published> kept = List.of();
    private List<SeasonBoat> visits = List.of();
    private List<PublishedWork> works = List.of();

    private PlanSeason(SeasonAsk ask, Onlooker onlooker, @Nullable PlannedSeason base, List<PromisedDate> fixed) {
        this(ask, onlooker, base, fixed, YardFolder.all(ask.shelf(), ask.latest()));
    }

    private PlanSeason(
            SeasonAsk ask, Onlooker onlooker, @Nullable PlannedSeason base, List<PromisedDate> fixed, YardFiles yard) {
        this.yard = yard;
        this.ask = ask;
        this.base = base;
        this.fixed = fixed;
        this.onlooker = onlooker;
        files = SeasonFolder.read(ask.shelf(), ask.latest());
        dates = DatesForSeason.of(files, ask.today(), ask.fresh());
    }

    /**
     * Plans.
     *
     * @param ask what is asked
     * @param onlooker sees the work and may stop it
     * @return a season that both judges have passed
     * @throws BadInput if the yard's files or the events do not allow a season
     */
    public static PlannedSeason of(SeasonAsk ask, Onlooker onlooker) {
        return new PlanSeason(ask, onlooker, null, List.of()).plan();
    }

    /**
     * Plans on from a season that need not be published, with some operations fixed on days: what else moves then?
     *
     * @param base the season as it stands; every lift, launch and visit afloat of it counts as promised
     * @param fixed operations and the days on which they shall be, whatever it costs
     * @param ask what was asked for {@code base}; its seconds are for this search
     * @param onlooker sees the work and may stop it
     * @return a season that both judges have passed; its {@link DatedSeason#moved()} are the dates that had to give way
     * @throws BadInput if there is no season with these dates
     */
    public static PlannedSeason with(PlannedSeason base, List<PromisedDate> fixed, SeasonAsk ask, Onlooker onlooker) {
        return new PlanSeason(ask, onlooker, base, List.copyOf(fixed), base.yard()).plan();
    }

    /**
     * What the published plan costs as it stands, repaired where events leave no other way, without a search and without planning
     * visits anew.
     *
     * @param like a season of the same yard and day, for its boats with their visits
     * @param ask what is asked; its events have happened
     * @return the cost in the yard's currency
     * @throws BadInput if there is no season with these events
     */
    static double standing(PlannedSeason like, SeasonAsk ask) {
        PlanSeason plan = new PlanSeason(ask, Onlooker.NOBODY, null, List.of(), like.yard());
        List<Published> published = plan.known();
        SeasonOfYard season = plan.season(like.season().request().boats(), published);
        return plan.replanner(season, published).plan().cost().total() * season.pointValue();
    }

    /**
     * Goes on from a plan already made of the same ask; the answer is at least as good.
     *
     * @param before the plan
     * @param ask what is asked, with the further seconds
     * @param onlooker sees the work and may stop it
     * @return a season that both judges have passed
     */
    public static PlannedSeason goOn(PlannedSeason before, SeasonAsk ask, Onlooker onlooker) {
        PlanSeason on = new PlanSeason(ask, onlooker, null, List.of(), before.yard());
        on.take(before);
        return on.goOn(before.season(), before.plan(), before.firstCost());
    }

    /**
     * Plans, beginning from a plan that was kept, if it still is one.
     *
     * @param ask what is asked
     * @param kept a plan of the same ask, as it was written
     * @param onlooker sees the work and may stop it
     * @return a season that both judges have passed
     * @throws BadInput if the yard's files or the events do not allow a season
     */
    public static PlannedSeason from(SeasonAsk ask, List<Published> kept, Onlooker onlooker) {
        PlanSeason on = new PlanSeason(ask, onlooker, null, List.of());
        on.kept = List.copyOf(kept);
        return on.plan();
    }

    /**
     * Plans on with the visits of a season planned before: for what is asked of one plan again and again.
     *
     * @param before a season on the same published plan
     * @param ask what is asked
     * @param onlooker sees the work and may stop it
     * @return a season that both judges have passed
     * @throws BadInput if there is no such season
     */
    static PlannedSeason again(PlannedSeason before, SeasonAsk ask, Onlooker onlooker) {
        PlanSeason on = new PlanSeason(ask, onlooker, null, List.of(), before.yard());
        on.take(before);
        return on.plan();
    }

    /** Takes over visits that need not be planned again. */
    private void take(PlannedSeason before) {
        visits = before.season().request().boats();
        works = before.works();
        remarks.addAll(before.remarks());
    }

    /**
     * A plan exactly as it was kept or published, judged on the yard as it is now; nothing is searched.
     *
     * @param ask what was asked for it
     * @param kept the plan, as it was written
     * @param bound what no plan can cost less than, in the yard's currency; null to work one out
     * @return the season, passed by both judges
     * @throws BadInput if the plan does not hold any more, with what stands against it
     */
    public static PlannedSeason asKept(SeasonAsk ask, List<Published> kept, @Nullable Double bound) {
        return asKept(ask, YardFolder.all(ask.shelf(), ask.latest()), kept, bound);
    }

    /** The same with the visits of the season the plan was made in, where that is at hand. */
    public static PlannedSeason asKept(SeasonAsk ask, PlannedSeason made, List<Published> kept) {
        PlanSeason on = new PlanSeason(ask, Onlooker.NOBODY, null, List.of(), made.yard());
        on.take(made);
        KeptPlan.Held held =
                KeptPlan.of(on.season(on.known()), kept, ask.today()).orElseThrow();
        return on.judged(held.season(), held.answer(null));
    }

    /** The same on a yard that has been read already. */
    public static PlannedSeason asKept(SeasonAsk ask, YardFiles yard, List<Published> kept, @Nullable Double bound) {
        PlanSeason on = new PlanSeason(ask, Onlooker.NOBODY, null, List.of(), yard);
        KeptPlan.Held held =
                KeptPlan.of(on.season(on.known()), kept, ask.today()).orElseThrow();
        return on.judged(held.season(), held.answer(bound));
    }

    private PlannedSeason goOn(SeasonOfYard season, SeasonPlan plan, double firstCost) {
        SeasonAnswer answer = SeasonPlanner.goOn(
                season.problem(),
                plan,
                Budget.seconds(ask.seconds(), ask.nanoClock()),
                ask.seed(),
                new BoundShare(ask.nanoClock()),
                watch(season));
        PlannedSeason judged = judged(season, answer);
        return new PlannedSeason(
                judged.yard(),
                judged.season(),
                judged.plan(),
                judged.dated(),
                judged.published(),
                judged.remarks(),
                firstCost,
                judged.works());
    }

    private PlannedSeason plan() {
        List<Published> published = known();
        SeasonOfYard season = season(published);
        onlooker.says("Placing " + count(season.problem().operations().size(), "operation") + " of "
                + count(season.problem().visits().size(), "visit") + " ...");
        if (!kept.isEmpty()) {
            KeptPlan plan = KeptPlan.of(season, kept, ask.today());
            if (plan.wrong().isEmpty()) {
                KeptPlan.Held held = plan.orElseThrow();
                return goOn(held.season(), held.plan(), 0);
            }
        }
        return published.isEmpty() ? anew(season) : onFrom(season, published);
    }

    private static String count(int n, String one) {
        return n + " " + one + (n == 1 ? "" : "s");
    }

    private SeasonOfYard season(List<Published> published) {
        EventNames.require(ask.events(), yard, files.resources());
        LocalDate basis = published.stream()
                .map(Published::plannedOn)
                .min(Comparator.naturalOrder())
                .orElse(ask.today());
        return season(visits.isEmpty() ? boats(basis) : visits, published);
    }

    /** Boats with their visits: those of the season this one goes on from, or planned now. */
    private List<SeasonBoat> boats(LocalDate basis) {
        PlannedSeason standing = base;
        if (standing != null) {
            take(standing);
            return visits;
        }
        List<PublishedWork> written = ask.fresh() ? List.of() : SeasonFolder.visits(ask.shelf());
        onlooker.says(
                written.isEmpty()
                        ? "Planning the visits of " + count(yard.boats().size(), "boat") + " ..."
                        : "Taking the visits as they were published ...");
        VisitsForSeason all = new VisitsForSeason(
                yard,
                SeasonFolder.agreed(ask.shelf()),
                basis,
                AshoreSince.of(dates),
                written,
                () -> KeptVisits.read(ask.shelf()));
        List<SeasonBoat> boats = all.all();
        KeptVisits.keep(ask.shelf(), all.fresh());
        if (!written.isEmpty() && all.planned() > 0) {
            onlooker.says("Planned again for " + all.planned() + " of " + boats.size()
                    + " boats: what their visits rest on has changed.");
        }
        remarks.addAll(all.remarks());
        works = all.works();
        return boats;
    }

    private SeasonOfYard season(List<SeasonBoat> boats, List<Published> published) {
        SeasonRequest request =
                AfterEvents.of(new RequestOfYard(ask, yard, files, dates, fixed).of(boats, published), ask.events());
        List<SeasonFault> faults = SeasonFaults.of(request);
        if (!faults.isEmpty()) {
            throw new BadInput(
                    faults.stream().map(f -> FaultPlaces.problem(f, files)).toList());
        }
        return SeasonOfYard.of(request);
    }

    /** The plan from which this one goes on; empty for a season planned anew. */
    private List<Published> known() {
        PlannedSeason standing = base;
        if (standing != null) {
            boolean anew = ask.fresh() || standing.published().isEmpty();
            LocalDate basis = anew ? ask.today() : standing.visitsOf().orElse(ask.today());
            return standing.dated().published(basis);
        }
        return ask.fresh() ? List.of() : files.published();
    }

    private PlannedSeason anew(SeasonOfYard season) {
        Budget budget = Budget.seconds(ask.seconds(), ask.nanoClock());
        try {
            SeasonAnswer answer = SeasonPlanner.plan(
                    season.problem(), budget, ask.seed(), new BoundShare(ask.nanoClock()), watch(season));
            return judged(season, answer);
        } catch (SeasonAnswer.NoPlan none) {
            throw clash(season.problem(), none.operations(), season);
        }
    }

    private BadInput clash(SeasonProblem problem, List<Integer> without, SeasonOfYard season) {
        onlooker.says("There is no room for everything; looking for what clashes and what would help ...");
        return new NoSuchSeason(
                ClashWords.of(WhyNoSeason.of(problem, without, ask.seed(), PROOF_SECONDS), season.with(problem)));
    }

    private PlannedSeason onFrom(SeasonOfYard season, List<Published> published) {
        Replanner replanner = replanner(season, published);
        SeasonOfYard after = season.with(replanner.season());
        onlooker.says(RepairWords.of(replanner, after));
        onlooker.goOn(0, replanner.plan().cost().total() * after.pointValue(), 0);
        SeasonAnswer answer = SeasonPlanner.goOn(
                after.problem(),
                replanner.plan(),
                Budget.seconds(ask.seconds(), ask.nanoClock()),
                ask.seed(),
                new BoundShare(ask.nanoClock()),
                watch(after));
        return judged(after, answer);
    }

    private Replanner replanner(SeasonOfYard season, List<Published> published) {
        SeasonPlan old = new SeasonPlan(KeptPlan.starts(season, published), new Cost(0, 0, 0, 0, 0, 0), "as published");
        try {
            return new Replanner(season.problem(), old, season.time().quarterFrom(ask.today()), List.of());
        } catch (Replanner.NoRoom none) {
            throw clash(none.season(), none.operations(), season);
        }
    }

    private Progress watch(SeasonOfYard season) {
        return new Progress() {
            @Override
            public boolean goOn(double spent, long cost, Bound bound) {
                return onlooker.goOn(spent, cost * season.pointValue(), bound.value() * season.pointValue());
            }

            @Override
            public void better(Supplier<SeasonAnswer> answer) {
                onlooker.better(() -> judged(season, answer.get()));
            }
        };
    }

    private PlannedSeason judged(SeasonOfYard season, SeasonAnswer answer) {
        SeasonProblem problem = season.problem();
        List<String> wrong = new ArrayList<>();
        SeasonCheck.of(problem, answer.plan()).forEach(v -> wrong.add(v.message()));
        DatedSeason dated = DatedSeason.of(season, answer.plan(), answer.bound());
        wrong.addAll(DatedSeasonCheck.of(season.request(), dated));
        if (!wrong.isEmpty()) {
            throw new IllegalStateException("the plan was refused by its judges and is not shown: "
                    + String.join("; ", wrong.subList(0, Math.min(5, wrong.size()))));
        }
        return new PlannedSeason(
                yard,
                season,
                answer.plan(),
                dated,
                files.published(),
                remarks,
                answer.firstCost() * season.pointValue(),
                works);
    }
}
