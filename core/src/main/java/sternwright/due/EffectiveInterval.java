package sternwright.due;

import org.jspecify.annotations.Nullable;
import sternwright.service.Modifier;

/** A rule's interval after the circumstances that shorten or lengthen it, with the reasons; the reasons empty for none. */
record EffectiveInterval(
        @Nullable Integer months,
        @Nullable Double hours,
        @Nullable Integer lifeMonths,
        String why) {

    static EffectiveInterval of(Asked asked, BoatFacts facts) {
        EffectiveInterval held = asked.ready().plain();
        for (RulePlan.Circumstance c : asked.ready().circumstances()) {
            if (c.holds(asked, facts)) {
                held = held.changed(c.modifier());
            }
        }
        return held;
    }

    private EffectiveInterval changed(Modifier m) {
        String whys = why.isEmpty() ? m.why() : why + "; " + m.why();
        Integer instead = m.months();
        if (instead != null) {
            return new EffectiveInterval(
                    months == null ? null : instead, hours, lifeMonths == null ? null : instead, whys);
        }
        return new EffectiveInterval(
                scaled(months, m.factor()),
                hours == null ? null : (Double) (hours * m.factor()),
                scaled(lifeMonths, m.factor()),
                whys);
    }

    private static @Nullable Integer scaled(@Nullable Integer months, double factor) {
        return months == null ? null : (Integer) Math.max(1, (int) Math.floor(months * factor));
    }
}
