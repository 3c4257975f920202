/**
 * The yard as it lies open on the desk of a program that keeps running.
 *
 * <p>In comes a yard's folder, changed by deeds of this program or of another one; out goes what it says now, read again only
 * when something in it has changed, and what is due on a day, worked out once for each day and state of the folder.
 */
@NullMarked
package sternwright.app.desk.open;

import org.jspecify.annotations.NullMarked;
