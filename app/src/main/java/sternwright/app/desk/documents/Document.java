package sternwright.app.desk.documents;

import java.time.Instant;

/**
 * A photo or document that is kept.
 *
 * @param id by which it is asked for
 * @param name what it is called
 * @param kind what it is, by its content
 * @param size bytes
 * @param by who put it in
 * @param at when it was put in
 * @param cardId the job card it was put on; empty if it was put on none
 */
public record Document(String id, String name, FileKind kind, long size, String by, Instant at, String cardId) {}
