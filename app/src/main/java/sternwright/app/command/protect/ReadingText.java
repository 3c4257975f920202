package sternwright.app.command.protect;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sternwright.app.files.problem.BadInput;
import sternwright.protection.diagnosis.Measurement;
import sternwright.protection.diagnosis.Observation;
import sternwright.protection.diagnosis.Quantity;
import sternwright.protection.diagnosis.Setting;
import sternwright.protection.judgement.PotentialReading;

/** Readings as written on the command line: {@code main/leg=-970mV,anodes-off}. */
public final class ReadingText {
    private static final Pattern FORM =
            Pattern.compile("([^=]+)=\\s*([-+]?[0-9]*\\.?[0-9]+(?:[eE][-+]?[0-9]+)?)\\s*([A-Za-zΩ]*)((?:,[a-z-]+)*)");
    private static final List<String> WORDS = List.of("anodes-off", "shore-in", "far");

    private ReadingText() {}

    /**
     * Takes a reading.
     *
     * @param text as written
     * @param electrode the electrode named, empty for none
     * @return the observation
     */
    static Observation of(String text, String electrode) {
        Matcher m = FORM.matcher(text.trim());
        if (!m.matches()) {
            throw BadInput.of(
                    "--reading " + text,
                    "it is not understood",
                    "PLACE=VALUE UNIT, such as main/leg=-970mV or main/leg~main/engine=0.2ohm",
                    "Units are V, mV, ohm, A and x (mass an anode lost over mass expected); after it ,anodes-off ,shore-in ,far.");
        }
        String where = m.group(1).trim();
        double value = Double.parseDouble(m.group(2));
        List<String> words = List.of(
                m.group(4).isEmpty() ? new String[0] : m.group(4).substring(1).split(","));
        for (String w : words) {
            if (!WORDS.contains(w)) {
                throw BadInput.of("--reading " + text, "\"" + w + "\" is not understood", String.join(", ", WORDS), "");
            }
        }
        Setting setting = new Setting(!words.contains("anodes-off"), words.contains("shore-in"));
        try {
            return observation(where, value, m.group(3), setting, words.contains("far"), electrode);
        } catch (IllegalArgumentException e) {
            throw BadInput.of("--reading " + text, String.valueOf(e.getMessage()), "", "");
        }
    }

    private static Observation observation(
            String where, double value, String unit, Setting setting, boolean far, String electrode) {
        return switch (unit.toLowerCase(Locale.ROOT)) {
            case "v", "mv" -> {
                if (where.contains("~")) {
                    double volts = unit.equalsIgnoreCase("mV") ? value / 1000 : value;
                    yield Observation.of(new Measurement(Quantity.JOINT_VOLTAGE, where, setting), Math.abs(volts));
                }
                double v = PotentialReading.of(value, unit, electrode).silverChlorideV();
                yield Observation.of(
                        new Measurement(far ? Quantity.POTENTIAL_FAR : Quantity.POTENTIAL_CLOSE, where, setting), v);
            }
            case "ohm", "ω" -> Observation.of(new Measurement(Quantity.JOINT_OHM, where, Setting.USUAL), value);
            case "a" -> Observation.of(new Measurement(Quantity.SHORE_CURRENT, where, new Setting(true, true)), value);
            case "x" -> Observation.of(new Measurement(Quantity.WASTAGE_RATIO, where, Setting.USUAL), value);
            default ->
                throw new IllegalArgumentException(
                        "the unit \"" + unit
                                + "\" is not understood: write V or mV for potentials, ohm for joints, A for the shore lead, x for wastage");
        };
    }
}
