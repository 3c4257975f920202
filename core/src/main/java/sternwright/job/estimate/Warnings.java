package sternwright.job.estimate;

import java.util.Optional;
import sternwright.measure.Money;
import sternwright.service.Place;
import sternwright.visit.planned.PriceLine;

/** What does not fit together on an estimate. */
final class Warnings {
    private Warnings() {}

    /** Lines are rounded one by one, so the plan's own total may differ by one smallest unit a line, not by more. */
    static Optional<String> ofTotal(Estimate estimate) {
        Money sum = Money.zero(estimate.plannedNet().currency());
        for (EstimateLine l : estimate.lines()) {
            sum = sum.plus(l.price());
        }
        for (PriceLine p : estimate.visitLines()) {
            sum = sum.plus(p.amount());
        }
        long apart =
                sum.minus(estimate.plannedNet()).amount().unscaledValue().abs().longValue();
        if (apart <= estimate.lines().size() + estimate.visitLines().size()) {
            return Optional.empty();
        }
        return Optional.of(
                "The lines add up to " + sum + ", the plan says " + estimate.plannedNet() + ": plan the visit anew.");
    }

    /** A lift that no line needs any more is money the owner should not be asked for. */
    static Optional<String> ofLift(Estimate estimate) {
        boolean needed = estimate.lines().stream()
                .filter(EstimateLine::counts)
                .anyMatch(l -> l.planned().inForce().rule().place() == Place.ASHORE);
        return estimate.anyDeclined() && estimate.lifts() && !needed
                ? Optional.of("None of the lines left needs the boat ashore: plan the visit anew without the lift.")
                : Optional.empty();
    }
}
