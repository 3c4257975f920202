package sternwright.visit.problem;

/**
 * The fixed costs of a visit, in the smallest unit of the currency.
 *
 * @param callOutAfloatCents one call-out to the boat afloat
 * @param workVisitAshoreCents one work visit to the boat ashore
 * @param liftLaunchCents lift, wash and launch of this boat, once per lift not paid already
 */
public record VisitTariff(long callOutAfloatCents, long workVisitAshoreCents, long liftLaunchCents) {
    public VisitTariff {
        if (callOutAfloatCents < 0 || workVisitAshoreCents < 0 || liftLaunchCents < 0) {
            throw new IllegalArgumentException("tariff: expected amounts of 0 or more");
        }
    }
}
