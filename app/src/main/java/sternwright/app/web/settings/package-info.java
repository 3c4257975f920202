/**
 * Settings: the people of the yard and the audit of who changed what.
 *
 * <p>In come changes by the manager; out go accounts, one-time links and lines of the audit. A change of role, a lock or a
 * new link signs the person out at once. The last manager cannot be locked out.
 */
@NullMarked
package sternwright.app.web.settings;

import org.jspecify.annotations.NullMarked;
