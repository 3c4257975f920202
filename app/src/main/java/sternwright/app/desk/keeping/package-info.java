/**
 * Where a yard is kept: in its folder as files, or in a store; moving it between the two; backing up, restoring, verifying.
 *
 * <p>In comes a yard's folder; what stands in its {@code .desk} folder, or the environment, says whether the yard is kept in a
 * store. Out go shelves for readers and deeds, folders, backup files, and what is wrong with any of them.
 */
@NullMarked
package sternwright.app.desk.keeping;

import org.jspecify.annotations.NullMarked;
