package sternwright.visit;

import java.time.LocalDate;
import sternwright.measure.Money;

/**
 * What leaving a work costs.
 *
 * @param work the work
 * @param until the day it is left until
 * @param answer the best plan then, or what forbids it
 * @param moreMoney what that plan costs more, negative if less; risk not counted. Zero where there is no plan
 * @param moreRisk what it costs more in risk. Zero where there is no plan
 */
public record LeftAnswer(String work, LocalDate until, BoatAnswer answer, Money moreMoney, Money moreRisk) {}
