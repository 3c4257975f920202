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

/** Gives each figure from the yard's overrides, else from the register, else by assumption, and keeps the list of what was assumed. */
final class AssumedFigures {
    private static final Source YARD = new Source("the yard's own figure", "", Standing.YARD);

    private final Map<String, Double> overrides;
    private final Set<String> asked = new HashSet<>();
    private final Map<String, Assumption> list = new LinkedHashMap<>();

    AssumedFigures(Map<String, Double> overrides) {
        this.overrides = overrides;
    }

    /** The figure of a key; recorded unless the register knows it. */
    double value(String key, String words, @Nullable Double known, double assumed, String unit, Source source) {
        asked.add(key);
        Double own = overrides.get(key);
        if (own != null) {
            list.put(key, new Assumption(key, words, own, unit, YARD, true));
            return own;
        }
        if (known != null) {
            return known;
        }
        list.put(key, new Assumption(key, words, assumed, unit, source, false));
        return assumed;
    }

    List<Assumption> list() {
        return List.copyOf(list.values());
    }

    /** Refuses overrides that nothing asked for: a slip of the pen must not pass silently. */
    void requireAllUsed() {
        List<String> wrong = new ArrayList<>();
        for (String key : overrides.keySet()) {
            if (!asked.contains(key)) {
                wrong.add("\"" + key + "\""
                        + NearestName.of(key, asked)
                                .map(n -> " (did you mean \"" + n + "\"?)")
                                .orElse(""));
            }
        }
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException("no figure of this boat's circuit is called " + String.join(", ", wrong)
                    + ". Take the keys from the list of assumed figures.");
        }
    }
}
