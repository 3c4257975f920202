package sternwright.visit.planned;

import java.time.LocalDate;
import java.util.List;
import sternwright.boat.PartRef;
import sternwright.due.ClauseKind;
import sternwright.measure.Money;
import sternwright.service.RuleInForce;

/**
 * One work of a visit.
 *
 * @param part the part
 * @param partName as people say it, with the side where there are two
 * @param inForce the rule with the figures that hold and their source
 * @param dueOn the day it falls due
 * @param clause the clause that came first
 * @param reason why, in one sentence an owner understands
 * @param servicePoint where on the installation; works there share the set-up
 * @param minutes working minutes, access counted in, set-up not
 * @param labour price of those minutes without tax
 * @param supplies what it takes from the stores
 * @param price labour and supplies together without tax
 */
public record PlannedWork(
        PartRef part,
        String partName,
        RuleInForce inForce,
        LocalDate dueOn,
        ClauseKind clause,
        String reason,
        String servicePoint,
        double minutes,
        Money labour,
        List<SupplyLine> supplies,
        Money price) {
    /** Copies the list. */
    public PlannedWork {
        supplies = List.copyOf(supplies);
    }

    /**
     * The work with the part, as printed in a list.
     *
     * @return such as {@code renew mounts, mount aft, port}; the part left out where the work names it already
     */
    public String words() {
        return Named.of(inForce.rule().work(), partName);
    }
}
