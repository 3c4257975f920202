package sternwright.job;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;
import sternwright.boat.ShorePower;
import sternwright.boat.Side;
import sternwright.boat.Water;
import sternwright.boat.Winter;
import sternwright.due.ClauseKind;
import sternwright.finding.Caution;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.measure.Money;
import sternwright.service.Interval;
import sternwright.service.Place;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;
import sternwright.service.Scope;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.planned.SupplyLine;
import sternwright.yard.LengthBand;
import sternwright.yard.SeasonDates;
import sternwright.yard.Tariff;
import sternwright.yard.WorkCalendar;
import sternwright.yard.Yard;

/** One invented yacht on a saildrive with her lay-up visit, worked through by hand: the numbers are checked in the tests. */
public final class InventedVisits {
    /** The yard's currency. */
    public static final Currency EUR = Currency.getInstance("EUR");
    /** The day the papers are written. */
    public static final LocalDate ISSUED = LocalDate.of(2026, 9, 14);

    private InventedVisits() {}

    /** The yard: 72 an hour, 19 % tax. */
    public static Yard yard() {
        Tariff tariff = new Tariff(List.of(new LengthBand(12, 480)), 9, 65, 30, 150, 95);
        return new Yard(
                "Invented Yard on the Invented Sound",
                true,
                EUR,
                "VAT",
                19,
                72,
                15,
                tariff,
                SeasonDates.NORTHERN,
                new WorkCalendar(Set.of(DayOfWeek.MONDAY), Set.of()),
                List.of(),
                List.of());
    }

    /** The berth: it freezes, boats are on shore power. */
    public static Berth berth() {
        return new Berth(
                "inner-basin",
                "inner basin, pontoon C",
                54.3,
                new Water(16.0, null, List.of()),
                MonthDay.of(11, 5),
                MonthDay.of(4, 10),
                false,
                ShorePower.GALVANIC_ISOLATOR);
    }

    /** The yacht. */
    public static Boat boat() {
        LocalDate fitted = LocalDate.of(2018, 5, 12);
        Installation main = new Installation(
                "main",
                Side.CENTRELINE,
                Arrangement.SAILDRIVE,
                Cooling.FRESH_WATER,
                null,
                21.3,
                List.of(
                        part("engine", "engine", 4.5, 1).fitted(fitted, 0.0),
                        part("raw-water-pump", "raw-water-pump", null, 1.5).fitted(fitted, 0.0),
                        part("coolant", "coolant-circuit", 5.0, 1).fitted(fitted, 0.0),
                        part("mounts", "mounts-saildrive", null, 2.5).fitted(fitted, 0.0),
                        part("seacock", "seacock", null, 1),
                        part("raw-water", "raw-water-circuit", null, 1),
                        part("leg", "leg", null, 1).fitted(fitted, 0.0),
                        part("diaphragm", "diaphragm-seal", null, 2.5).fitted(fitted, 0.0),
                        part("leg-anode", "leg-anode", null, 1).fitted(LocalDate.of(2025, 4, 2), 610.0),
                        part("propeller", "folding-propeller", null, 1).fitted(fitted, 0.0)));
        return new Boat(
                "grey-plover",
                "Grey Plover",
                new Owner("M. Invented", "owner@example.org"),
                "inner-basin",
                "cruising",
                Winter.ASHORE,
                new Hull(10.6, 3.4, 1.9, 6400, HullMaterial.GRP),
                List.of(main),
                List.of(),
                null,
                null);
    }

    /** Kinds of her parts. */
    public static PartCatalogue catalogue() {
        return new PartCatalogue(List.of(
                new PartKind("seacock", "seacock", "seacocks", true, "bronze", null, Set.of("hull-opening")),
                new PartKind(
                        "diaphragm-seal",
                        "diaphragm seal",
                        "diaphragm-seal",
                        false,
                        null,
                        null,
                        Set.of("hull-opening"))));
    }

