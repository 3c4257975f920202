package sternwright.due;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.PartRef;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.service.EveryNth;
import sternwright.service.Rule;
import sternwright.service.Trigger;

/** Clauses that hang on something else: another work, a finding, a happening. */
final class LinkedClauses {
    private final BoatFacts facts;
    private final Map<String, Set<String>> rulesByTag;

    LinkedClauses(BoatFacts facts, Map<String, Set<String>> rulesByTag) {
        this.facts = facts;
        this.rulesByTag = rulesByTag;
    }

    /** Due since another work was done or something happened after the last time. */
    void addAfter(List<Clause> clauses, Asked asked) {
        LocalDate last = asked.lastDate();
        for (String after : asked.rule().interval().after()) {
            ServiceEntry found = newest(after, asked.ref());
            if (found != null && (last == null || found.date().isAfter(last))) {
                clauses.add(Clause.certain(ClauseKind.AFTER, found.date(), 0, after));
            }
        }
    }

    private @Nullable ServiceEntry newest(String after, PartRef ref) {
        int colon = after.indexOf(':');
        String kind = colon < 0 ? "" : after.substring(0, colon);
        String name = after.substring(colon + 1);
        Outcome outcome = kind.equals("event") ? Outcome.HAPPENED : Outcome.DONE;
        Set<String> ids = kind.equals("tag") ? rulesByTag.getOrDefault(name, Set.of()) : Set.of(name);
        List<ServiceEntry> all = facts.installationEntries(ref.installationId());
        for (int i = all.size() - 1; i >= 0; i--) {
            ServiceEntry e = all.get(i);
            if (e.outcome() == outcome && ids.contains(e.ruleId())) {
                return e;
            }
        }
        return null;
    }

    /** Due since a finding that asks for it, unless it was done on that day or later. */
    void addFindings(List<Clause> clauses, Asked asked) {
        for (Trigger trigger : asked.rule().triggers()) {
            BoatFacts.Taken taken = facts.lastReading(asked.ref(), trigger.reading());
            LocalDate last = asked.base();
            if (taken != null
                    && trigger.pulledBy(taken.reading().value())
                    && (last == null || taken.date().isAfter(last))) {
                clauses.add(Clause.certain(
                        ClauseKind.CONDITION, taken.date(), taken.reading().value(), trigger.why()));
            }
        }
    }

    /** With every n-th time of another work on the same part. */
    void addNth(List<Clause> clauses, Asked asked, Map<String, Due> samePart) {
        EveryNth nth = asked.rule().interval().everyNth();
        Due other = nth == null ? null : samePart.get(nth.ruleId());
        if (nth == null || other == null) {
            return;
        }
        LocalDate since = asked.base();
        if (since == null || other.state() == DueState.UNKNOWN) {
            clauses.add(Clause.certain(ClauseKind.UNKNOWN, facts.today, 0, ""));
            return;
        }
        int times = facts.timesDone(asked.ref(), Set.of(nth.ruleId()), asked.lastDate());
        int more = Math.max(0, nth.n() - 1 - times);
        Integer months = other.rule().interval().months();
        LocalDate date = other.dueOn().plusMonths((long) more * (months == null ? 12 : months));
        clauses.add(Clause.certain(ClauseKind.NTH, date, nth.n(), other.rule().work()));
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
