package sternwright.protection.register;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Source;
import sternwright.finding.Standing;

/**
 * Sizes of wet parts where the register gives none: middle figures for boats of 8 to 15 m, from memory. The bare propeller and shaft carry most of the
 * load, so theirs are the first to measure.
 *
 * @param areaM2 wetted area
 * @param coatedShare share under paint
 * @param massKg mass of an anode when new; 0 for others
 */
record PartDefaults(double areaM2, double coatedShare, double massKg) {
    static final Source SIZE =
            new Source("middle figure for boats of 8 to 15 m; measure the part", "", Standing.FROM_MEMORY);

    private static final Map<String, PartDefaults> BY_KIND = Map.ofEntries(
            part("leg", 0.45, 1),
            part("transom-unit", 0.25, 1),
            part("rams", 0.06, 0),
            part("propeller", 0.12, 0),
            part("folding-propeller", 0.10, 0),
            part("shaft", 0.15, 0),
            part("bracket", 0.06, 0.5),
            part("pod-unit", 0.6, 0.8),
            part("pod-unit-older", 0.6, 0.8),
            part("jet-unit", 0.8, 1),
            part("jet-impeller", 0.15, 0),
            part("wear-ring", 0.05, 0),
            part("bucket", 0.3, 1),
            part("intake-grate", 0.15, 0),
            part("rudder", 0.4, 0.8),
            part("ballast-keel", 4, 1),
            part("earth-plate", 0.1, 0),
            part("seacock", 0.02, 0),
            part("keel-cooler", 0.5, 1),
            anode("leg-anode", 0.03, 0.8),
            anode("transom-anode", 0.03, 0.9),
            anode("shaft-anode", 0.012, 0.6),
            anode("propeller-anode", 0.012, 0.4),
            anode("pod-anode", 0.04, 1.5),
            anode("jet-anode", 0.03, 0.8),
            anode("hull-anode", 0.06, 3));

    private static Map.Entry<String, PartDefaults> part(String kind, double area, double coated) {
        return Map.entry(kind, new PartDefaults(area, coated, 0));
    }

    private static Map.Entry<String, PartDefaults> anode(String kind, double area, double mass) {
        return Map.entry(kind, new PartDefaults(area, 0, mass));
    }

    static PartDefaults of(String kind) {
        @Nullable PartDefaults found = BY_KIND.get(kind);
        return found == null ? new PartDefaults(0.1, 0, 0.5) : found;
    }
}
