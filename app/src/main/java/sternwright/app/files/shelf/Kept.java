package sternwright.app.files.shelf;

import java.time.Instant;

/**
 * A text as it is kept.
 *
 * @param name such as {@code boats/heron.yaml}
 * @param text what it says
 * @param version changes with every change of the text; never empty
 * @param by who wrote it; empty where the keeper does not know
 * @param at when it was written
 */
public record Kept(String name, String text, String version, String by, Instant at) {}
