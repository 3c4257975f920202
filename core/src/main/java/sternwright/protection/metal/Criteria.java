package sternwright.protection.metal;

import sternwright.finding.Source;
import sternwright.finding.Standing;

/** Published criteria of protection. */
final class Criteria {
    private static final Source TRADE = new Source("small-craft and offshore practice", "", Standing.COMMON_PRACTICE);
    private static final Source EN_12473_MEMORY =
            new Source("EN 12473 General principles of cathodic protection in sea water", "", Standing.FROM_MEMORY);

    static final Criterion STEEL = new Criterion(
            -0.80,
            -1.10,
            "paint is lifted off by alkali and hydrogen",
            new Source(
                    "DNV-RP-B401; ABS Guidance Notes on Cathodic Protection of Ships, Dec 2017",
                    "Table 1 (aerated seawater)",
                    Standing.PUBLISHED),
            TRADE);
    static final Criterion STRONG_STEEL =
            new Criterion(-0.83, -0.95, "hydrogen makes high-strength steel brittle", EN_12473_MEMORY, EN_12473_MEMORY);
    static final Criterion ALUMINIUM = new Criterion(
            -0.90,
            -1.10,
            "alkali dissolves aluminium and lifts its paint although the current protects; the rate is chemistry and is not computed",
            new Source(
                    "American small-craft standard E-2 as quoted by the trade; 5083 at any salinity -0.90 to -1.05 V (abstract)",
                    "",
                    Standing.COMMON_PRACTICE),
            new Source(
                    "MIL-HDBK-1004/10 and 49 CFR 192 App. D: not below -1.20 V CSE, about -1.13 here; trade -1.10 V",
                    "",
                    Standing.PUBLISHED));
    static final Criterion COPPER = new Criterion(
            -0.55,
            null,
            "",
            new Source("EN 12473 and BS 7361: -0.45 to -0.60 V; trade -0.55 V", "", Standing.FROM_MEMORY),
            null);
    static final Criterion STAINLESS = new Criterion(-0.50, null, "", EN_12473_MEMORY, null);
    static final Criterion LEAD =
            new Criterion(-0.55, null, "", new Source("BS 7361-1:1991", "", Standing.FROM_MEMORY), null);

    private Criteria() {}
}
