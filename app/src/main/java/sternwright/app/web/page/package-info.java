/**
 * What every page shares: the {@link sternwright.app.web.page.Page} with its words, formats and person, the parts that
 * templates are put together from (fields, tables, states, pagers), and the pages that are shown when something is wrong.
 *
 * <p>In comes a request; out goes a page in the reader's formats and chosen look. Nothing here knows a boat.
 */
@NullMarked
package sternwright.app.web.page;

import org.jspecify.annotations.NullMarked;
