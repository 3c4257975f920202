package sternwright.visit.planned;

import java.time.LocalDate;
import sternwright.boat.PartRef;

/**
 * A work that yard and owner have agreed to do in one visit.
 *
 * @param boatId the boat
 * @param at month and place of the visit
 * @param part the part
 * @param ruleId the rule
 * @param agreedOn when it was agreed
 * @param who who agreed, as written by the yard; may be empty
 */
public record AgreedWork(String boatId, VisitAt at, PartRef part, String ruleId, LocalDate agreedOn, String who) {}
