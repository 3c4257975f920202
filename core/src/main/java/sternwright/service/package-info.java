/**
 * Service programmes as data: rules, where they apply, their intervals and what changes them.
 *
 * <p>Comes in: the generic programme and the overrides of yard, boat, engine model or part. Goes out: for each part the
 * rules in force with the source that was used. Trade figures: see the source carried by each rule.
 */
@NullMarked
package sternwright.service;

import org.jspecify.annotations.NullMarked;
