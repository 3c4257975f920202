/**
 * Work that takes long, kept in the store so that any program on it may take it, do it once, and take it over from one that
 * died. db-scheduler does the taking; this tells it how SQLite writes its questions, and keeps how far each run is.
 */
@NullMarked
package sternwright.app.store.job;

import org.jspecify.annotations.NullMarked;
