package sternwright.history;

import org.jspecify.annotations.Nullable;

/**
 * A line as it stands in the history: what was done, or, repeating an earlier line with a strike, that it does not hold.
 *
 * @param entry what was done; with a strike the earlier line, repeated
 * @param strike who struck the earlier line, when and why; null for a plain line
 */
public record HistoryLine(ServiceEntry entry, @Nullable Strike strike) {
    /**
     * A line that strikes nothing.
     *
     * @param entry what was done
     * @return the line
     */
    public static HistoryLine of(ServiceEntry entry) {
        return new HistoryLine(entry, null);
    }
}
