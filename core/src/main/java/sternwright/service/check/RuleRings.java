package sternwright.service.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import sternwright.service.Programme;
import sternwright.service.Rule;

/**
 * Rules that set each other off for ever: each work makes the next one due, round and round.
 *
 * <p>An edge leads from a rule to every rule it is due after or counts; a ring in that graph never ends. Found by walking
 * deep first and keeping the way.
 */
final class RuleRings {
    private final Map<String, Set<String>> leads = new HashMap<>();
    private final Set<String> finished = new HashSet<>();
    private final List<String> way = new ArrayList<>();
    private final List<List<String>> rings = new ArrayList<>();

    private RuleRings(Collection<Rule> rules) {
        for (Rule rule : rules) {
            Set<String> to = new TreeSet<>();
            if (rule.interval().everyNth() != null) {
                to.add(rule.interval().everyNth().ruleId());
            }
            for (String after : rule.interval().after()) {
                if (after.startsWith("tag:")) {
                    rules.stream()
                            .filter(r -> r.tags().contains(after.substring(4)))
                            .forEach(r -> to.add(r.id()));
                } else if (!after.startsWith("event:")) {
                    to.add(after);
                }
            }
            leads.put(rule.id(), to);
        }
    }

    static List<ProgrammeFault> faults(List<Programme> programmes, Collection<Rule> rules) {
        RuleRings walk = new RuleRings(rules);
        rules.forEach(r -> walk.from(r.id()));
        return walk.rings.stream()
                .map(ring -> new ProgrammeFault(
                        home(programmes, ring.get(0)).at("interval"),
                        String.join(" > ", ring),
                        "these rules set each other off for ever: take one every-nth or after out",
                        null))
                .toList();
    }

    private void from(String id) {
        int before = way.indexOf(id);
        if (before >= 0) {
            List<String> ring = new ArrayList<>(way.subList(before, way.size()));
            ring.add(id);
            rings.add(ring);
            return;
        }
        if (finished.contains(id)) {
            return;
        }
        way.add(id);
        leads.getOrDefault(id, Set.of()).forEach(this::from);
        way.remove(way.size() - 1);
        finished.add(id);
    }

    /** Where the rule that holds is written: in the last programme that has it. */
    private static Spot home(List<Programme> programmes, String ruleId) {
        Spot home = Spot.rule("", 0, ruleId);
        for (Programme p : programmes) {
            for (int i = 0; i < p.rules().size(); i++) {
                if (p.rules().get(i).id().equals(ruleId)) {
                    home = Spot.rule(p.id(), i, ruleId);
                }
            }
        }
        return home;
    }
}
