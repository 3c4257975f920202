package sternwright.protection.fault;

import java.util.List;
import sternwright.protection.judgement.MetalJudgement;
import sternwright.protection.register.BoatBody;

/**
 * What a fault does.
 *
 * @param fault the fault
 * @param parts each part of the boat with the fault
 * @param harm rank: millimetres of metal a year lost more than without it, over all parts, plus what overprotection and shorter anode life are
 *     held to be worth
 * @param sentence the worst of it in plain words
 */
public record FaultEffect(Fault fault, List<Part> parts, double harm, String sentence) {
    public FaultEffect {
        parts = List.copyOf(parts);
    }

    /**
     * One part with the fault beside itself without.
     *
     * @param body the part
     * @param soundV potential close to it without the fault, V
     * @param faultyV the same with it, V
     * @param wastageMmPerYear metal lost on its bare area, mm a year
     * @param moreMmPerYear of which the fault's doing
     * @param lifeRatio life of an anode with the fault over that without it; 1 for other parts
     * @param judgement how it stands with the fault
     */
    public record Part(
            BoatBody body,
            double soundV,
            double faultyV,
            double wastageMmPerYear,
            double moreMmPerYear,
            double lifeRatio,
            MetalJudgement judgement) {}
}
