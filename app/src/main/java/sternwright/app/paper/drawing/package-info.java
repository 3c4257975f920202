/**
 * The side elevation of an installation, drawn from its parts with the works marked by number.
 *
 * <p>Comes in: an {@link sternwright.boat.Installation} and a label for some of its parts. Goes out: SVG to stand in a page,
 * in a browser as in PDF. The shapes are data ({@code elevation.svg} beside this package, drawn for this program); what an
 * installation does not have is left out. Words lead, the drawing only helps to find the place: nothing is to scale.
 */
@NullMarked
package sternwright.app.paper.drawing;

import org.jspecify.annotations.NullMarked;
