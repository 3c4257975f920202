package sternwright.app.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import sternwright.app.files.Shipped;
import sternwright.app.files.template.BoatTemplate;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.Winter;
import sternwright.due.Due;
import sternwright.due.DueList;
import sternwright.due.Reasons;
import sternwright.history.BoatHistory;
import sternwright.job.CardFacts;
import sternwright.job.InventedVisits;
import sternwright.measure.Money;
import sternwright.measure.MonthlyShare;
import sternwright.service.Half;
import sternwright.service.Place;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.service.RuleBook;
import sternwright.service.SupplyNeed;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.planned.SupplyLine;
import sternwright.yard.StoreItem;
import sternwright.yard.Use;

/** All that the shipped programme can ask of a new boat in one half of the year, put into one visit without any planning. */
final class RoughVisit {
    private static final Use USE =
            new Use("cruising", "cruising", 80, 0.4, new MonthlyShare(java.util.Collections.nCopies(12, 1.0)), false);

    private final PartCatalogue catalogue = Shipped.catalogue();
    private final Programme generic = Shipped.genericProgramme();
    private final Boat boat;

    RoughVisit(Arrangement arrangement, boolean twin) {
        boat = new BoatTemplate(Shipped.arrangements(), catalogue)
                .boat(new BoatTemplate.Known(
                        "invented-" + arrangement.name().toLowerCase(Locale.ROOT),
                        "Invented " + arrangement.name().toLowerCase(Locale.ROOT),
                        new Owner("M. Invented", null),
                        "inner-basin",
                        "cruising",
                        Winter.ASHORE,
                        11.0,
                        null,
                        null,
                        null,
                        HullMaterial.GRP,
                        arrangement,
                        Cooling.FRESH_WATER,
                        twin,
                        null,
                        null));
    }

    CardFacts facts() {
        return new CardFacts(
                InventedVisits.yard(),
                boat,
                InventedVisits.berth(),
                catalogue,
                generic.cautions(),
                BoatHistory.empty(boat.id()),
                InventedVisits.ISSUED);
    }

    PlannedVisit visit(Half half) {
        Reasons reasons = new Reasons(Locale.UK);
        List<PlannedWork> works = DueList.of(
                        boat,
                        InventedVisits.berth(),
                        USE,
                        InventedVisits.yard().season(),
                        RuleBook.of(generic, List.of(), catalogue)::forPart,
                        BoatHistory.empty(boat.id()),
                        Map.of(),
                        InventedVisits.ISSUED)
                .stream()
                .filter(d -> d.rule().half() == half || d.rule().half() == Half.ANY)
                .sorted(Comparator.comparing(Due::part))
                .map(d -> work(d, reasons.sentence(d)))
                .toList();
        List<PriceLine> prices = List.of(new PriceLine("lift, wash and launch", 1, "lift", InventedVisits.eur(480)));
        List<SupplyLine> supplies = new ArrayList<>();
        works.forEach(w -> supplies.addAll(w.supplies()));
        Money net = InventedVisits.eur(480);
        for (PlannedWork w : works) {
            net = net.plus(w.price());
        }
        return new PlannedVisit(
                boat.id(),
                LocalDate.of(2026, 10, 5),
                LocalDate.of(2026, 10, 30),
                Place.ASHORE,
                true,
                works,
                works.stream().mapToDouble(PlannedWork::minutes).sum(),
                supplies,
                prices,
                net,
                InventedVisits.eur(0));
    }

    private PlannedWork work(Due due, String reason) {
        Rule rule = due.rule();
        Installation installation =
                boat.installation(due.part().installationId()).orElseThrow();
        Part part = installation.part(due.part().partId()).orElseThrow();
        String side = boat.installations().size() > 1 ? ", " + Words.side(installation.side()) : "";
        List<SupplyLine> supplies =
                rule.supplies().stream().map(s -> supply(s, part)).toList();
        Money labour = Money.of(rule.minutes() / 60 * 72, InventedVisits.EUR);
        Money price = labour;
        for (SupplyLine s : supplies) {
            price = price.plus(Objects.requireNonNull(s.price()));
        }
        return new PlannedWork(
                due.part(),
                catalogue.find(part.kind()).orElseThrow().name() + side,
                due.inForce(),
                due.dueOn(),
                due.first().kind(),
                reason,
                Objects.requireNonNull(rule.servicePoint(), rule.id()),
                rule.minutes(),
                labour,
                supplies,
                price);
    }

    private static SupplyLine supply(SupplyNeed need, Part part) {
        StoreItem item = Shipped.stores().stream()
                .filter(s -> s.id().equals(need.item()))
                .findFirst()
                .orElseThrow();
        Double capacity = part.capacityL();
        boolean unknown = need.perCapacity() > 0 && capacity == null;
        double quantity =
                need.fixed() + (unknown ? need.ifUnknownL() : need.perCapacity() * (capacity == null ? 0 : capacity));
        return new SupplyLine(
                item.id(),
                item.name(),
                quantity,
                item.unit(),
                InventedVisits.eur(quantity * item.price()),
                unknown ? "capacity not known, " + need.ifUnknownL() + " L allowed" : "");
    }
}
