/**
 * Finds the cheapest visits and proves how good they are.
 *
 * <p>In: a {@link sternwright.visit.problem.VisitProblem} and limits of time and branches, the clock handed in. Out: a
 * {@link sternwright.visit.problem.VisitAnswer}: a plan with bound and gap, or the demands that clash.
 *
 * <p>Every work is a path through (phase, month) nodes (Joneja 1990; Gustavsson et al. 2014). Visits and set-ups link the
 * paths. Those links are priced (Lagrangian relaxation): with prices, every work is a shortest path of its own, lifts and
 * visits are one small dynamic programme over the months, and each set-up stands alone. Prices are found by the volume
 * algorithm (Barahona and Anbil, "The volume algorithm: producing primal solutions with a subgradient method",
 * Mathematical Programming 87 (2000), from memory); the bound equals that of the linear relaxation. Steps that provably cannot be part of a
 * cheaper plan are struck out, and what is left is settled by branch and bound.
 */
@NullMarked
package sternwright.visit.solver;

import org.jspecify.annotations.NullMarked;
