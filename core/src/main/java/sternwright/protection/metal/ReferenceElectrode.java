package sternwright.protection.metal;

import java.util.Locale;
import java.util.Optional;
import sternwright.finding.Source;
import sternwright.finding.Standing;

/**
 * What a potential is read against. All computation uses {@link #SILVER_CHLORIDE_SEAWATER}; the others are turned into it by adding a
 * fixed figure.
 */
public enum ReferenceElectrode {
    /** Silver/silver chloride in seawater. */
    SILVER_CHLORIDE_SEAWATER("silver/silver chloride in seawater", "Ag/AgCl/sw", 0, Standing.PUBLISHED),
    /** Silver/silver chloride in saturated potassium chloride (sealed). */
    SILVER_CHLORIDE_SATURATED("silver/silver chloride, saturated KCl", "Ag/AgCl/KCl", -0.05, Standing.PUBLISHED),
    /** Saturated calomel. */
    CALOMEL("saturated calomel", "SCE", -0.009, Standing.PUBLISHED),
    /** Copper in saturated copper sulphate. */
    COPPER_SULPHATE("copper/copper sulphate", "CSE", 0.066, Standing.PUBLISHED),
    /** Clean high-purity zinc in seawater; of no use in fresh water. */
    ZINC("zinc in seawater", "Zn", -1.03, Standing.FROM_MEMORY);

    private final String words;
    private final String symbol;
    private final double offsetV;
    private final Standing standing;

    ReferenceElectrode(String words, String symbol, double offsetV, Standing standing) {
        this.words = words;
        this.symbol = symbol;
        this.offsetV = offsetV;
        this.standing = standing;
    }

    /** Name in words. */
    public String words() {
        return words;
    }

    /** Short sign to stand beside a figure. */
    public String symbol() {
        return symbol;
    }

    /** To be added to a reading against this electrode to get volts against silver/silver chloride in seawater. */
    public double offsetV() {
        return offsetV;
    }

    /** Where the offset comes from. */
    public Source source() {
        return new Source(
                "electrode potentials against the standard hydrogen electrode at 25 °C as printed in offshore codes",
                "SCE +0.241, CSE +0.316, Ag/AgCl/KCl +0.197 V; Ag/AgCl/sw taken as +0.25, zinc as -0.78 V from memory",
                standing);
    }

    /** A reading against this electrode in volts against silver/silver chloride in seawater. */
    public double toSilverChlorideV(double readV) {
        return readV + offsetV;
    }

    /** A potential against silver/silver chloride in seawater as this electrode would read it, V. */
    public double fromSilverChlorideV(double potentialV) {
        return potentialV - offsetV;
    }

    /** Finds an electrode by its sign, its constant's name or its words. */
    public static Optional<ReferenceElectrode> find(String written) {
        String w = written.trim().toLowerCase(Locale.ROOT).replace('_', '-');
        for (ReferenceElectrode e : values()) {
            if (w.equals(e.symbol.toLowerCase(Locale.ROOT))
                    || w.equals(e.words)
                    || w.equals(e.name().toLowerCase(Locale.ROOT).replace('_', '-'))) {
                return Optional.of(e);
            }
        }
        return switch (w) {
            case "copper-sulfate", "cu/cuso4" -> Optional.of(COPPER_SULPHATE);
            case "saturated-calomel", "sce" -> Optional.of(CALOMEL);
            default -> Optional.empty();
        };
    }
}
