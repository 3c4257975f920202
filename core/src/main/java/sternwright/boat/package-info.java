/**
 * The register: a boat at its berth, its installations, their parts, metals and bonds.
 *
 * <p>Comes in: what a person knows of the boat; unknown is a legal answer and stays visible as null. Goes out: records
 * that due list, visits and protection circuit all read. No judgement here.
 */
@NullMarked
package sternwright.boat;

import org.jspecify.annotations.NullMarked;
