package sternwright.app.desk.proving;

import java.time.LocalDate;
import sternwright.boat.PartRef;

/**
 * What if a work is left until a day?
 *
 * @param part the part
 * @param ruleId the rule
 * @param until the day
 */
public record LeftQuestion(PartRef part, String ruleId, LocalDate until) {}
