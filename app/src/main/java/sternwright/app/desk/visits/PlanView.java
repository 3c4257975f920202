package sternwright.app.desk.visits;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import sternwright.due.Due;
import sternwright.measure.Money;
import sternwright.visit.BoatPlan;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.planned.SupplyLine;

/**
 * A boat's planned visits, flat, for other programs.
 *
 * @param boat the boat
 * @param currency ISO 4217 currency of every amount
 * @param visits the visits in order of time
 * @param net what the owner pays for all visits, without tax
 * @param planningCost what the plan minimises
 * @param bound no plan can cost less than this
 * @param gapPercent how far the plan may be above the cheapest, percent of its cost
 * @param proof optimal, within-gap or stopped
 * @param proofMillis time used, milliseconds
 * @param split the planning cost by cause
 * @param refused works the owner refused, on record
 * @param notes what was assumed
 */
public record PlanView(
        String boat,
        String currency,
        List<Visit> visits,
        BigDecimal net,
        BigDecimal planningCost,
        BigDecimal bound,
        double gapPercent,
        String proof,
        long proofMillis,
        List<Line> split,
        List<String> refused,
        List<String> notes) {
    /** One visit. */
    public record Visit(
            LocalDate from,
            LocalDate to,
            String place,
            boolean lifts,
            double minutes,
            BigDecimal net,
            BigDecimal savedByBundling,
            List<Work> works,
            List<Supply> supplies,
            List<Line> prices) {}

    /** One work of a visit. */
    public record Work(
            String installation,
            String part,
            String rule,
            String work,
            LocalDate dueOn,
            String reason,
            double minutes,
            BigDecimal price,
            boolean safety,
            String scope,
            String source) {}

    /** Something from the stores; price empty if the stores have none. */
    public record Supply(String item, String name, double quantity, String unit, String price, String note) {}

    /** A line of money. */
    public record Line(String what, double quantity, String unit, BigDecimal amount) {}

    /**
     * The view of a plan.
     *
     * @param plan the plan
     * @return the view
     */
    public static PlanView of(BoatPlan plan) {
        return new PlanView(
                plan.boatId(),
                plan.planningCost().currency().getCurrencyCode(),
                plan.visits().stream().map(PlanView::visit).toList(),
                plan.net().amount(),
                plan.planningCost().amount(),
                plan.bound().amount(),
                100 * plan.gap(),
                plan.proof().status().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                plan.proof().millis(),
                plan.split().stream().map(PlanView::line).toList(),
                plan.refused().stream().map(PlanView::refused).toList(),
                plan.notes());
    }

    private static Visit visit(PlannedVisit v) {
        return new Visit(
                v.from(),
                v.to(),
                v.place().words(),
                v.lifts(),
                v.minutes(),
                v.net().amount(),
                v.savedByBundling().amount(),
                v.works().stream().map(PlanView::work).toList(),
                v.supplies().stream().map(PlanView::supply).toList(),
                v.prices().stream().map(PlanView::line).toList());
    }

    private static Work work(PlannedWork w) {
        return new Work(
                w.part().installationId(),
                w.part().partId(),
                w.inForce().rule().id(),
                w.inForce().rule().work(),
                w.dueOn(),
                w.reason(),
                w.minutes(),
                w.price().amount(),
                w.inForce().rule().safety(),
                w.inForce().scope().words(),
                w.inForce().sources());
    }

    private static Supply supply(SupplyLine s) {
        Money price = s.price();
        return new Supply(
                s.item(),
                s.name(),
                s.quantity(),
                s.unit(),
                price == null ? "" : price.amount().toPlainString(),
                s.note());
    }

    private static Line line(PriceLine p) {
        return new Line(p.what(), p.quantity(), p.unit(), p.amount().amount());
    }

    private static String refused(Due due) {
        return due.rule().work() + " (" + due.part() + ")";
    }
}
