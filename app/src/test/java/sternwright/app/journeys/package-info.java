/** Numbered journeys through the real program. */
@NullMarked
package sternwright.app.journeys;

import org.jspecify.annotations.NullMarked;
