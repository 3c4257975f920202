package sternwright.visit;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sternwright.boat.PartRef;
import sternwright.due.Due;
import sternwright.measure.Money;
import sternwright.service.Rule;
import sternwright.visit.check.VisitCheck;
import sternwright.visit.check.VisitFault;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.HandChange;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.problem.CostSplit;
import sternwright.visit.problem.LeftUntil;
import sternwright.visit.problem.MonthVisit;
import sternwright.visit.problem.VisitAnswer;
import sternwright.visit.problem.VisitDemands;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitRefusal;
import sternwright.visit.solver.ByHand;
import sternwright.visit.solver.SolveLimits;
import sternwright.visit.solver.VisitSolver;

/** The visits of one boat: planned, proven, and argued about. */
public final class BoatVisits {
    private final BoatQuestion question;
    private final BoatProblem boat;
    private final Prices prices;

    private BoatVisits(BoatQuestion question) {
        this.question = question;
        boat = ProblemFromDues.of(question);
        prices = new Prices(question.yard());
    }

    /**
     * Opens the question of a boat.
     *
     * @param question boat, yard, due list and today
     * @return the question, ready to be answered
     */
    public static BoatVisits of(BoatQuestion question) {
        return new BoatVisits(question);
    }

    /**
     * The month a plan begins with: too few days left of the running month belong to the next.
     *
     * @param today the day from which visits can be held
     * @return this month or the next
     */
    public static YearMonth firstMonth(LocalDate today) {
        return BoatCalendar.firstMonth(today);
    }

    /**
     * The lean problem behind it.
     *
     * @return months, works by index, rules
     */
    public VisitProblem problem() {
        return boat.problem();
    }

    /**
     * A plan at once, with its first bound.
     *
     * @param limits time to keep to
     * @return a plan, or what clashes
     */
    public BoatAnswer first(SolveLimits limits) {
        return answer(boat.problem(), VisitSolver.first(boat.problem(), limits));
    }

    /**
     * The plan with its proof.
     *
     * @param limits time, branches and gap
     * @return a plan, or what clashes
     */
    public BoatAnswer plan(SolveLimits limits) {
        return answer(boat.problem(), VisitSolver.solve(boat.problem(), limits));
    }

    /**
     * The plan under other demands: visits promised or ruled out, a number of visits, works left.
     *
     * @param demands what is asked besides the rules
     * @param limits time, branches and gap
     * @return a plan, or what clashes
     */
    public BoatAnswer plan(VisitDemands demands, SolveLimits limits) {
        VisitProblem asked = boat.problem().with(demands);
        return answer(asked, VisitSolver.solve(asked, limits));
    }

    /**
     * The best plan with another number of visits: one fewer, one more.
     *
     * @param plan the plan to compare with
     * @param more how many visits more, negative for fewer
     * @param limits time, branches and gap
     * @return a plan, or what clashes
     */
    public BoatAnswer withVisits(BoatPlan plan, int more, SolveLimits limits) {
        int visits = plan.lean().visits().size() + more;
        if (visits < 0) {
            return new BoatAnswer.NoPlan(
                    question.boat().id(), List.of("the plan has no visit that could be left out"), true);
        }
        return plan(VisitDemands.NONE.withVisits(visits), limits);
    }

    /**
     * What if a work is left until a day: money and risk against the plan.
     *
     * @param plan the plan to compare with
     * @param part the part
     * @param ruleId the rule
     * @param until the day; the work is not done in a month before it
     * @param limits time, branches and gap
     * @return the comparison; empty if no such work is planned
     */
    public Optional<LeftAnswer> leftUntil(
            BoatPlan plan, PartRef part, String ruleId, LocalDate until, SolveLimits limits) {
        for (int j = 0; j < boat.works().size(); j++) {
            BoatWork w = boat.works().get(j);
            boolean named = w.phases().stream().anyMatch(r -> r.rule().id().equals(ruleId));
            if (w.ref().equals(part) && named) {
                return Optional.of(left(plan, j, until, limits));
            }
        }
        return Optional.empty();
    }

    /**
     * What a person changes in a plan, checked and priced beside it.
     *
     * @param proposed the plan it begins from
     * @param changes in the order they were made
     * @return the changed plan, its cost against the proposed one by kind, and the rules it breaks
     * @throws IllegalArgumentException if a visit or a work that is named is not there, or a month lies outside the plan
     */
    public HandPlan byHand(BoatPlan proposed, List<HandChange> changes) {
        ChangeByHand change = new ChangeByHand(boat, proposed.lean());
        return beside(proposed, change.after(changes), change.said());
    }

