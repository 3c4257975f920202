package sternwright.due;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.history.Outcome;
import sternwright.service.Modifier;
import sternwright.service.Rule;

/** A rule's interval after the circumstances that shorten or lengthen it, with the reasons. */
record EffectiveInterval(
        @Nullable Integer months,
        @Nullable Double hours,
        @Nullable Integer lifeMonths,
        List<String> whys) {
    private static final String CONDITION = "condition:";

    static EffectiveInterval of(Rule rule, Asked asked, BoatFacts facts) {
        Integer months = rule.interval().months();
        Double hours = rule.interval().hours();
        Integer life = rule.interval().lifeMonths();
        if (rule.modifiers().isEmpty()) {
            return new EffectiveInterval(months, hours, life, List.of());
        }
        List<String> whys = new ArrayList<>();
        for (Modifier m : rule.modifiers()) {
            if (!holds(m.when(), asked, facts)) {
                continue;
            }
            whys.add(m.why());
            Integer instead = m.months();
            if (instead != null) {
                months = months == null ? null : instead;
                life = life == null ? null : instead;
            } else {
                months = scaled(months, m.factor());
                life = scaled(life, m.factor());
                hours = hours == null ? null : hours * m.factor();
            }
        }
        return new EffectiveInterval(months, hours, life, List.copyOf(whys));
    }

    private static @Nullable Integer scaled(@Nullable Integer months, double factor) {
        return months == null ? null : (Integer) Math.max(1, (int) Math.floor(months * factor));
    }

    private static boolean holds(String when, Asked asked, BoatFacts facts) {
        if (when.equals("hot-marina")) {
            return facts.berth.hotMarina();
        }
        if (when.equals("heavy-use")) {
            return facts.use.heavy();
        }
        if (!when.startsWith(CONDITION)) {
            return false;
        }
        String condition = when.substring(CONDITION.length());
        return asked.part().conditions().contains(condition)
                || facts.entries(asked.ref()).stream()
                        .anyMatch(e -> e.outcome() == Outcome.HAPPENED
                                && e.ruleId().equals(condition)
                                && (asked.born() == null || !e.date().isBefore(asked.born())));
    }
}
