package sternwright.service;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * When a work falls due; the clause that comes first counts.
 *
 * @param months months since it was last done, null for none; at least 1
 * @param hours engine hours since it was last done, null for none; above 0
 * @param lifeMonths life of the part since it was fitted or last renewed, months; null for none
 * @param everyNth with every n-th of another rule, null for none
 * @param occasion an occasion, null for none
 * @param after ids of rules after which it is due; {@code tag:x} means any rule with tag x, {@code event:x} something that happened
 * @param unlessLastsTo rule id: when that rule is carried out and this part would not last to the next time, do this with it;
 *     null for none
 */
public record Interval(
        @Nullable Integer months,
        @Nullable Double hours,
        @Nullable Integer lifeMonths,
        @Nullable EveryNth everyNth,
        @Nullable Occasion occasion,
        List<String> after,
        @Nullable String unlessLastsTo) {
    /** Copies the list. */
    public Interval {
        after = List.copyOf(after);
    }

    /**
     * Months and hours, whichever comes first.
     *
     * @param months months, null for none
     * @param hours engine hours, null for none
     * @return the interval
     */
    public static Interval of(@Nullable Integer months, @Nullable Double hours) {
        return new Interval(months, hours, null, null, null, List.of(), null);
    }
}
