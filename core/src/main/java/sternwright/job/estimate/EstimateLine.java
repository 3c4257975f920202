package sternwright.job.estimate;

import java.util.List;
import sternwright.measure.Money;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.SupplyLine;

/**
 * One work in the owner's words.
 *
 * @param number running number on the estimate, from 1; the same as on the job card
 * @param planned the work as planned: what, on which part, why now, supplies, source
 * @param price labour and priced supplies without tax
 * @param unpriced names of supplies the stores have no price for; they come on top
 * @param answer what the owner says
 */
public record EstimateLine(int number, PlannedWork planned, Money price, List<String> unpriced, OwnerAnswer answer) {
    /** Copies the list. */
    public EstimateLine {
        unpriced = List.copyOf(unpriced);
    }

    static EstimateLine of(int number, PlannedWork planned) {
        List<String> unpriced = planned.supplies().stream()
                .filter(s -> s.price() == null)
                .map(SupplyLine::name)
                .toList();
        return new EstimateLine(number, planned, planned.price(), unpriced, OwnerAnswer.OPEN);
    }

    EstimateLine answered(OwnerAnswer to) {
        return new EstimateLine(number, planned, price, unpriced, to);
    }

    /**
     * Whether it counts in the total.
     *
     * @return true unless declined
     */
    public boolean counts() {
        return answer != OwnerAnswer.DECLINED;
    }

    /**
     * Whether it is a safety item, which can only be declined by signature.
     *
     * @return true if so
     */
    public boolean safety() {
        return planned.inForce().rule().safety();
    }

    /**
     * What it is good for.
     *
     * @return the rule's words for an owner
     */
    public String why() {
        return planned.inForce().rule().why();
    }

    /**
     * What happens if it is left.
     *
     * @return the rule's words for an owner
     */
    public String ifDeclined() {
        return planned.inForce().rule().ifDeclined();
    }
}
