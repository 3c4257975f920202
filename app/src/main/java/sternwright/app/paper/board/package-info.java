/**
 * The season as a drawing: weeks across, resources down, boats as bars, what binds marked.
 *
 * <p>Comes in: a {@link sternwright.season.dated.answer.DatedSeason}. Goes out: SVG, in panels of so many boats that one fits on a
 * sheet of paper. Words lead, then the mark, then the tone; presentation attributes carry the look into the PDF, the browser's
 * sheet leads over them by class. Nothing here computes or decides.
 */
@NullMarked
package sternwright.app.paper.board;

import org.jspecify.annotations.NullMarked;
