package sternwright.job.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.measure.Money;
import sternwright.service.Place;
import sternwright.visit.planned.PriceLine;

/**
 * What a visit is expected to cost, for the owner to say yes or no to line by line.
 *
 * <p>The total is the sum of the printed lines that are not declined; tax is taken once on that sum and rounded half up to the
 * currency's smallest unit.
 *
 * @param number boat id and first day of the visit; the job card has the same
 * @param yardName whose estimate it is
 * @param invented true for demo data, said on the paper
 * @param issuedOn the day it was written
 * @param validUntil last day on which the prices hold
 * @param boat the boat, with its owner
 * @param berth where it lies
 * @param from first day of the visit
 * @param to last day of the visit
 * @param place afloat or ashore
 * @param lifts the boat is lifted for it
 * @param lines the works
 * @param visitLines lines of the visit as a whole: lift, hard standing, call-out, set-up
 * @param taxName what the tax is called
 * @param taxPercent tax, percent
 * @param savedByBundling what the same works would cost more one by one, without tax
 * @param plannedNet the plan's own total without tax, to which the lines must add up
 */
public record Estimate(
        String number,
        String yardName,
        boolean invented,
        LocalDate issuedOn,
        LocalDate validUntil,
        Boat boat,
        Berth berth,
        LocalDate from,
        LocalDate to,
        Place place,
        boolean lifts,
        List<EstimateLine> lines,
        List<PriceLine> visitLines,
        String taxName,
        double taxPercent,
        Money savedByBundling,
        Money plannedNet) {
    /** Copies the lists. */
    public Estimate {
        lines = List.copyOf(lines);
        visitLines = List.copyOf(visitLines);
    }

    /**
     * The estimate with the owner's answers in it.
     *
     * @param declined numbers of the lines the owner does not want; every other line is accepted
     * @return a new estimate
     * @throws IllegalArgumentException if there is no line of one of the numbers
     */
    public Estimate answered(Collection<Integer> declined) {
        Set<Integer> unknown = new TreeSet<>(declined);
        lines.forEach(l -> unknown.remove(l.number()));
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException(
                    "estimate " + number + " has no line " + unknown + ": its lines are 1 to " + lines.size());
        }
        List<EstimateLine> answered = lines.stream()
                .map(l -> l.answered(declined.contains(l.number()) ? OwnerAnswer.DECLINED : OwnerAnswer.ACCEPTED))
                .toList();
        return new Estimate(
                number,
                yardName,
                invented,
                issuedOn,
                validUntil,
                boat,
                berth,
                from,
                to,
                place,
                lifts,
                answered,
                visitLines,
                taxName,
                taxPercent,
                savedByBundling,
                plannedNet);
    }

    /**
     * Whether at least one line is declined.
     *
     * @return true if so; then the visit has to be planned anew before prices of the visit as a whole can be relied on
     */
    public boolean anyDeclined() {
        return lines.stream().anyMatch(l -> !l.counts());
    }

    /**
     * Total without tax of what is not declined; unknown prices are not in it.
     *
     * @return the sum of works and visit lines; nothing at all if every work is declined
     */
    public Money net() {
        Money sum = Money.zero(plannedNet.currency());
        if (lines.stream().noneMatch(EstimateLine::counts)) {
            return sum;
        }
        for (EstimateLine l : lines) {
            sum = l.counts() ? sum.plus(l.price()) : sum;
        }
        for (PriceLine p : visitLines) {
            sum = sum.plus(p.amount());
        }
        return sum;
    }

    /**
     * Tax on the total.
     *
     * @return rounded half up once, on the sum
     */
    public Money tax() {
        return net().times(taxPercent / 100);
    }

    /**
     * Total with tax.
     *
     * @return what is to be paid if nothing unknown comes on top
     */
    public Money gross() {
        return net().plus(tax());
    }

    /**
     * Whether every price is known.
     *
     * @return false if something comes on top of the total
     */
    public boolean complete() {
        return lines.stream()
                .filter(EstimateLine::counts)
                .allMatch(l -> l.unpriced().isEmpty());
    }

    /**
     * The statements to sign: for each safety item, or once answered only for those that were declined.
     *
     * @return refusals in the order of the lines
     */
    public List<Refusal> refusals() {
        return lines.stream()
                .filter(EstimateLine::safety)
                .filter(l -> l.answer() != OwnerAnswer.ACCEPTED)
                .map(Refusal::of)
                .toList();
    }

    /**
     * What the yard should look at before the paper goes out.
     *
     * @return sentences; empty if there is nothing
     */
    public List<String> warnings() {
        List<String> found = new ArrayList<>();
        for (EstimateLine l : lines) {
            for (String item : l.unpriced()) {
                found.add("Line " + l.number() + ": the stores have no price for " + item
                        + "; it is not in the total. Add it to the stores in yard.yaml.");
            }
            if (l.ifDeclined().isBlank()) {
                found.add("Line " + l.number() + ": the rule "
                        + l.planned().inForce().rule().id() + " does not say what happens if it is declined.");
            }
        }
        for (PriceLine p : visitLines) {
            if (p.amount().amount().signum() == 0) {
                found.add("\"" + p.what() + "\" is priced at nothing: check the tariff in yard.yaml.");
            }
        }
        Warnings.ofTotal(this).ifPresent(found::add);
        Warnings.ofLift(this).ifPresent(found::add);
        return List.copyOf(found);
    }
}
