package sternwright.visit;

import java.time.LocalDate;
import sternwright.measure.Money;

/**
 * What leaving a work costs. A work that is late already, or would be past its limit by then, is answered all the same: in money and
 * in risk.
 *
 * @param work the work
 * @param until the day it is left until
 * @param answer the best plan then, or what forbids it
 * @param moreMoney what that plan costs more, negative if less; risk not counted. Zero where there is no plan
 * @param moreRisk what it costs more in risk: months late by what a month of it is weighed. Zero where there is no plan
 * @param ifLeft what happens if it is left, in words an owner understands; empty if the rule says nothing
 * @param safetyPastLife a safety item that would be past its life: not without the owner's signed refusal
 */
public record LeftAnswer(
        String work,
        LocalDate until,
        BoatAnswer answer,
        Money moreMoney,
        Money moreRisk,
        String ifLeft,
        boolean safetyPastLife) {}
