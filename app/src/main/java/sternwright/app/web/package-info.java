/**
 * The pages: what people see in a browser. Each page of the desk has its own sub-package with a controller and the records
 * its template shows; {@code page} holds what they share, {@code access} who may open what.
 *
 * <p>In come requests of signed-in people; the controllers ask the deeds of {@code desk} and hand records to the templates
 * under {@code src/main/jte/web}. How a page is added stands in {@code docs/pages.md}.
 */
@NullMarked
package sternwright.app.web;

import org.jspecify.annotations.NullMarked;
