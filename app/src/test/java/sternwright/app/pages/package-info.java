/**
 * The pages as people use them: one running program on an invented yard, one real browser, desktop and phone, light and dark.
 *
 * <p>In come paths through the pages; out go judgements, and pictures under {@code target/pictures}.
 */
@NullMarked
package sternwright.app.pages;

import org.jspecify.annotations.NullMarked;