    /** Two meter readings, last year's anode and a coolant test. */
    public static BoatHistory history() {
        return new BoatHistory(
                "grey-plover",
                List.of(
                        new ServiceEntry(
                                LocalDate.of(2025, 10, 10),
                                ref("leg-anode"),
                                "underwater-anodes",
                                Outcome.DONE,
                                655.0,
                                "J. Invented",
                                List.of(new TakenReading("anode-remaining", 82, "%")),
                                ""),
                        new ServiceEntry(
                                LocalDate.of(2025, 10, 10),
                                ref("coolant"),
                                "coolant-test",
                                Outcome.DONE,
                                655.0,
                                "J. Invented",
                                List.of(new TakenReading("freeze-point", -27, "°C")),
                                "")),
                List.of(
                        MeterReading.of(LocalDate.of(2025, 10, 10), "main", 655),
                        MeterReading.of(LocalDate.of(2026, 6, 20), "main", 702)));
    }

    /** Texts of the cautions her rules name. */
    public static List<Caution> cautions() {
        return List.of(
                new Caution(
                        "hot-oil", "Warm oil scalds and used oil harms the skin: gloves, and a tray under the filter."),
                new Caution("rotating-parts", "Belts and shafts: engine stopped, key out, and a notice at the helm."),
                new Caution(
                        "waste",
                        "Oil, filters, coolant and antifreeze are caught and handed in as local rules say; nothing into bilge or"
                                + " drain."),
                new Caution(
                        "antifreeze",
                        "Ethylene glycol poisons people, pets and fish. Raw-water sides get propylene glycol, caught at the outlet."),
                new Caution(
                        "hot-coolant",
                        "Never open a hot coolant circuit: it boils over. Wait until the cap is hand-warm."));
    }

    /** Everything beside the visit. */
    public static CardFacts facts() {
        return new CardFacts(yard(), boat(), berth(), catalogue(), cautions(), history(), ISSUED);
    }

    /** The lay-up visit. Labour 72.00 an hour; the sums stand in the tests. */
    public static PlannedVisit layUp() {
        List<PlannedWork> works = LayUpWorks.all();
        List<SupplyLine> supplies = new ArrayList<>();
        works.forEach(w -> supplies.addAll(w.supplies()));
        List<PriceLine> prices = List.of(
                new PriceLine("lift, wash and launch", 1, "boat of 10.6 m", eur(480)),
                new PriceLine("hard standing", 2, "weeks", eur(190.80)),
                new PriceLine("set-up at 6 service points", 1.5, "h", eur(108)));
        double minutes = works.stream().mapToDouble(PlannedWork::minutes).sum() + 90;
        Money net = Money.zero(EUR);
        for (PlannedWork w : works) {
            net = net.plus(w.price());
        }
        for (PriceLine p : prices) {
            net = net.plus(p.amount());
        }
        return new PlannedVisit(
                "grey-plover",
                LocalDate.of(2026, 10, 5),
                LocalDate.of(2026, 10, 16),
                Place.ASHORE,
                true,
                works,
                minutes,
                supplies,
                prices,
                net,
                eur(545));
    }

    /** One planned work. */
    public static PlannedWork work(
            Rule rule,
            String part,
            String partName,
            String point,
            double minutes,
            String reason,
            List<SupplyLine> supplies) {
        Money labour = Money.of(minutes / 60 * 72, EUR);
        Money price = labour;
        for (SupplyLine s : supplies) {
            Money amount = s.price();
            price = amount == null ? price : price.plus(amount);
        }
        ClauseKind clause = rule.interval().lifeMonths() != null ? ClauseKind.LIFE : ClauseKind.MONTHS;
        return new PlannedWork(
                ref(part),
                partName,
                new RuleInForce(rule, Scope.GENERIC, rule.source()),
                LocalDate.of(2026, 10, 10),
                clause,
                reason,
                point,
                minutes,
                labour,
                supplies,
                price);
    }

    /** A supply. */
    public static SupplyLine supply(String item, double quantity, String unit, @Nullable Double price, String note) {
        return new SupplyLine(item, item.replace('-', ' '), quantity, unit, price == null ? null : eur(price), note);
    }

    /** An amount. */
    public static Money eur(double amount) {
        return Money.of(amount, EUR);
    }

    /** A part of the one installation. */
    public static PartRef ref(String part) {
        return new PartRef("main", part);
    }

    /** An interval by life alone. */
    static Interval life(int months) {
        return new Interval(null, null, months, null, null, List.of(), null);
    }

    private static Part part(String id, String kind, @Nullable Double capacityL, double access) {
        return new Part(id, kind, null, null, null, capacityL, access, null, null, null, null, Set.of(), Map.of());
    }
}
