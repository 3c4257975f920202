/**
 * Planned visits: the boats that want one, and the plan of each boat with its price, its proof and what can be argued.
 *
 * <p>In comes a boat and how far to plan; out goes the plan at once, proved while it is read. Whose model:
 * {@code sternwright.visit}; the runs behind it: {@code sternwright.app.desk.proving}.
 */
@NullMarked
package sternwright.app.web.visits;

import org.jspecify.annotations.NullMarked;
