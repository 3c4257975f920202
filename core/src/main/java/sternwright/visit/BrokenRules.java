package sternwright.visit;

import java.util.Comparator;
import java.util.List;
import sternwright.service.Occasion;
import sternwright.service.RuleInForce;
import sternwright.visit.HandPlan.Broken;
import sternwright.visit.check.VisitFault;

/** Says what a changed plan breaks, and which of it must not be. */
final class BrokenRules {
    private final BoatProblem boat;

    BrokenRules(BoatProblem boat) {
        this.boat = boat;
    }

    List<Broken> of(List<VisitFault> faults) {
        return faults.stream()
                .map(this::broken)
                .sorted(Comparator.comparing(b -> !b.refused()))
                .toList();
    }

    private Broken broken(VisitFault fault) {
        String words = sentence(fault.words());
        if (fault.work() < 0) {
            return new Broken(
                    null, "", words, fault.kind() == VisitFault.Kind.IMPOSSIBLE, "Choose another month or place.");
        }
        BoatWork work = boat.works().get(fault.work());
        boolean safety = work.phases().stream().anyMatch(r -> r.rule().safety());
        boolean missed = switch (fault.kind()) {
            case LATE, SPAN, FIRST_VISIT, FOLLOW_ON -> true;
            default -> false;
        };
        boolean refused =
                fault.kind() == VisitFault.Kind.IMPOSSIBLE || missed && (safety || frost(work) && notInTime(fault));
        return new Broken(work.ref(), work.phases().get(0).rule().id(), words, refused, advice(fault, safety, refused));
    }

    private static boolean notInTime(VisitFault fault) {
        return fault.kind() == VisitFault.Kind.SPAN;
    }

    private static boolean frost(BoatWork work) {
        return work.phases().stream()
                .map(RuleInForce::rule)
                .anyMatch(r -> r.interval().occasion() == Occasion.EVERY_LAY_UP_BEFORE_FROST);
    }

    private static String advice(VisitFault fault, boolean safety, boolean refused) {
        if (fault.kind() == VisitFault.Kind.IMPOSSIBLE) {
            return "Choose another month or place.";
        }
        if (refused && safety) {
            return "It is a safety item: keep it in time, or have the owner's signed refusal on record first.";
        }
        if (refused) {
            return "Frost bursts what is full of water: keep it before the first frost.";
        }
        return switch (fault.kind()) {
            case LATE -> "It costs risk, counted above; tell the owner.";
            case EARLY -> "Life that is paid for is thrown away, counted above.";
            case SEASON -> "It is usually done in the other half of the year.";
            case FOLLOW_ON -> "Move the work that follows as well.";
            default -> "Look whether it is meant so.";
        };
    }

    private static String sentence(String words) {
        String first = words.substring(0, 1).toUpperCase(java.util.Locale.ROOT);
        return first + words.substring(1) + ".";
    }
}
