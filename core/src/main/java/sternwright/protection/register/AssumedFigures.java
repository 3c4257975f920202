package sternwright.protection.register;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.finding.NearestName;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.protection.register.RegisterProblem.About;

/** Gives each figure from the yard's overrides, else from the register, else by assumption, and keeps the list of what was assumed. */
final class AssumedFigures {
    private static final Source YARD = new Source("the yard's own figure", "", Standing.YARD);

    private final Map<String, Double> overrides;
    private final Set<String> asked = new HashSet<>();
    private final Map<String, Assumption> list = new LinkedHashMap<>();
    private final List<RegisterProblem> problems = new ArrayList<>();

    AssumedFigures(Map<String, Double> overrides) {
        this.overrides = overrides;
    }

    /** The figure of a key; recorded unless the register knows it. A figure that cannot be is refused and stands aside. */
    double value(String key, String words, @Nullable Double known, double assumed, String unit, Source source) {
        asked.add(key);
        Double own = overrides.get(key);
        if (own != null && possible(About.FIGURE, key, words, own, unit)) {
            list.put(key, new Assumption(key, words, own, unit, YARD, true));
            return own;
        }
        if (known != null && possible(About.BOAT, key, words, known, unit)) {
            return known;
        }
        list.put(key, new Assumption(key, words, assumed, unit, source, false));
        return assumed;
    }

    private boolean possible(About about, String key, String words, double value, String unit) {
        boolean share = key.endsWith("share");
        boolean free = unit.equals("V") || unit.equals("°C");
        if (Double.isFinite(value) && (free || value >= 0) && (!share || value <= 1)) {
            return true;
        }
        refuse(new RegisterProblem(
                about,
                key,
                words + " is " + value + (unit.isEmpty() ? "" : " " + unit),
                share ? "a share from 0 to 1" : free ? "a number" : "a number of zero or more",
                about == About.BOAT ? "Correct it in the boat's file." : ""));
        return false;
    }

    /** Notes a reason why there can be no circuit. */
    void refuse(RegisterProblem problem) {
        problems.add(problem);
    }

    List<Assumption> list() {
        return List.copyOf(list.values());
    }

    /** Refuses overrides that nothing asked for, beside what was noted before: a slip of the pen must not pass silently. */
    void requireSound(boolean allAsked) {
        if (allAsked) {
            for (String key : overrides.keySet()) {
                if (!asked.contains(key)) {
                    refuse(new RegisterProblem(
                            About.FIGURE,
                            key,
                            "no figure of this boat's circuit is called so"
                                    + NearestName.of(key, asked)
                                            .map(n -> ", did you mean \"" + n + "\"?")
                                            .orElse(""),
                            "",
                            "Take the keys from the list of assumed figures."));
                }
            }
        }
        if (!problems.isEmpty()) {
            throw new UnusableRegisterException(problems);
        }
    }
}
