package sternwright.app.desk.visits;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sternwright.boat.PartRef;
import sternwright.service.Occasion;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatVisits;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.HandChange;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.VisitAt;

/** Turns a proposed plan into the one that yard and owner have agreed. */
public final class AgreedVisits {
    private AgreedVisits() {}

    private record Key(PartRef part, String ruleId) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            int byPart = part.compareTo(other.part);
            return byPart != 0 ? byPart : ruleId.compareTo(other.ruleId);
        }
    }

    /**
     * The works of a plan as they are written down when it is accepted; what is done at every visit goes without saying.
     *
     * @param plan the plan
     * @param agreedOn the day
     * @param who who agreed
     * @return a line for each work of each visit
     */
    public static List<AgreedWork> of(BoatPlan plan, LocalDate agreedOn, String who) {
        List<AgreedWork> works = new ArrayList<>();
        for (PlannedVisit visit : plan.visits()) {
            for (PlannedWork w : visit.works()) {
                if (w.inForce().rule().interval().occasion() == Occasion.EVERY_VISIT) {
                    continue;
                }
                works.add(new AgreedWork(
                        plan.boatId(),
                        VisitAt.of(visit),
                        w.part(),
                        w.inForce().rule().id(),
                        agreedOn,
                        who));
            }
        }
        return works;
    }

    /**
     * The proposed plan with its works in the visits agreed. Works that fell due since stay where they are proposed; agreed works that
     * are no longer due are passed over, as are visits agreed for months that are over.
     *
     * @param visits the boat's question
     * @param proposed the plan to begin from
     * @param agreed what is agreed for the boat
     * @return the agreed plan, with what it costs and what it breaks
     */
    public static HandPlan apply(BoatVisits visits, BoatPlan proposed, List<AgreedWork> agreed) {
        List<HandChange> changes = moves(proposed, visits, agreed);
        HandPlan moved = visits.byHand(proposed, changes);
        List<HandChange> all = new ArrayList<>(changes);
        moved.plan().visits().stream()
                .filter(v -> moved.plan().lean().visits().stream()
                        .anyMatch(l -> l.works().isEmpty()
                                && visits.problem()
                                        .firstMonth()
                                        .plusMonths(l.month())
                                        .equals(VisitAt.of(v).month())
                                && l.place().name().equals(v.place().name())))
                .map(v -> new HandChange.DropVisit(VisitAt.of(v)))
                .forEach(all::add);
        return all.size() == changes.size() ? moved : visits.byHand(proposed, all);
    }

    private static List<HandChange> moves(BoatPlan proposed, BoatVisits visits, List<AgreedWork> agreed) {
        var first = visits.problem().firstMonth();
        var last = first.plusMonths(visits.problem().horizon() - 1L);
        Map<Key, List<VisitAt>> wanted = new TreeMap<>();
        agreed.stream()
                .filter(a -> a.boatId().equals(proposed.boatId()))
                .filter(a -> !a.at().month().isBefore(first) && !a.at().month().isAfter(last))
                .sorted(Comparator.comparing(AgreedWork::at))
                .forEach(a -> wanted.computeIfAbsent(new Key(a.part(), a.ruleId()), k -> new ArrayList<>())
                        .add(a.at()));
        Map<Key, List<VisitAt>> there = new TreeMap<>();
        for (PlannedVisit v : proposed.visits()) {
            for (PlannedWork w : v.works()) {
                there.computeIfAbsent(new Key(w.part(), w.inForce().rule().id()), k -> new ArrayList<>())
                        .add(VisitAt.of(v));
            }
        }
        List<HandChange> changes = new ArrayList<>();
        wanted.forEach((key, to) -> {
            List<VisitAt> from = there.getOrDefault(key, List.of());
            for (int i = 0; i < Math.min(to.size(), from.size()); i++) {
                if (!from.contains(to.get(i)) && !to.contains(from.get(i))) {
                    changes.add(new HandChange.MoveWork(key.part(), key.ruleId(), from.get(i), to.get(i), true));
                }
            }
        });
        return changes;
    }
}
