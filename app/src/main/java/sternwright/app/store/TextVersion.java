package sternwright.app.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One version of a text.
 *
 * @param name of the text
 * @param version counts from 1
 * @param by who wrote it
 * @param at when
 * @param why in a few words
 * @param added what was added at its end, where it only grew
 * @param text the whole text; empty where it was taken away
 */
public record TextVersion(
        String name, int version, String by, Instant at, String why, Optional<String> added, Optional<String> text) {
    /** The versions of one text from its rows, the newest first. */
    static List<TextVersion> of(List<ChangeRow> newestFirst) {
        List<TextVersion> versions = new ArrayList<>();
        StringBuilder whole = new StringBuilder();
        for (int i = newestFirst.size() - 1; i >= 0; i--) {
            ChangeRow row = newestFirst.get(i);
            if (!row.isTail()) {
                whole.setLength(0);
            }
            whole.append(row.text());
            versions.add(
                    0,
                    new TextVersion(
                            row.name(),
                            row.version(),
                            row.by(),
                            Instant.ofEpochMilli(row.at()),
                            row.why(),
                            row.isTail() ? Optional.of(row.text()) : Optional.empty(),
                            row.isGone() ? Optional.empty() : Optional.of(whole.toString())));
        }
        return versions;
    }
}
