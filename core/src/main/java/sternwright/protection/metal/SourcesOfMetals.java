package sternwright.protection.metal;

import sternwright.finding.Source;
import sternwright.finding.Standing;

/** Sources that several figures of the catalogue share. */
final class SourcesOfMetals {
    static final Source TRADE_SERIES = new Source(
            "boatbuilding trade magazine no. 100 (2006)", "ranges against Ag/AgCl", Standing.COMMON_PRACTICE);

    private SourcesOfMetals() {}
}
