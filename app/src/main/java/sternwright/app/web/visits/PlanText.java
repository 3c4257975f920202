package sternwright.app.web.visits;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sternwright.app.desk.proving.PlanRun;
import sternwright.app.paper.Figures;
import sternwright.app.paper.Words;
import sternwright.app.web.page.Page;
import sternwright.measure.Money;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.LeftAnswer;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.planned.SupplyLine;
import sternwright.visit.planned.VisitAt;
import sternwright.visit.problem.Proof;

/** Puts a plan into words and formats of the reader. */
final class PlanText {
    private final Page page;
    private final Figures f;

    PlanText(Page page) {
        this.page = page;
        this.f = page.figures();
    }

    String proof(PlanRun run, BoatPlan plan) {
        String cost = f.money(plan.planningCost());
        String better = f.money(plan.planningCost().minus(plan.bound()));
        if (!run.proofDone()) {
            return page.say("visits.proof.running", cost, better, percent(plan));
        }
        return plan.proof().status() == Proof.Status.OPTIMAL
                ? page.say(
                        "visits.proof.optimal",
                        cost,
                        f.number(Math.round(plan.proof().millis() / 10.0) / 100.0))
                : page.say("visits.proof.gap", cost, better, percent(plan));
    }

    private String percent(BoatPlan plan) {
        return f.quantity(Math.round(1000 * plan.gap()) / 10.0, "%");
    }

    List<String> clash(BoatAnswer.NoPlan none) {
        List<String> lines = new ArrayList<>();
        if (none.clash().isEmpty()) {
            lines.add(page.say("visits.clash.unknown"));
        }
        none.clash().forEach(lines::add);
        return lines;
    }

    List<PlanView.Visit> visits(BoatPlan plan) {
        List<PlannedVisit> all = plan.visits();
        return IntStream.range(0, all.size())
                .mapToObj(i -> visit(i + 1, all.get(i)))
                .toList();
    }

    PlanView.Visit visit(int number, PlannedVisit v) {
        boolean saves = v.savedByBundling().amount().signum() > 0;
        return new PlanView.Visit(
                number,
                v.from().toString(),
                v.place().name().toLowerCase(java.util.Locale.ROOT),
                f.dates(v.from(), v.to()),
                where(v),
                f.time(v.minutes()),
                v.works().stream().map(this::work).toList(),
                v.prices().stream().map(this::price).toList(),
                f.money(v.net()),
                saves ? page.say("visits.saved", f.money(v.savedByBundling())) : "",
                v.supplies().stream().map(this::supply).toList());
    }

    String where(PlannedVisit v) {
        return page.say(
                v.lifts()
                        ? "visits.where.lifted"
                        : "visits.where." + v.place().name().toLowerCase(java.util.Locale.ROOT));
    }

    private PlanView.Work work(PlannedWork w) {
        return new PlanView.Work(
                w.inForce().rule().work(),
                w.partName(),
                w.inForce().rule().safety(),
                f.shortDate(w.dueOn()),
                w.reason(),
                page.say(
                        "visits.figure",
                        w.inForce().scope().words(),
                        w.inForce().sources()),
                w.inForce().rule().ifDeclined(),
                f.time(w.minutes()),
                f.money(w.price()));
    }

    PlanView.Price price(PriceLine p) {
        String quantity = p.unit().isEmpty()
                ? ""
                : p.unit().equals("min") ? f.time(p.quantity()) : f.quantity(p.quantity(), p.unit());
        return new PlanView.Price(p.what(), quantity, f.money(p.amount()));
    }

    private String supply(SupplyLine s) {
        Money price = s.price();
        String what = page.say("visits.supply", f.supply(s.quantity(), s.unit()), s.name());
        String money = price == null ? page.say("visits.supply.unpriced") : f.money(price);
        return s.note().isEmpty()
                ? page.say("visits.supply.priced", what, money)
                : page.say("visits.supply.noted", what, money, s.note());
    }

    List<PlanView.Price> split(BoatPlan plan) {
        return plan.split().stream()
                .filter(l -> l.amount().amount().signum() != 0)
                .map(this::price)
                .toList();
    }

    List<PlanView.Alternative> alternatives(BoatPlan plan, PlanRun run) {
        Optional<PlanRun.Alternatives> known = run.alternatives();
        return known.isEmpty()
                ? List.of()
                : List.of(
                        alternative("visits.fewer", plan, known.get().fewer()),
                        alternative("visits.more", plan, known.get().more()));
    }

    private PlanView.Alternative alternative(String key, BoatPlan plan, BoatAnswer answer) {
        if (answer instanceof BoatPlan other) {
            return new PlanView.Alternative(
                    page.say(key),
                    more(other.planningCost().minus(plan.planningCost())),
                    other.visits().stream()
                            .map(v -> page.say("visits.short", f.dates(v.from(), v.to()), where(v), f.money(v.net())))
                            .toList());
        }
        return new PlanView.Alternative(
                page.say(key), page.say("visits.impossible", cannot((BoatAnswer.NoPlan) answer)), List.of());
    }

    private String cannot(BoatAnswer.NoPlan none) {
        return none.clash().isEmpty() ? page.say("visits.clash.unknown") : String.join("; ", none.clash());
    }

    /** So much more, so much less, or the same. */
    String more(Money difference) {
        int sign = difference.amount().signum();
        return sign == 0
                ? page.say("visits.same")
                : page.say(
                        sign > 0 ? "visits.dearer" : "visits.cheaper",
                        f.money(sign > 0 ? difference : difference.times(-1)));
    }

    String left(LeftAnswer left) {
        String until = f.date(left.until());
        String answer = left.answer() instanceof BoatAnswer.NoPlan none
                ? page.say("visits.left.impossible", left.work(), until, cannot(none))
                : page.say("visits.left.answer", left.work(), until, more(left.moreMoney()), more(left.moreRisk()));
        String happens = left.ifLeft().isBlank() ? "" : " " + page.say("visits.if-left", Words.full(left.ifLeft()));
        return answer + happens + (left.safetyPastLife() ? " " + page.say("visits.left.past-life") : "");
    }

    /** What is agreed, in a sentence; empty if nothing is. */
    String agreed(List<AgreedWork> works) {
        if (works.isEmpty()) {
            return "";
        }
        String visits = works.stream()
                .map(AgreedWork::at)
                .distinct()
                .sorted()
                .map(this::at)
                .collect(Collectors.joining("; "));
        AgreedWork last = works.get(works.size() - 1);
        return page.say("visits.agreed", last.who(), f.date(last.agreedOn()), visits);
    }

    /** A visit by its month and place. */
    String at(VisitAt at) {
        String month = at.month().format(DateTimeFormatter.ofPattern("MMMM uuuu", page.locale()));
        return page.say("visits.hand.at", month, at.place().words());
    }

    List<String> notes(BoatPlan plan) {
        List<String> notes = new ArrayList<>();
        plan.refused()
                .forEach(d -> notes.add(page.say("visits.refused", d.rule().work(), d.part())));
        notes.addAll(plan.notes());
        return notes;
    }
}
