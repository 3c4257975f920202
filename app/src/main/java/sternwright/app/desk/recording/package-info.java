/**
 * What was done and what the meters show, judged and written down.
 *
 * <p>Comes in: works as typed or as a sheet. Goes out: lines added to the tables of a boat, with the due list before and after.
 * What stands in the tables already stays as it is, byte for byte.
 */
@NullMarked
package sternwright.app.desk.recording;

import org.jspecify.annotations.NullMarked;
