package sternwright.protection.judgement;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import sternwright.protection.metal.ReferenceElectrode;

/**
 * A potential as read, with its electrode.
 *
 * @param volts as read, V
 * @param electrode what it was read against
 */
public record PotentialReading(double volts, ReferenceElectrode electrode) {
    /** No metal in water lies outside this range against any electrode, V. */
    private static final double FARTHEST_V = 3;

    /** The same against silver/silver chloride in seawater, V. */
    public double silverChlorideV() {
        return electrode.toSilverChlorideV(volts);
    }

    /**
     * Takes a reading as written.
     *
     * @param value the figure
     * @param unit {@code V} or {@code mV}
     * @param electrode name of the reference electrode; must be given
     * @throws IllegalArgumentException in words, where unit and figure do not fit or the electrode is not named or not known
     */
    public static PotentialReading of(double value, String unit, String electrode) {
        if (electrode.isBlank()) {
            throw new IllegalArgumentException("the potential " + plain(value) + " " + unit
                    + " names no reference electrode: the limits of steel lie 250 mV apart and the electrodes differ by more. Write one of "
                    + known());
        }
        ReferenceElectrode reference = ReferenceElectrode.find(electrode)
                .orElseThrow(() -> new IllegalArgumentException(
                        "reference electrode \"" + electrode + "\" is not known: write one of " + known()));
        return new PotentialReading(volts(value, unit), reference);
    }

    private static double volts(double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the potential is " + value + ": write a number");
        }
        switch (unit.trim()) {
            case "V":
                if (Math.abs(value) > FARTHEST_V) {
                    throw new IllegalArgumentException(plain(value)
                            + " V is no potential of a metal in water (they lie between -3 and +3 V): was it "
                            + plain(value)
                            + " mV? Write the unit that was read");
                }
                return value;
            case "mV":
                if (Math.abs(value) > FARTHEST_V * 1000) {
                    throw new IllegalArgumentException(plain(value)
                            + " mV is no potential of a metal in water (they lie between -3000 and +3000 mV)");
                }
                if (value != 0 && Math.abs(value) < FARTHEST_V && value != Math.rint(value)) {
                    throw new IllegalArgumentException(plain(value) + " mV is a hair above nothing: was it "
                            + plain(value) + " V? Write the unit that was read");
                }
                return value / 1000;
            default:
                throw new IllegalArgumentException("unit \"" + unit + "\" of a potential: write V or mV");
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }

    private static String known() {
        return Arrays.stream(ReferenceElectrode.values())
                .map(e -> e.symbol() + " (" + e.words() + ")")
                .collect(Collectors.joining(", "));
    }
}