    /**
     * The plan with its works in the visits that were agreed. Works of which nothing is agreed stay where they are proposed; agreed
     * works that are no longer due are passed over, as are months outside the plan.
     *
     * @param proposed the plan to begin from
     * @param agreed what is agreed for this boat
     * @return the agreed plan, its cost against the proposed one by kind, and the rules it breaks
     */
    public HandPlan asAgreed(BoatPlan proposed, List<AgreedWork> agreed) {
        return beside(proposed, new ChangeByHand(boat, proposed.lean()).asAgreed(agreed), List.of());
    }

    private HandPlan beside(BoatPlan proposed, List<MonthVisit> visits, List<String> said) {
        VisitPlan lean = ByHand.of(boat.problem(), visits);
        List<VisitFault> before = VisitCheck.faults(boat.problem(), proposed.lean());
        List<VisitFault> faults = VisitCheck.faults(boat.problem(), lean).stream()
                .filter(f -> !before.contains(f))
                .toList();
        faults.stream()
                .filter(f -> f.kind() == VisitFault.Kind.FIGURES)
                .findFirst()
                .ifPresent(f -> {
                    throw new IllegalStateException(
                            "the changed plan of " + question.boat().id() + ": " + f.words());
                });
        BoatPlan plan = new BoatPlan(
                question.boat().id(),
                new VisitWriter(question, boat, lean).visits(),
                prices.money(lean.cost().total()),
                split(lean.cost()),
                proposed.bound(),
                Math.max(
                        0,
                        1
                                - proposed.lean().proof().boundCents()
                                        / Math.max(1.0, lean.cost().total())),
                lean.proof(),
                boat.refused(),
                boat.notes(),
                lean);
        List<HandPlan.CostChange> costs = new ArrayList<>();
        for (int i = 0; i < plan.split().size(); i++) {
            PriceLine was = proposed.split().get(i);
            costs.add(new HandPlan.CostChange(
                    was.what(), was.amount(), plan.split().get(i).amount()));
        }
        return new HandPlan(plan, costs, new BrokenRules(boat).of(faults), said);
    }

    private LeftAnswer left(BoatPlan plan, int work, LocalDate until, SolveLimits limits) {
        int month = Math.max(0, (int) Math.floor(new BoatCalendar(question).monthsUntil(until)));
        VisitDemands left = VisitDemands.NONE.withLeft(List.of(new LeftUntil(work, month)));
        VisitProblem asked = LeftWork.mayWait(boat.problem(), work, month).with(left);
        BoatAnswer answer = answer(asked, VisitSolver.solve(asked, limits));
        BoatWork w = boat.works().get(work);
        Rule rule = w.phases().get(boat.problem().works().get(work).nextPhase()).rule();
        Due due = w.due();
        boolean pastLife = rule.safety() && due != null && until.isAfter(due.lastSensible());
        Money none = prices.money(0L);
        if (answer instanceof BoatPlan other) {
            CostSplit a = plan.lean().cost();
            CostSplit b = other.lean().cost();
            long risk = b.risk() - a.risk();
            Money money = prices.money(b.total() - a.total() - risk);
            return new LeftAnswer(w.words(), until, answer, money, prices.money(risk), rule.ifDeclined(), pastLife);
        }
        return new LeftAnswer(w.words(), until, answer, none, none, rule.ifDeclined(), pastLife);
    }

    private BoatAnswer answer(VisitProblem problem, VisitAnswer answer) {
        if (answer instanceof VisitRefusal refusal) {
            return new BoatAnswer.NoPlan(question.boat().id(), refusal.clash(), refusal.minimal());
        }
        VisitPlan plan = (VisitPlan) answer;
        List<String> wrong = VisitCheck.violations(problem, plan);
        if (!wrong.isEmpty()) {
            throw new IllegalStateException("the plan of " + question.boat().id() + " does not hold: " + wrong);
        }
        return new BoatPlan(
                question.boat().id(),
                new VisitWriter(question, boat, plan).visits(),
                prices.money(plan.cost().total()),
                split(plan.cost()),
                prices.money(plan.proof().boundCents()),
                plan.gap(),
                plan.proof(),
                boat.refused(),
                boat.notes(),
                plan);
    }

    private List<PriceLine> split(CostSplit c) {
        List<PriceLine> lines = new ArrayList<>();
        add(lines, "call-outs and work visits, with what is done at every visit", c.visits());
        add(lines, "lifts", c.lifts());
        add(lines, "hard standing", c.standing());
        add(lines, "opening up service points", c.setUps());
        add(lines, "labour and supplies", c.work());
        add(lines, "life thrown away by doing early", c.unusedLife());
        add(lines, "risk of doing late", c.risk());
        add(lines, "loss of use", c.lossOfUse());
        add(lines, "life used up by the end of the horizon", c.end());
        return lines;
    }

    private void add(List<PriceLine> lines, String what, long cents) {
        lines.add(new PriceLine(what, 1, "", prices.money(cents)));
    }
}
