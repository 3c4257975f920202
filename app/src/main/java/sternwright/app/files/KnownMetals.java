package sternwright.app.files;

import java.util.HashSet;
import java.util.Set;
import sternwright.boat.PartCatalogue;

/** The metals and alloys a part may be of. */
final class KnownMetals {
    private static final Set<String> OF_THE_TRADE = Set.of(
            "aluminium-casting",
            "aluminium-hull",
            "mild-steel",
            "cast-iron",
            "high-strength-steel",
            "stainless-active",
            "stainless-passive",
            "stainless-304",
            "naval-brass",
            "aluminium-bronze",
            "copper",
            "bronze",
            "manganese-bronze",
            "copper-nickel",
            "silicon-bronze",
            "lead",
            "nickel-aluminium-bronze",
            "titanium",
            "graphite",
            "zinc-anode",
            "aluminium-anode",
            "magnesium-anode");

    private KnownMetals() {}

    /** Those of the trade and those the yard's catalogue names. */
    static Set<String> with(PartCatalogue catalogue) {
        Set<String> metals = new HashSet<>(OF_THE_TRADE);
        catalogue.kinds().forEach(k -> {
            if (k.usualMetal() != null) {
                metals.add(k.usualMetal());
            }
        });
        return metals;
    }
}
