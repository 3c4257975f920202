package sternwright.visit.problem;

import java.util.List;

/**
 * One work that recurs by its life, or falls due once.
 *
 * @param name as the engineer calls it, unique in the problem
 * @param servicePoint index of the service point that must be opened, -1 for none
 * @param life interval and use
 * @param phases the cycle, at least one phase
 * @param nextPhase phase of the next doing, 0 to phases - 1
 * @param materialShare share of the phase's cost that is thrown away with unused life, 0 to 1
 * @param riskPerMonthCents what one month late costs in risk, in the smallest unit of the currency
 * @param rules the hard rules
 */
public record Work(
        String name,
        int servicePoint,
        Life life,
        List<WorkPhase> phases,
        int nextPhase,
        double materialShare,
        long riskPerMonthCents,
        WorkRules rules) {
    public Work {
        phases = List.copyOf(phases);
        if (phases.isEmpty() || nextPhase < 0 || nextPhase >= phases.size()) {
            throw new IllegalArgumentException(
                    name + ": next phase " + nextPhase + " of " + phases.size() + ", expected one of the phases");
        }
        if (!(materialShare >= 0 && materialShare <= 1)) {
            throw new IllegalArgumentException(name + ": material share " + materialShare + ", expected 0 to 1");
        }
        if (riskPerMonthCents < 0) {
            throw new IllegalArgumentException(name + ": risk " + riskPerMonthCents + ", expected 0 or more");
        }
    }

    /** The same work under other hard rules. */
    public Work with(WorkRules other) {
        return new Work(name, servicePoint, life, phases, nextPhase, materialShare, riskPerMonthCents, other);
    }
}
