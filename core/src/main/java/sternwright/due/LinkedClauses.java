package sternwright.due;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import sternwright.boat.PartRef;
import sternwright.history.ServiceEntry;
import sternwright.service.EveryNth;
import sternwright.service.Rule;
import sternwright.service.Trigger;

/** Clauses that hang on something else: another work, a finding, a happening. */
final class LinkedClauses {
    private final BoatFacts facts;
    private final Function<String, Set<String>> rulesByTag;

    /** {@code rulesByTag} gives the ids of all rules of the boat that carry a tag. */
    LinkedClauses(BoatFacts facts, Function<String, Set<String>> rulesByTag) {
        this.facts = facts;
        this.rulesByTag = rulesByTag;
    }

    /** Due since another work was done or something happened after the last time. */
    void addAfter(List<Clause> clauses, Asked asked) {
        LocalDate last = asked.lastDate();
        for (RulePlan.Call call : asked.ready().calls()) {
            String tag = call.tag();
            Set<String> ids = tag == null ? call.ids() : rulesByTag.apply(tag);
            ServiceEntry found = facts.history.newest(asked.ref().installationId(), call.outcome(), ids);
            if (found != null && (last == null || found.date().isAfter(last))) {
                clauses.add(Clause.certain(ClauseKind.AFTER, found.date(), 0, call.written()));
            }
        }
    }

    /** Due since a finding that asks for it, unless it was done on that day or later. */
    void addFindings(List<Clause> clauses, Asked asked) {
        for (Trigger trigger : asked.rule().triggers()) {
            HistoryIndex.Taken taken = facts.history.lastReading(asked.place(), trigger.reading());
            LocalDate last = asked.base();
            if (taken != null
                    && trigger.pulledBy(taken.value())
                    && (last == null || taken.date().isAfter(last))) {
                clauses.add(Clause.certain(ClauseKind.CONDITION, taken.date(), taken.value(), trigger.why()));
            }
        }
    }

    /** With every n-th time of another work on the same part. */
    void addNth(List<Clause> clauses, Asked asked, List<Due> sameInstallation) {
        EveryNth nth = asked.rule().interval().everyNth();
        Due other = nth == null ? null : onSamePart(sameInstallation, asked.ref(), nth.ruleId());
        if (nth == null || other == null) {
            return;
        }
        LocalDate since = asked.base();
        if (since == null || other.state() == DueState.UNKNOWN) {
            clauses.add(Clause.certain(ClauseKind.UNKNOWN, facts.today, 0, ""));
            return;
        }
        int times = facts.history.timesDone(asked.place(), nth.ruleId(), asked.lastDate());
        int more = Math.max(0, nth.n() - 1 - times);
        Integer months = other.rule().interval().months();
        LocalDate date = other.dueOn().plusMonths((long) more * (months == null ? 12 : months));
        clauses.add(Clause.certain(ClauseKind.NTH, date, nth.n(), other.rule().work()));
    }

    private static @Nullable Due onSamePart(List<Due> dues, PartRef part, String ruleId) {
        for (Due d : dues) {
            if (d.part().equals(part) && d.rule().id().equals(ruleId)) {
                return d;
            }
        }
        return null;
    }

    /** With another work that opens the way, if this part would not last to the next time of it. */
    void addOpportunity(List<Clause> clauses, Asked asked, List<Due> sameInstallation) {
        String opener = asked.rule().interval().unlessLastsTo();
        LocalDate end = clauses.stream()
                .filter(c -> c.kind() == ClauseKind.LIFE)
                .map(Clause::date)
                .findFirst()
                .orElse(null);
        if (opener == null || end == null) {
            return;
        }
        for (Due other : sameInstallation) {
            Rule rule = other.rule();
            Integer months = rule.interval().lifeMonths() != null
                    ? rule.interval().lifeMonths()
                    : rule.interval().months();
            if (rule.id().equals(opener)
                    && months != null
                    && other.state() != DueState.REFUSED
                    && end.isAfter(other.dueOn())
                    && end.isBefore(other.dueOn().plusMonths(months))) {
                clauses.add(Clause.certain(ClauseKind.OPPORTUNITY, other.dueOn(), months, rule.work()));
            }
        }
    }
}
