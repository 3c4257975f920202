package sternwright.due;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.service.RuleInForce;

/** Rules made ready, kept for every list of rules that the rule book hands out; asked from many threads. */
final class RulePlans {
    private final DueList.RulesOf rules;
    private final Map<Same, RulePlan> plans = new ConcurrentHashMap<>();

    RulePlans(DueList.RulesOf rules) {
        this.rules = rules;
    }

    RulePlan of(Boat boat, Installation installation, Part part) {
        List<RuleInForce> inForce = rules.forPart(boat, installation, part);
        Same key = new Same(inForce);
        RulePlan known = plans.get(key);
        return known != null ? known : plans.computeIfAbsent(key, k -> RulePlan.of(k.list));
    }

    /** One and the same list. The book shares its lists between parts, so to compare what is in them would be waste. */
    private static final class Same {
        private final List<RuleInForce> list;

        Same(List<RuleInForce> list) {
            this.list = list;
        }

        @Override
        @SuppressWarnings("ReferenceEquality")
        public boolean equals(Object other) {
            return other instanceof Same same && same.list == list;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(list);
        }
    }
}
