package sternwright.visit.problem;

/**
 * One month of the horizon, as the boat and the yard see it.
 *
 * <p>A month in which neither place is possible is a dead month: no visit is held in it.
 *
 * @param ashorePaid the boat stands ashore in this month by an agreement already paid (winter ashore): its lift, launch
 *     and standing cost nothing more
 * @param afloatPossible a call-out afloat can be made
 * @param ashorePossible work ashore can be done (in a month not paid already, by lifting the boat)
 * @param standingCents hard standing for the month, in the smallest unit of the currency, if not paid already
 * @param lossOfUseCents what a month ashore costs the owner in lost use, if not paid already
 */
public record BoatMonth(
        boolean ashorePaid, boolean afloatPossible, boolean ashorePossible, long standingCents, long lossOfUseCents) {
    public BoatMonth {
        if (standingCents < 0 || lossOfUseCents < 0) {
            throw new IllegalArgumentException("standing " + standingCents + " and loss of use " + lossOfUseCents
                    + ": expected amounts of 0 or more");
        }
    }

    /** Whether a visit can be held at the place in this month. */
    public boolean possible(Place place) {
        return place == Place.AFLOAT ? afloatPossible : ashorePossible;
    }
}
