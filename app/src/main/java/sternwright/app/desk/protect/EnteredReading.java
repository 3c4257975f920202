package sternwright.app.desk.protect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.protection.diagnosis.Measurement;
import sternwright.protection.diagnosis.Observation;
import sternwright.protection.diagnosis.Quantity;
import sternwright.protection.diagnosis.Setting;
import sternwright.protection.judgement.PotentialReading;

/**
 * A reading as somebody wrote it: {@code main/leg=-970mV,anodes-off}.
 *
 * @param entered where it was written, such as {@code --reading main/leg=-970mV}; messages begin with it
 * @param observation what it says
 */
public record EnteredReading(String entered, Observation observation) {
    private static final Pattern FORM =
            Pattern.compile("([^=]+)=\\s*([-+]?[0-9]*\\.?[0-9]+(?:[eE][-+]?[0-9]+)?)\\s*([A-Za-zΩ]*)((?:,[a-z-]+)*)");
    private static final List<String> WORDS = List.of("anodes-off", "shore-in", "far");
    private static final String EXAMPLES = "PLACE=VALUE UNIT, such as main/leg=-970mV, main/leg~main/engine=0.2ohm,"
            + " main/leg-anode=1.5x or shore-lead=0.02A";
    private static final String UNITS =
            "Units are V, mV, ohm, A and x (mass an anode lost over mass expected); after it ,anodes-off ,shore-in ,far.";

    /**
     * Takes readings, all of them or none.
     *
     * @param option the option they came by; messages begin with it
     * @param texts as written
     * @param electrode the electrode named, empty for none
     * @param problems takes what is wrong with them
     * @return those that could be taken
     */
    public static List<EnteredReading> all(
            String option, List<String> texts, String electrode, List<Problem> problems) {
        List<EnteredReading> taken = new ArrayList<>();
        for (String text : texts) {
            try {
                taken.add(of(option + " " + text, text, electrode));
            } catch (BadInput e) {
                problems.addAll(e.problems());
            }
        }
        return taken;
    }

    /**
     * Takes one reading.
     *
     * @param entered where it was written
     * @param text as written
     * @param electrode the electrode named, empty for none
     * @return the reading
     * @throws BadInput saying what was expected
     */
    public static EnteredReading of(String entered, String text, String electrode) {
        Matcher m = FORM.matcher(text.trim());
        if (!m.matches()) {
            throw BadInput.of(entered, "it is not understood", EXAMPLES, UNITS);
        }
        List<String> words = List.of(
                m.group(4).isEmpty() ? new String[0] : m.group(4).substring(1).split(","));
        for (String w : words) {
            if (!WORDS.contains(w)) {
                throw BadInput.of(entered, "\"" + w + "\" is not understood", String.join(", ", WORDS), "");
            }
        }
        Setting setting = new Setting(!words.contains("anodes-off"), words.contains("shore-in"));
        try {
            return new EnteredReading(
                    entered,
                    observation(
                            m.group(1).trim(),
                            Double.parseDouble(m.group(2)),
                            m.group(3),
                            setting,
                            words.contains("far"),
                            electrode));
        } catch (IllegalArgumentException e) {
            String said = String.valueOf(e.getMessage()).strip();
            throw BadInput.of(entered, said.endsWith(".") ? said.substring(0, said.length() - 1) : said, "", "");
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
                        (unit.isEmpty() ? "no unit is given" : "the unit \"" + unit + "\" is not understood")
                                + ": write V or mV for potentials, ohm for joints, A for the shore lead, x for wastage");
        };
    }
}
