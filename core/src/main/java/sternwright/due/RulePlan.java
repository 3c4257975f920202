package sternwright.due;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.history.Outcome;
import sternwright.service.EveryNth;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;

/**
 * The rules in force for one kind of part made ready to be asked of many parts: what of the answer does not depend on the
 * boat is worked out here once.
 *
 * @param rules the rules in their order
 * @param renewing ids of the rules after which the part is new
 */
record RulePlan(List<Ready> rules, Set<String> renewing) {

    static RulePlan of(List<RuleInForce> inForce) {
        Set<String> renewing = new HashSet<>();
        for (RuleInForce r : inForce) {
            if (r.rule().renews()) {
                renewing.add(r.rule().id());
            }
        }
        Set<String> renewals = Set.copyOf(renewing);
        return new RulePlan(
                inForce.stream().map(r -> Ready.of(r, inForce, renewals)).toList(), renewals);
    }

    /**
     * One rule made ready.
     *
     * @param inForce the rule with the figures that hold
     * @param counting ids of all rules that count as this one being done
     * @param instead ids of those that are done in its place, null if there are none
     * @param plain its interval if no circumstance changes it
     * @param circumstances what may change its interval
     * @param calls works and happenings after which it is due
     */
    record Ready(
            RuleInForce inForce,
            Set<String> counting,
            @Nullable Set<String> instead,
            EffectiveInterval plain,
            List<Circumstance> circumstances,
            List<Call> calls) {

        static Ready of(RuleInForce held, List<RuleInForce> all, Set<String> renewing) {
            Rule rule = held.rule();
            Interval interval = rule.interval();
            Set<String> instead = instead(rule, all, renewing);
            Set<String> counting = new HashSet<>(instead);
            counting.add(rule.id());
            return new Ready(
                    held,
                    Set.copyOf(counting),
                    instead.isEmpty() ? null : instead,
                    new EffectiveInterval(interval.months(), interval.hours(), interval.lifeMonths(), ""),
                    rule.modifiers().stream().map(Circumstance::of).toList(),
                    interval.after().stream().map(Call::of).toList());
        }

        /** Those that are done in its place every n-th time, and the renewal of the part. */
        private static Set<String> instead(Rule rule, List<RuleInForce> all, Set<String> renewing) {
            Set<String> ids = new HashSet<>();
            for (RuleInForce other : all) {
                EveryNth nth = other.rule().interval().everyNth();
                if (nth != null && nth.ruleId().equals(rule.id())) {
                    ids.add(other.rule().id());
                }
            }
            if (!rule.renews()) {
                ids.addAll(renewing);
            }
            ids.remove(rule.id());
            return Set.copyOf(ids);
        }

        Rule rule() {
            return inForce.rule();
        }

        /** Whether it is answered from the answers of the others. */
        boolean waits() {
            Interval interval = rule().interval();
            return interval.everyNth() != null || interval.unlessLastsTo() != null;
        }
    }

    /** A modifier with its condition cut out; the condition empty for those of the berth and the use. */
    record Circumstance(Modifier modifier, String condition) {
        private static final String CONDITION = "condition:";

        static Circumstance of(Modifier m) {
            return new Circumstance(m, m.when().startsWith(CONDITION) ? m.when().substring(CONDITION.length()) : "");
        }

        boolean holds(Asked asked, BoatFacts facts) {
            if (condition.isEmpty()) {
                return switch (modifier.when()) {
                    case "hot-marina" -> facts.berth.hotMarina();
                    case "heavy-use" -> facts.use.heavy();
                    default -> false;
                };
            }
            return asked.part().conditions().contains(condition)
                    || facts.history.happened(asked.place(), condition, asked.born());
        }
    }

    /**
     * Another work or a happening after which a rule is due.
     *
     * @param written as the rule has it
     * @param tag the tag of the works meant, null if one work or happening is meant
     * @param ids the one id meant, none for a tag
     * @param outcome what the entry must say
     */
    record Call(String written, @Nullable String tag, Set<String> ids, Outcome outcome) {
        static Call of(String written) {
            int colon = written.indexOf(':');
            String name = written.substring(colon + 1);
            return switch (colon < 0 ? "" : written.substring(0, colon)) {
                case "event" -> new Call(written, null, Set.of(name), Outcome.HAPPENED);
                case "tag" -> new Call(written, name, Set.of(), Outcome.DONE);
                default -> new Call(written, null, Set.of(name), Outcome.DONE);
            };
        }
    }

    /** The ids of the rules that carry a tag. */
    List<String> tagged(String tag) {
        List<String> ids = new ArrayList<>();
        for (Ready r : rules) {
            if (r.rule().tags().contains(tag)) {
                ids.add(r.rule().id());
            }
        }
        return ids;
    }
}
