package sternwright.job.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sternwright.job.InventedVisits;
import sternwright.job.JobCard;
import sternwright.job.JobCards;
import sternwright.measure.Money;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PriceLine;

/**
 * The sums are worked by hand at 72.00 an hour: oil 72.00 + 54.70, coolant test 12.00 + 1.80, impeller 81.00, isolation
 * 12.00, diaphragm 576.00 + 412.00, mounts 45.00, leg oil 48.00 + 33.00, anodes 24.00 + 38.50, propeller 36.00, frost
 * 72.00 + 52.00: 1570.00. Lift 480.00, standing 190.80, set-up 108.00: 778.80. Net 2348.80, 19 % of it 446.272.
 */
class EstimatesTest {
    private final Estimate estimate = Estimates.of(InventedVisits.layUp(), InventedVisits.facts(), 30);

    @Test
    void totalsAgreeWithTheSumWorkedByHand() {
        assertEquals(InventedVisits.eur(2348.80), estimate.net());
        assertEquals(InventedVisits.eur(446.27), estimate.tax());
        assertEquals(InventedVisits.eur(2795.07), estimate.gross());
    }

    @Test
    void linesBearTheNumbersOfTheJobCard() {
        JobCard card = JobCards.of(InventedVisits.layUp(), InventedVisits.facts());
        for (EstimateLine line : estimate.lines()) {
            assertEquals(card.works().get(line.number() - 1).planned(), line.planned());
        }
    }

    @Test
    void aDeclinedLineLeavesTheTotalAndTheVisitLinesStay() {
        int oil = number("engine-oil");
        Estimate answered = estimate.answered(List.of(oil));
        assertEquals(InventedVisits.eur(2348.80 - 126.70), answered.net());
        assertEquals(InventedVisits.eur(422.20), answered.tax());
        assertTrue(answered.refusals().isEmpty(), "an oil change is no safety item");
        assertTrue(answered.anyDeclined());
    }

    @Test
    void everyLineDeclinedCostsNothing() {
        List<Integer> all = estimate.lines().stream().map(EstimateLine::number).toList();
        assertEquals(Money.zero(InventedVisits.EUR), estimate.answered(all).gross());
    }

    @Test
    void aSafetyItemIsDeclinedOnlyBySignature() {
        assertEquals(2, estimate.refusals().size(), "diaphragm seal and frost protection");
        Estimate answered = estimate.answered(List.of(number("diaphragm-seal")));
        assertEquals(1, answered.refusals().size());
        String statement = answered.refusals().get(0).statement();
        assertTrue(statement.contains("safety item"));
        assertTrue(statement.contains("the boat can sink"));
        assertTrue(statement.contains("advises against using the boat"));
    }

    @Test
    void aPriceThatIsNotKnownIsSaidAndNeverCountedAsNothing() {
        assertFalse(estimate.complete());
        int impeller = number("impeller");
        assertEquals(List.of("impeller kit"), estimate.lines().get(impeller - 1).unpriced());
        assertTrue(estimate.warnings().stream().anyMatch(w -> w.contains("no price for impeller kit")));
        assertTrue(estimate.answered(List.of(impeller)).complete());
    }

    @Test
    void aLiftNoLineNeedsIsPointedOut() {
        List<Integer> ashore = estimate.lines().stream()
                .filter(l -> l.planned().inForce().rule().place() == sternwright.service.Place.ASHORE)
                .map(EstimateLine::number)
                .toList();
        assertTrue(estimate.answered(ashore).warnings().stream().anyMatch(w -> w.contains("without the lift")));
        assertFalse(estimate.warnings().stream().anyMatch(w -> w.contains("without the lift")));
    }

    @Test
    void linesThatDoNotAddUpToThePlanAreSaid() {
        assertFalse(estimate.warnings().stream().anyMatch(w -> w.contains("add up")));
        PlannedVisit v = InventedVisits.layUp();
        PlannedVisit wrong = withPrices(v, v.prices().subList(0, 1));
        assertTrue(Estimates.of(wrong, InventedVisits.facts(), 30).warnings().stream()
                .anyMatch(w -> w.contains("add up to 2050.00 EUR, the plan says 2348.80 EUR")));
    }

    @Test
    void aVisitLinePricedAtNothingIsSaid() {
        PlannedVisit v = InventedVisits.layUp();
        PlannedVisit free = withPrices(v, List.of(new PriceLine("lift", 1, "boat", InventedVisits.eur(0))));
        assertTrue(Estimates.of(free, InventedVisits.facts(), 30).warnings().stream()
                .anyMatch(w -> w.contains("\"lift\" is priced at nothing")));
    }

    @Test
    void pricesHoldForTheDaysGivenButNotPastTheVisit() {
        assertEquals(LocalDate.of(2026, 10, 14), estimate.validUntil());
        assertEquals(
                LocalDate.of(2026, 10, 16),
                Estimates.of(InventedVisits.layUp(), InventedVisits.facts(), 90).validUntil());
        assertThrows(
                IllegalArgumentException.class, () -> Estimates.of(InventedVisits.layUp(), InventedVisits.facts(), 0));
    }

    @Test
    void anUnknownLineCannotBeDeclined() {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> estimate.answered(List.of(11)));
        assertTrue(String.valueOf(e.getMessage()).contains("no line [11]"));
    }

    private static PlannedVisit withPrices(PlannedVisit v, List<PriceLine> prices) {
        return new PlannedVisit(
                v.boatId(),
                v.from(),
                v.to(),
                v.place(),
                v.lifts(),
                v.works(),
                v.minutes(),
                v.supplies(),
                prices,
                v.net(),
                v.savedByBundling());
    }

    private int number(String ruleId) {
        return estimate.lines().stream()
                .filter(l -> l.planned().inForce().rule().id().equals(ruleId))
                .findFirst()
                .orElseThrow()
                .number();
    }
}
