package sternwright.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sternwright.boat.Part;
import sternwright.measure.Money;
import sternwright.service.Rule;
import sternwright.service.SupplyNeed;
import sternwright.visit.planned.SupplyLine;
import sternwright.yard.StoreItem;
import sternwright.yard.Yard;

/** What works take and cost by the yard's rates: minutes by access, litres by capacity. */
final class Prices {
    private static final double MINUTES = 60;

    private final Yard yard;
    private final double perUnit;

    Prices(Yard yard) {
        this.yard = yard;
        perUnit = Math.pow(10, Math.max(0, yard.currency().getDefaultFractionDigits()));
    }

    /** An amount in the currency's smallest unit. */
    long cents(double amount) {
        return Math.round(amount * perUnit);
    }

    /** Money from an amount in the currency's smallest unit. */
    Money money(long cents) {
        return Money.of(cents / perUnit, yard.currency());
    }

    /** Money from an amount. */
    Money money(double amount) {
        return Money.of(amount, yard.currency());
    }

    /** Working minutes: the rule's, multiplied by the access score of the part. */
    double minutes(Rule rule, Part part) {
        return rule.minutes() * part.access();
    }

    /** Price of the minutes. */
    double labour(double minutes) {
        return minutes / MINUTES * yard.labourPerHour();
    }

    /** Price of opening one service point. */
    double setUp() {
        return labour(yard.setUpMinutes());
    }

    /** What a diver costs for the work, beside the engineer. */
    double diver(Rule rule, Part part) {
        return rule.diver() ? minutes(rule, part) / MINUTES * yard.tariff().diverHour() : 0;
    }

    /** What the work takes from the stores. */
    List<SupplyLine> supplies(Rule rule, Part part) {
        List<SupplyLine> lines = new ArrayList<>();
        for (SupplyNeed need : rule.supplies()) {
            lines.add(supply(need, part));
        }
        return lines;
    }

    private SupplyLine supply(SupplyNeed need, Part part) {
        StoreItem item = yard.storeItem(need.item()).orElse(null);
        Double capacity = part.capacityL();
        boolean allowed = capacity == null && need.perCapacity() > 0;
        double litres = capacity == null ? need.ifUnknownL() : capacity;
        double quantity = thousandths(need.fixed() + need.perCapacity() * litres);
        String note = allowed ? "capacity not known, " + trim(litres) + " L allowed for" : "";
        return item == null
                ? new SupplyLine(need.item(), need.item().replace('-', ' '), quantity, "pcs", null, note)
                : new SupplyLine(item.id(), item.name(), quantity, item.unit(), money(quantity * item.price()), note);
    }

    /** Millilitres and grams are the finest that is measured out. */
    private static double thousandths(double quantity) {
        return Math.round(quantity * 1000) / 1000.0;
    }

    private static String trim(double litres) {
        return litres == Math.rint(litres) ? Long.toString((long) litres) : Double.toString(litres);
    }

    /** Price of labour and priced supplies. */
    double price(Rule rule, Part part) {
        return labour(minutes(rule, part))
                + supplies(rule, part).stream().mapToDouble(Prices::amount).sum();
    }

    private static double amount(SupplyLine line) {
        Money price = line.price();
        return price == null ? 0 : price.toDouble();
    }

    /** Same items added up, in the order of their first use. */
    static List<SupplyLine> addedUp(List<SupplyLine> lines) {
        Map<String, SupplyLine> byItem = new LinkedHashMap<>();
        lines.forEach(l -> byItem.merge(l.item(), l, Prices::add));
        return List.copyOf(byItem.values());
    }

    private static SupplyLine add(SupplyLine a, SupplyLine b) {
        Money one = a.price();
        Money other = b.price();
        boolean same = b.note().isEmpty() || a.note().contains(b.note());
        String note = same ? a.note() : a.note().isEmpty() ? b.note() : a.note() + "; " + b.note();
        return new SupplyLine(
                a.item(),
                a.name(),
                thousandths(a.quantity() + b.quantity()),
                a.unit(),
                one == null || other == null ? null : one.plus(other),
                note);
    }
}
