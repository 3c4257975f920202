package sternwright.yard.resource;

/**
 * A lifting dock that dries or shoals.
 *
 * @param depthM depth of the dock below chart datum, m; negative where it dries above datum
 * @param clearanceM water wanted under the keel, m
 */
public record TidalDock(double depthM, double clearanceM) {
    /**
     * Height of high water that a boat needs to get in.
     *
     * @param draughtM the boat's draught, m
     * @return height above chart datum, m
     */
    public double heightNeededM(double draughtM) {
        return draughtM + clearanceM - depthM;
    }
}
