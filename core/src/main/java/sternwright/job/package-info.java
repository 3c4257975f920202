/**
 * The job card: one visit on board, put in the order in which an engineer works through it.
 *
 * <p>Comes in: a planned visit ({@link sternwright.visit.planned.PlannedVisit}) with the facts around it
 * ({@link sternwright.job.CardFacts}). Goes out: a {@link sternwright.job.JobCard} with works by service point, steps,
 * quantities, cautions where they belong, readings asked with their limits, hull openings, pick list, reason and source per
 * work, and what is still to be settled. What is unknown is said, never filled in. Cautions that belong to the visit as a
 * whole are common practice, no source ({@link sternwright.job.VisitCautions}). Laying out pages is the paper's business, not
 * this package's.
 */
@NullMarked
package sternwright.job;

import org.jspecify.annotations.NullMarked;
