/**
 * Plans of visits that are shown at once and proved behind the reader's back.
 *
 * <p>In comes a boat and how far to plan; out goes a plan at once, then its proof, then the best plans with one visit fewer and
 * one more, and what it costs to leave a work. What is worked out is kept as long as what the yard says of the boat stays the
 * same. One thread proves, so that pages stay quick. Whose model: {@code sternwright.visit}.
 */
@NullMarked
package sternwright.app.desk.proving;

import org.jspecify.annotations.NullMarked;
