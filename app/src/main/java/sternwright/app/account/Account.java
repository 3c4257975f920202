package sternwright.app.account;

import java.time.Instant;

/**
 * One person who may sign in.
 *
 * @param id never changes
 * @param name what is typed to sign in, lower case
 * @param fullName as others read it
 * @param role what the person may do
 * @param hasPassword whether a password was ever set; without one nobody signs in
 * @param locked whether signing in is refused
 * @param createdAt when it was made
 * @param version counts changes, so that two windows do not overwrite each other
 */
public record Account(
        String id,
        String name,
        String fullName,
        Role role,
        boolean hasPassword,
        boolean locked,
        Instant createdAt,
        int version) {}
