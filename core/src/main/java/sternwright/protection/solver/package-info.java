/**
 * Solves a protection circuit.
 *
 * <p>In: a {@code Circuit}. Out: a {@code CircuitState} with the potential of every body, every current, and the residual of Kirchhoff's
 * law. The potentials minimise a convex function (co-content, W. Millar 1951), so there is one answer and a damped Newton method with
 * a line search finds it from anywhere. Bodies joined below a micro-ohm are one unknown; the linear systems are sparse and symmetric
 * (L D L^T after a minimum-degree ordering; elimination tree and up-looking factorisation as in T. A. Davis, Direct Methods for Sparse
 * Linear Systems, SIAM 2006).
 */
@NullMarked
package sternwright.protection.solver;

import org.jspecify.annotations.NullMarked;
