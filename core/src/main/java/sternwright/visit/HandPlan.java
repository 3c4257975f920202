package sternwright.visit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.boat.PartRef;
import sternwright.measure.Money;

/**
 * A plan that a person has changed, beside the one that was proposed.
 *
 * @param plan the changed plan with its visits and prices; its bound is that of the proposed plan
 * @param costs both plans by kind of cost, in the order of {@link BoatPlan#split()}
 * @param broken rules it breaks that the proposed plan keeps, refused ones first
 * @param said what was done besides what was asked, in sentences
 */
public record HandPlan(BoatPlan plan, List<CostChange> costs, List<Broken> broken, List<String> said) {
    /** Copies the lists. */
    public HandPlan {
        costs = List.copyOf(costs);
        broken = List.copyOf(broken);
        said = List.copyOf(said);
    }

    /**
     * One kind of cost in both plans.
     *
     * @param what the kind
     * @param proposed in the proposed plan
     * @param byHand in the changed plan
     */
    public record CostChange(String what, Money proposed, Money byHand) {
        /** What the change costs; negative where it saves. */
        public Money difference() {
            return byHand.minus(proposed);
        }
    }

    /**
     * A rule that is broken.
     *
     * @param part the part; null where it is the visit as a whole
     * @param ruleId the rule; empty where it is the visit as a whole
     * @param words what is wrong, a sentence
     * @param refused whether a plan with it cannot be taken: it cannot be done so, or it is a safety item that is not refused by
     *     signature, or frost protection
     * @param advice what to do, a sentence
     */
    public record Broken(@Nullable PartRef part, String ruleId, String words, boolean refused, String advice) {}

    /**
     * Whether the plan can be taken.
     *
     * @return false if a rule is broken that must not be
     */
    public boolean allowed() {
        return broken.stream().noneMatch(Broken::refused);
    }

    /**
     * What the change costs in all.
     *
     * @return planning cost of the changed plan less that of the proposed one; negative where it is cheaper
     */
    public Money difference() {
        Money sum = Money.zero(plan.planningCost().currency());
        for (CostChange c : costs) {
            sum = sum.plus(c.difference());
        }
        return sum;
    }
}
