package sternwright.app.web.visits;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import sternwright.app.paper.Figures;
import sternwright.app.paper.Words;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.boat.Boat;
import sternwright.service.Place;
import sternwright.visit.BoatPlan;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.VisitAt;

/** Puts a plan changed by hand into words and formats of the reader. */
final class HandText {
    private final Page page;
    private final Figures f;
    private final PlanText plans;
    private final Boat boat;
    private final YearMonth firstMonth;
    private final String months;
    private final boolean agreed;
    private final String looked;

    HandText(Page page, Boat boat, YearMonth firstMonth, String months, boolean agreed, String looked) {
        this.page = page;
        this.f = page.figures();
        this.plans = new PlanText(page);
        this.boat = boat;
        this.firstMonth = firstMonth;
        this.months = months;
        this.agreed = agreed;
        this.looked = looked;
    }

    HandView view(HandPlan hand, List<String> changes, String back) {
        boolean first = changes.isEmpty();
        String costs = first && !agreed
                ? page.say("visits.hand.first")
                : page.say(
                        first ? "visits.hand.costs.agreed" : "visits.hand.costs",
                        plans.more(hand.difference()),
                        f.money(hand.plan().net()));
        return new HandView(
                boat.id(),
                boat.name(),
                page.say(agreed ? "visits.hand.from.agreed" : "visits.hand.from.proposed"),
                months,
                agreed,
                looked,
                changes,
                back,
                costs,
                hand.costs().stream()
                        .filter(c -> c.difference().amount().signum() != 0)
                        .map(c -> new HandView.Kind(
                                c.what(), f.money(c.proposed()), f.money(c.byHand()), plans.more(c.difference())))
                        .toList(),
                hand.broken().stream()
                        .map(b -> new HandView.Broken(Words.full(b.words()), Words.full(b.advice()), b.refused()))
                        .toList(),
                hand.said(),
                "",
                works(hand.plan()),
                places(hand.plan(), "visits.hand.left"),
                visits(hand.plan()),
                places(hand.plan(), "visits.hand.dropped"),
                plans.visits(hand.plan()),
                hand.allowed(),
                agreed && first);
    }

    /** The plan it begins from, with what is wrong about the last change. */
    HandView wrong(BoatPlan base, List<String> changes, String back, String wrong) {
        return new HandView(
                boat.id(),
                boat.name(),
                page.say(agreed ? "visits.hand.from.agreed" : "visits.hand.from.proposed"),
                months,
                agreed,
                looked,
                changes,
                back,
                "",
                List.of(),
                List.of(),
                List.of(),
                Words.full(wrong),
                works(base),
                places(base, "visits.hand.left"),
                visits(base),
                places(base, "visits.hand.dropped"),
                plans.visits(base),
                false,
                false);
    }

    private Field works(BoatPlan plan) {
        List<Field.Choice> works = plan.visits().stream()
                .flatMap(v -> v.works().stream()
                        .map(w -> new Field.Choice(
                                HandChanges.work(w.part(), w.inForce().rule().id(), at(v)),
                                page.say(
                                        "visits.hand.work.of",
                                        w.inForce().rule().work(),
                                        w.partName(),
                                        name(at(v))))))
                .toList();
        return Field.plain("what", page.say("visits.hand.work"), "").of(works);
    }

    private Field visits(BoatPlan plan) {
        List<Field.Choice> visits = plan.visits().stream()
                .map(v -> new Field.Choice("visit:" + HandChanges.word(at(v)), name(at(v))))
                .toList();
        return Field.plain("what", page.say("visits.hand.visit"), "").of(visits);
    }

    /** Visits that are there first, then every month of the plan afloat and ashore, then none at all. */
    private Field places(BoatPlan plan, String none) {
        List<Field.Choice> places = new ArrayList<>();
        List<VisitAt> there = plan.visits().stream().map(this::at).toList();
        there.forEach(a -> places.add(new Field.Choice(HandChanges.word(a), page.say("visits.hand.there", name(a)))));
        IntStream.range(0, Integer.parseInt(months))
                .mapToObj(firstMonth::plusMonths)
                .flatMap(m -> java.util.stream.Stream.of(new VisitAt(m, Place.AFLOAT), new VisitAt(m, Place.ASHORE)))
                .filter(a -> !there.contains(a))
                .forEach(a -> places.add(new Field.Choice(HandChanges.word(a), name(a))));
        places.add(new Field.Choice(HandChanges.NONE, page.say(none)));
        return Field.plain("to", page.say("visits.hand.to"), "").of(places);
    }

    private VisitAt at(PlannedVisit visit) {
        return VisitAt.of(visit, firstMonth);
    }

    private String name(VisitAt at) {
        return plans.at(at);
    }
}
