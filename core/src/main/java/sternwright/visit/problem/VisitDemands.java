package sternwright.visit.problem;

import java.util.List;
import java.util.Set;

/**
 * What the engineer or the owner asks of the plan, over and above the rules of the works.
 *
 * @param forced visits that are held whatever they cost (already promised)
 * @param forbidden visits that are not held
 * @param minVisits fewest visits
 * @param maxVisits most visits; {@link Integer#MAX_VALUE} for no limit. Work ashore and afloat in one month are two visits
 * @param left works left until a month
 */
public record VisitDemands(
        Set<VisitSlot> forced, Set<VisitSlot> forbidden, int minVisits, int maxVisits, List<LeftUntil> left) {
    /** No demands. */
    public static final VisitDemands NONE = new VisitDemands(Set.of(), Set.of(), 0, Integer.MAX_VALUE, List.of());

    public VisitDemands {
        forced = Set.copyOf(forced);
        forbidden = Set.copyOf(forbidden);
        left = List.copyOf(left);
        if (minVisits < 0) {
            throw new IllegalArgumentException("fewest visits " + minVisits + ": expected 0 or more");
        }
    }

    /** The same demands with the number of visits fixed. */
    public VisitDemands withVisits(int visits) {
        return new VisitDemands(forced, forbidden, visits, visits, left);
    }

    /** The same demands without a limit on the number of visits. */
    public VisitDemands withAnyNumber() {
        return new VisitDemands(forced, forbidden, 0, Integer.MAX_VALUE, left);
    }

    /** The same demands with other works left. */
    public VisitDemands withLeft(List<LeftUntil> other) {
        return new VisitDemands(forced, forbidden, minVisits, maxVisits, other);
    }

    /** The same demands with other forced visits. */
    public VisitDemands withForced(Set<VisitSlot> other) {
        return new VisitDemands(other, forbidden, minVisits, maxVisits, left);
    }

    /** The same demands with other forbidden visits. */
    public VisitDemands withForbidden(Set<VisitSlot> other) {
        return new VisitDemands(forced, other, minVisits, maxVisits, left);
    }
}
