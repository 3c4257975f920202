/**
 * The people who sign in to the pages: who they are, what they may, how often they failed to sign in, and what they changed.
 *
 * <p>In come names, passwords and one-time links as typed; out go accounts and lines of the audit. Passwords are kept as
 * Argon2id hashes only, links as SHA-256 hashes only. The tables stand in the same database as the sessions
 * ({@code db/account}), SQLite or PostgreSQL alike.
 *
 * <p>Figures of the hash follow OWASP, Password Storage Cheat Sheet (Argon2id, 19 MiB, two passes, one lane); lengths of
 * passwords follow NIST SP 800-63B-4, section 3.1.1.2 (from memory).
 */
@NullMarked
package sternwright.app.account;

import org.jspecify.annotations.NullMarked;
