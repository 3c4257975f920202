/**
 * The yard kept in a database: SQLite in one file, or PostgreSQL where several programs share it.
 *
 * <p>In come texts by name, as {@link sternwright.app.files.shelf.Shelf} says, with who changed them and why; photos and
 * documents; runs of the season. Every version of every text stays; rows are added and
 * never changed, and each carries the hash of the one before. Out goes the newest, or an older one, or a proof that nothing was
 * altered. One set of migrations and statements serves both databases. See docs/store.md.
 */
@NullMarked
package sternwright.app.store;

import org.jspecify.annotations.NullMarked;
