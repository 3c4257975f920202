package sternwright.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sternwright.finding.Caution;
import sternwright.visit.planned.PlannedWork;

/**
 * Gives each caution of a card its key and its one place: at the head if it belongs to the visit or to more than one service
 * point, otherwise at the head of its point. Works name the keys that apply to them.
 */
final class CautionSheet {
    private final Map<String, CardCaution> byId = new LinkedHashMap<>();
    private final Map<String, Set<Integer>> pointsOf = new HashMap<>();
    private final Set<String> wholeVisit = new LinkedHashSet<>();
    private final Set<String> missing = new LinkedHashSet<>();

    /** Visit cautions first, then those for several points, then point by point: so the keys run in reading order. */
    CautionSheet(List<Caution> visit, Collection<Caution> known, List<WorkingOrder.Group> groups) {
        Map<String, Caution> texts = new HashMap<>();
        visit.forEach(c -> texts.put(c.id(), c));
        known.forEach(c -> texts.put(c.id(), c));
        visit.forEach(c -> wholeVisit.add(c.id()));
        for (int g = 0; g < groups.size(); g++) {
            for (PlannedWork work : groups.get(g).works()) {
                for (String id : work.inForce().rule().cautions()) {
                    pointsOf.computeIfAbsent(id, k -> new LinkedHashSet<>()).add(g);
                }
            }
        }
        Set<String> order = new LinkedHashSet<>(wholeVisit);
        for (WorkingOrder.Group group : groups) {
            group.works()
                    .forEach(w -> w.inForce().rule().cautions().stream()
                            .filter(this::atHead)
                            .forEach(order::add));
        }
        groups.forEach(
                g -> g.works().forEach(w -> order.addAll(w.inForce().rule().cautions())));
        for (String id : order) {
            Caution caution = texts.get(id);
            if (caution == null) {
                missing.add(id);
            } else {
                byId.put(id, new CardCaution(key(byId.size()), title(id), caution));
            }
        }
    }

    /** The cautions printed at the head of the card. */
    List<CardCaution> head() {
        return byId.values().stream().filter(c -> atHead(c.caution().id())).toList();
    }

    /** The cautions printed at the head of one group alone. */
    List<CardCaution> of(int group) {
        return byId.values().stream()
                .filter(c -> !atHead(c.caution().id()))
                .filter(c -> pointsOf.getOrDefault(c.caution().id(), Set.of()).contains(group))
                .toList();
    }

    /** The keys that apply to a work, in the order of the card; who decides holds for the whole card and is not repeated. */
    List<String> keys(PlannedWork work) {
        List<String> ids = work.inForce().rule().cautions();
        return byId.values().stream()
                .filter(c -> ids.contains(c.caution().id()))
                .filter(c -> !c.caution().id().equals(VisitCautions.WHO_DECIDES.id()))
                .map(CardCaution::key)
                .toList();
    }

    /** Ids that a rule names but for which there is no text. */
    List<String> missing() {
        return new ArrayList<>(missing);
    }

    private boolean atHead(String id) {
        return wholeVisit.contains(id) || pointsOf.getOrDefault(id, Set.of()).size() > 1;
    }

    private static String key(int index) {
        return index < 26 ? String.valueOf((char) ('A' + index)) : "A" + (char) ('A' + index - 26);
    }

    private static String title(String id) {
        String words = id.replace('-', ' ');
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
