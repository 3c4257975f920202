package sternwright.protection.anode;

import sternwright.finding.Source;
import sternwright.finding.Standing;

/**
 * Which alloy suits a water.
 *
 * @param metalId id of the alloy in the catalogue
 * @param reason why, in one sentence
 * @param source where the rule comes from
 */
public record AlloyChoice(String metalId, String reason, Source source) {
    private static final Source RULE = new Source(
            "small-craft practice; ABS 2017 and DNV-RP-B401 for capacities and potentials",
            "",
            Standing.COMMON_PRACTICE);

    /**
     * The alloy for a water.
     *
     * @param salinity practical salinity
     * @param aluminiumHullOrDrive whether aluminium is to be protected: magnesium in salt water would overprotect it
     */
    public static AlloyChoice of(double salinity, boolean aluminiumHullOrDrive) {
        if (salinity < 1) {
            return new AlloyChoice(
                    "magnesium-anode",
                    "Fresh water conducts 50 to 250 times worse than the sea and zinc and aluminium film over in it; only magnesium drives enough"
                            + " current. Never take it to sea: it overprotects and is gone in weeks.",
                    RULE);
        }
        if (salinity < 18) {
            return new AlloyChoice(
                    "aluminium-anode",
                    "In brackish water zinc may film over; aluminium stays active and has 100 mV more to drive with.",
                    RULE);
        }
        return new AlloyChoice(
                "aluminium-anode",
                aluminiumHullOrDrive
                        ? "In the sea aluminium anodes give 2000 Ah/kg against 780 for zinc and hold the aluminium of hull or drive surely below"
                                + " its limit; zinc does too where it is not far from its load; magnesium overprotects."
                        : "In the sea aluminium anodes give 2000 Ah/kg against 780 for zinc; both protect, do not mix them on one group.",
                RULE);
    }
}
