/**
 * Where the texts of a yard are kept: a folder on a disk, or a store in a database.
 *
 * <p>In comes the name of a text, such as {@code boats/heron.yaml}; out goes what it says and its version. Texts that change
 * together are written together: all of them or none, each only if it still is what its editor had read. Readers and deeds ask
 * a {@link sternwright.app.files.shelf.Shelf} and do not know which keeper stands behind it. See docs/decisions/0060.
 */
@NullMarked
package sternwright.app.files.shelf;

import org.jspecify.annotations.NullMarked;
