package sternwright.service.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.finding.Caution;
import sternwright.service.IntervalClause;
import sternwright.service.Overriding;
import sternwright.service.Programme;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;

/** Looks through programmes for everything that cannot be relied on. */
public final class ProgrammeCheck {
    private final Map<String, Rule> rules = new LinkedHashMap<>();
    private final Set<String> ruleTags = new HashSet<>();
    private final Set<String> readings = new HashSet<>();
    private final Set<String> cautions;
    private final Set<String> kinds;
    private final Set<String> kindTags;
    private final Map<String, Set<String>> partsByBoat;
    private final List<ProgrammeFault> faults = new ArrayList<>();

    /** Clauses that some overriding gives, by rule. */
    private final Map<String, Set<IntervalClause>> given = new HashMap<>();

    private ProgrammeCheck(List<Programme> programmes, PartCatalogue catalogue, List<Boat> boats) {
        for (Programme p : programmes) {
            for (Rule r : p.rules()) {
                rules.put(r.id(), r);
                ruleTags.addAll(r.tags());
                r.readings().stream().map(ReadingAsked::name).forEach(readings::add);
            }
        }
        cautions = programmes.stream()
                .flatMap(p -> p.cautions().stream())
                .map(Caution::id)
                .collect(Collectors.toSet());
        kinds = catalogue.kinds().stream().map(PartKind::id).collect(Collectors.toSet());
        programmes.stream()
                .flatMap(p -> p.overridings().stream())
                .forEach(o -> given.merge(o.ruleId(), OverridingFigures.given(o), ProgrammeCheck::both));
        kindTags = catalogue.kinds().stream().flatMap(k -> k.tags().stream()).collect(Collectors.toSet());
        partsByBoat = boats.stream().collect(Collectors.toMap(Boat::id, ProgrammeCheck::parts, (a, b) -> a));
    }

    /**
     * All faults of a yard's programmes, in the order in which they are written.
     *
     * @param programmes the generic programme first, then the yard's own
     * @param catalogue all kinds of part, the yard's own included
     * @param boats all boats, to know what an overriding for a boat or a part is for
     * @return the faults; empty if every reference leads somewhere and every figure can be
     */
    public static List<ProgrammeFault> faults(List<Programme> programmes, PartCatalogue catalogue, List<Boat> boats) {
        ProgrammeCheck check = new ProgrammeCheck(programmes, catalogue, boats);
        programmes.forEach(check::programme);
        check.faults.addAll(RuleRings.faults(programmes, check.rules.values()));
        return List.copyOf(check.faults);
    }

    private void programme(Programme p) {
        Set<String> seen = new HashSet<>();
        int n = 0;
        for (Rule rule : p.rules()) {
            Spot at = Spot.rule(p.id(), n++, rule.id());
            if (!seen.add(rule.id())) {
                fault(at, "id", rule.id(), "two rules have this id: rename one of them");
            }
            new RuleFigures(at, rule, faults).check();
            references(at, rule);
        }
        n = 0;
        for (Overriding over : p.overridings()) {
            overriding(Spot.overriding(p.id(), n++, over.ruleId()), over);
        }
    }

    private void references(Spot at, Rule rule) {
        rule.appliesTo().kinds().forEach(k -> known(at, "applies-to.kinds", k, "kind of part", kinds));
        rule.appliesTo().tags().forEach(t -> known(at, "applies-to.tags", t, "tag of a kind of part", kindTags));
        var nth = rule.interval().everyNth();
        if (nth != null) {
            known(at, "interval.every-nth.rule", nth.ruleId(), "rule", rules.keySet());
        }
        String lasting = rule.interval().unlessLastsTo();
        if (lasting != null) {
            known(at, "interval.unless-lasts-to", lasting, "rule", rules.keySet());
        }
        for (String after : rule.interval().after()) {
            if (after.startsWith("tag:")) {
                known(at, "interval.after", after.substring(4), "tag of a rule", ruleTags);
            } else if (!after.startsWith("event:")) {
                known(at, "interval.after", after, "rule", rules.keySet());
            }
        }
        rule.cautions().forEach(c -> known(at, "cautions", c, "caution", cautions));
        rule.triggers().forEach(t -> known(at, "triggers.reading", t.reading(), "reading asked by a rule", readings));
    }

    private void overriding(Spot at, Overriding over) {
        known(at, "rule", over.ruleId(), "rule", rules.keySet());
        Rule rule = rules.get(over.ruleId());
        switch (over.scope()) {
            case GENERIC ->
                fault(at, "scope", "generic", "an overriding reaches over yard, engine-model, boat or part: write one");
            case YARD -> {
                if (!over.target().isEmpty()) {
                    fault(at, "target", over.target(), "an overriding for the whole yard has no target: leave it out");
                }
            }
            case ENGINE_MODEL -> {
                if (over.target().isBlank()) {
                    fault(at, "target", over.target(), "write the engine model as on the plate");
                }
            }
            case BOAT -> known(at, "target", over.target(), "boat", partsByBoat.keySet());
            case PART -> part(at, over.target());
        }
        if (over.nth() != null && rule != null && rule.interval().everyNth() == null) {
            fault(at, "nth", over.nth().toString(), "the rule does not count another one: leave nth out");
        }
        OverridingFigures figures = new OverridingFigures(at, over, faults);
        figures.check();
        if (rule != null) {
            figures.against(rule, given.getOrDefault(over.ruleId(), Set.of()));
        }
    }

    private void part(Spot at, String target) {
        int slash = target.indexOf('/');
        if (slash < 0) {
            fault(at, "target", target, "a part is written boat/installation/part");
            return;
        }
        String boatId = target.substring(0, slash);
        known(at, "target", boatId, "boat", partsByBoat.keySet());
        Set<String> parts = partsByBoat.get(boatId);
        if (parts != null) {
            known(at, "target", target, "part of boat " + boatId, parts);
        }
    }

    private void known(Spot at, String field, String written, String what, Set<String> known) {
        if (!known.contains(written)) {
            faults.add(ProgrammeFault.unknown(at.at(field), written, what, known));
        }
    }

    private void fault(Spot at, String field, String written, String expected) {
        faults.add(new ProgrammeFault(at.at(field), written, expected, null));
    }

    private static Set<IntervalClause> both(Set<IntervalClause> a, Set<IntervalClause> b) {
        Set<IntervalClause> all = new HashSet<>(a);
        all.addAll(b);
        return all;
    }

    private static Set<String> parts(Boat boat) {
        return boat.installations().stream()
                .flatMap(i -> i.parts().stream().map(p -> boat.id() + "/" + i.id() + "/" + p.id()))
                .collect(Collectors.toSet());
    }
}
