package sternwright.protection.report;

import sternwright.protection.judgement.MetalJudgement;
import sternwright.protection.register.BoatBody;

/**
 * One part of the boat.
 *
 * @param body the part
 * @param closeV potential at the berth with the half cell close to it, V against silver/silver chloride in seawater
 * @param farV the same with the half cell well away, V
 * @param currentA current from it into the water at the berth, A; negative where it is being protected
 * @param runningV potential under way, V
 * @param atBerth judgement at the berth
 * @param underWay judgement under way
 */
public record PartLine(
        BoatBody body,
        double closeV,
        double farV,
        double currentA,
        double runningV,
        MetalJudgement atBerth,
        MetalJudgement underWay) {}
