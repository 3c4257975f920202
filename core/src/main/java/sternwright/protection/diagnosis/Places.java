package sternwright.protection.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sternwright.finding.NearestName;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.BoatJoint;

/** Where a quantity can be measured on a boat. */
public final class Places {
    private Places() {}

    /**
     * Why a reading cannot have been taken where it says.
     *
     * @param what what is wrong, a phrase
     * @param expected what was expected
     * @param advice the place that was most likely meant, else those there are; a sentence
     */
    public record Problem(String what, String expected, String advice) {
        @Override
        public String toString() {
            return what + "; expected " + expected + ". " + advice;
        }
    }

    /** The short names of the places where a quantity can be measured, in the order of the register. */
    public static List<String> of(BoatCircuit boat, Quantity quantity) {
        return switch (quantity) {
            case POTENTIAL_CLOSE, POTENTIAL_FAR ->
                boat.bodies().stream()
                        .filter(b -> b.reachable() || b.kind().equals("engine"))
                        .map(BoatBody::id)
                        .toList();
            case WASTAGE_RATIO -> boat.anodes().stream().map(BoatBody::id).toList();
            case JOINT_OHM, JOINT_VOLTAGE ->
                boat.joints().stream()
                        .filter(j -> j.measurable() && j.kind() != BoatJoint.Kind.SHORE_EARTH)
                        .map(j -> j.link().id())
                        .toList();
            case SHORE_CURRENT ->
                boat.joints().stream()
                        .filter(j -> j.kind() == BoatJoint.Kind.SHORE_EARTH)
                        .map(j -> j.link().id())
                        .toList();
        };
    }

    /** What is wrong with the place of a reading; empty if it can be measured there. */
    public static Optional<Problem> problem(BoatCircuit boat, Observation reading) {
        Quantity quantity = reading.measurement().quantity();
        String where = reading.measurement().where();
        List<String> known = of(boat, quantity);
        if (known.contains(where)) {
            return Optional.empty();
        }
        String expected = switch (quantity) {
            case POTENTIAL_CLOSE, POTENTIAL_FAR -> "a part in the water or an engine";
            case WASTAGE_RATIO -> "an anode";
            case JOINT_OHM, JOINT_VOLTAGE -> "a joint, its two parts with ~ between";
            case SHORE_CURRENT -> "the shore lead";
        };
        String what = elsewhere(boat, where)
                ? "\"" + where + "\" is a place aboard, but there is no " + quantity.words() + " it to read"
                : "this boat's circuit has no \"" + where + "\"";
        String advice = NearestName.of(where, known)
                .map(n -> "Perhaps \"" + n + "\" is meant.")
                .orElseGet(() -> known.isEmpty() ? "There is none." : "There are " + String.join(", ", known) + ".");
        return Optional.of(new Problem(what, expected, advice));
    }

    private static boolean elsewhere(BoatCircuit boat, String where) {
        List<String> all = new ArrayList<>();
        boat.bodies().forEach(b -> all.add(b.id()));
        boat.joints().forEach(j -> all.add(j.link().id()));
        return all.contains(where);
    }
}
