package sternwright.protection.metal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.finding.NearestName;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.protection.circuit.Reaction;
import sternwright.protection.metal.Metal.Family;

/** All metals known, by id. */
public final class MetalCatalogue {
    private static final Source SERIES = new Source(
            "US Naval Research Laboratory data file of the galvanic series in flowing seawater (type of ASTM G82)",
            "one figure each, against saturated calomel",
            Standing.PUBLISHED);
    private static final Source CURVE = new Source(
            "Tafel lines and oxygen limits chosen to land on published free potentials and current densities",
            "see the galvanic series and design current densities",
            Standing.FROM_MEMORY);
    private static final MetalCatalogue STANDARD = new MetalCatalogue(standardMetals());

    private final Map<String, Metal> metals = new LinkedHashMap<>();

    /** A catalogue of these metals; a later one replaces an earlier of the same id. */
    public MetalCatalogue(List<Metal> metals) {
        metals.forEach(m -> this.metals.put(m.id(), m));
    }

    /** The metals that come with the program. */
    public static MetalCatalogue standard() {
        return STANDARD;
    }

    /** All metals in order. */
    public List<Metal> metals() {
        return List.copyOf(metals.values());
    }

    /** Whether there is a metal of this id. */
    public boolean knows(String id) {
        return metals.containsKey(id);
    }

    /**
     * The metal of an id.
     *
     * @throws IllegalArgumentException naming the nearest one, where there is none
     */
    public Metal metal(String id) {
        Metal metal = metals.get(id);
        if (metal == null) {
            String near = NearestName.of(id, metals.keySet())
                    .map(n -> " Did you mean \"" + n + "\"?")
                    .orElse("");
            throw new IllegalArgumentException("no metal or alloy \"" + id + "\" in the catalogue." + near + " Known: "
                    + String.join(", ", metals.keySet()) + ".");
        }
        return metal;
    }

    private static List<Metal> standardMetals() {
        List<Metal> list = new ArrayList<>(AnodeAlloys.all());
        list.add(aluminium("aluminium-casting", "cast aluminium", -0.78, SourcesOfMetals.TRADE_SERIES));
        list.add(aluminium("aluminium-hull", "marine aluminium", -0.79, SERIES));
        list.add(iron("mild-steel", "mild steel", -0.61, Criteria.STEEL));
        list.add(iron("cast-iron", "cast iron", -0.61, Criteria.STEEL));
        list.add(iron("high-strength-steel", "high-strength steel", -0.60, Criteria.STRONG_STEEL));
        list.add(iron("stainless-active", "stainless steel, active (no oxygen, crevice)", -0.53, Criteria.STAINLESS));
        list.add(copper("naval-brass", "naval brass", -0.40));
        list.add(copper("aluminium-bronze", "aluminium bronze", -0.36));
        list.add(copper("copper", "copper", -0.36));
        list.add(copper("bronze", "bronze", -0.31));
        list.add(copper("manganese-bronze", "manganese bronze", -0.29));
        list.add(copper("copper-nickel", "copper-nickel 90-10", -0.28));
        list.add(copper("silicon-bronze", "silicon bronze", -0.27));
        list.add(metal("lead", "lead", Family.LEAD, -0.22, SERIES, Curves.COPPER, Curves.COPPER_FRESH, Criteria.LEAD));
        list.add(copper("nickel-aluminium-bronze", "nickel aluminium bronze", -0.19));
        list.add(passive("titanium", "titanium", -0.10, null));
        list.add(passive("stainless-304", "stainless steel 304, passive", -0.08, Criteria.STAINLESS));
        list.add(passive("stainless-passive", "stainless steel 316, passive", -0.05, Criteria.STAINLESS));
        list.add(passive("graphite", "graphite", 0.25, null));
        return list;
    }

    private static Metal iron(String id, String name, double calomelV, Criterion criterion) {
        return metal(id, name, Family.IRON, calomelV, SERIES, Curves.IRON, Curves.IRON_FRESH, criterion);
    }

    private static Metal copper(String id, String name, double calomelV) {
        return metal(id, name, Family.COPPER, calomelV, SERIES, Curves.COPPER, Curves.COPPER_FRESH, Criteria.COPPER);
    }

    private static Metal passive(String id, String name, double calomelV, @Nullable Criterion criterion) {
        return metal(id, name, Family.PASSIVE, calomelV, SERIES, Curves.PASSIVE, Curves.PASSIVE, criterion);
    }

    private static Metal aluminium(String id, String name, double value, Source source) {
        double calomel = source == SERIES ? value : ReferenceElectrode.CALOMEL.fromSilverChlorideV(value);
        return metal(
                id,
                name,
                Family.ALUMINIUM,
                calomel,
                source,
                Curves.ALUMINIUM,
                Curves.ALUMINIUM_FRESH,
                Criteria.ALUMINIUM);
    }

    private static Metal metal(
            String id,
            String name,
            Family family,
            double calomelV,
            Source source,
            List<Reaction> sea,
            List<Reaction> fresh,
            @Nullable Criterion criterion) {
        double free = ReferenceElectrode.CALOMEL.toSilverChlorideV(calomelV);
        double shift = free - Metal.freePotentialV(sea);
        return new Metal(
                id,
                name,
                family,
                free,
                source,
                Curves.moved(sea, shift),
                Curves.moved(fresh, shift),
                CURVE,
                criterion,
                null);
    }
}
