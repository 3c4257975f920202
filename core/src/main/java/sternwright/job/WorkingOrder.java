package sternwright.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sternwright.service.Rule;
import sternwright.visit.planned.PlannedWork;

/**
 * Puts a visit's works into groups by service point, in the order given, except that a work which follows on another (mounts
 * renewed, then aligned) comes in a later round than the work it follows.
 */
final class WorkingOrder {
    /** Works done with one set-up. */
    record Group(int round, String installationId, String point, List<PlannedWork> works) {}

    private record Key(int round, String installationId, String point) {}

    private WorkingOrder() {}

    static List<Group> of(List<PlannedWork> works) {
        int[] rounds = rounds(works);
        Map<Key, List<PlannedWork>> groups = new LinkedHashMap<>();
        int last = 0;
        for (int r : rounds) {
            last = Math.max(last, r);
        }
        for (int round = 0; round <= last; round++) {
            for (int i = 0; i < works.size(); i++) {
                if (rounds[i] == round) {
                    PlannedWork w = works.get(i);
                    Key key = new Key(round, w.part().installationId(), w.servicePoint());
                    groups.computeIfAbsent(key, k -> new ArrayList<>()).add(w);
                }
            }
        }
        return groups.entrySet().stream()
                .map(e -> new Group(
                        e.getKey().round(),
                        e.getKey().installationId(),
                        e.getKey().point(),
                        e.getValue()))
                .toList();
    }

    /** A work's round is one past the latest round of what it follows; a ring of follow-ons ends after as many passes as works. */
    private static int[] rounds(List<PlannedWork> works) {
        int[] rounds = new int[works.size()];
        boolean moved = true;
        for (int pass = 0; moved && pass < works.size(); pass++) {
            moved = false;
            for (int i = 0; i < rounds.length; i++) {
                for (int j = 0; j < rounds.length; j++) {
                    if (i != j && follows(works.get(i), works.get(j)) && rounds[i] <= rounds[j]) {
                        rounds[i] = rounds[j] + 1;
                        moved = true;
                    }
                }
            }
        }
        return rounds;
    }

    private static boolean follows(PlannedWork later, PlannedWork earlier) {
        if (!later.part().installationId().equals(earlier.part().installationId())) {
            return false;
        }
        Rule first = earlier.inForce().rule();
        return later.inForce().rule().interval().after().stream()
                .anyMatch(a -> a.startsWith("tag:") ? first.tags().contains(a.substring(4)) : a.equals(first.id()));
    }
}
