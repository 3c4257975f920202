package sternwright.app.desk.documents;

import java.time.Instant;

/**
 * A photo or document that is kept.
 *
 * @param name by which it is asked for; one of a boat has it once
 * @param kind what it is, by its content
 * @param size bytes
 * @param at when it was put in
 */
public record Document(String name, FileKind kind, long size, Instant at) {}
