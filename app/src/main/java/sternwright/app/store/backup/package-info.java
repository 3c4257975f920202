/**
 * A store written out as one SQLite file while it is in use, and read in again.
 *
 * <p>In comes an open store, on either database; out goes a file that is a store itself, as it was at one moment, and can be
 * verified and opened like any other.
 */
@NullMarked
package sternwright.app.store.backup;

import org.jspecify.annotations.NullMarked;
