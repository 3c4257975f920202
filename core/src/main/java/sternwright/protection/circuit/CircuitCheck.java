package sternwright.protection.circuit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Looks for everything that makes a circuit unsolvable: numbers that are none, names that are unknown or double, and metal that
 * cannot balance its current.
 */
public final class CircuitCheck {
    private final Circuit circuit;
    private final List<CircuitProblem> problems = new ArrayList<>();
    private final Set<String> bodies = new HashSet<>();

    private CircuitCheck(Circuit circuit) {
        this.circuit = circuit;
    }

    /** Every problem of a circuit; empty when it has exactly one answer. */
    public static List<CircuitProblem> problems(Circuit circuit) {
        CircuitCheck check = new CircuitCheck(circuit);
        check.bodies();
        check.links();
        check.sources();
        check.mutuals();
        if (check.problems.isEmpty()) {
            check.problems.addAll(CurrentBalance.problems(circuit));
        }
        return List.copyOf(check.problems);
    }

    /** Throws with every problem when there is one. */
    public static void require(Circuit circuit) {
        List<CircuitProblem> found = problems(circuit);
        if (!found.isEmpty()) {
            throw new IllPosedCircuitException(found);
        }
    }

    private void bodies() {
        if (circuit.bodies().isEmpty()) {
            add("circuit", "it has no body of metal", "Give at least one body in water");
        }
        for (Body b : circuit.bodies()) {
            String where = "body " + b.id();
            if (!bodies.add(b.id())) {
                add(where, "the name is used twice", "Give every body its own name");
            }
            atLeastZero(where, "area", b.areaM2(), "m2");
            atLeastZero(where, "resistance to remote water", b.waterOhm(), "ohm");
            if (!(b.bareFraction() >= 0 && b.bareFraction() <= 1)) {
                add(
                        where,
                        "bare share is " + b.bareFraction(),
                        "It is a fraction from 0 (all painted) to 1 (all bare)");
            }
            b.reactions().forEach(r -> reaction(where, r));
        }
    }

    private void reaction(String where, Reaction r) {
        finite(where, "reference potential of a reaction", r.e0V(), "V");
        if (Math.abs(r.e0V()) > 20) {
            add(
                    where,
                    "reference potential of a reaction is " + r.e0V() + " V",
                    "Metals in water lie between -3 and +3 V; were these millivolts?");
        }
        aboveZero(where, "exchange current density of a reaction", r.i0APerM2(), "A/m2");
        aboveZero(where, "Tafel slope of a reaction", r.slopeVPerDecade(), "V per decade");
        if (r.limitAPerM2() != Reaction.NO_LIMIT) {
            aboveZero(where, "diffusion limit of a reaction", r.limitAPerM2(), "A/m2");
        }
    }

    private void links() {
        Set<String> names = new HashSet<>();
        for (Link l : circuit.links()) {
            String where = "link " + l.id();
            if (!names.add(l.id())) {
                add(where, "the name is used twice", "Give every link its own name");
            }
            ends(where, l.a(), l.b());
            if (l instanceof Link.Resistor r) {
                atLeastZero(where, "resistance", r.ohm(), "ohm");
            } else if (l instanceof Link.Isolator i) {
                atLeastZero(where, "series resistance", i.seriesOhm(), "ohm");
                aboveZero(where, "saturation current", i.saturationA(), "A");
                aboveZero(where, "emission factor", i.emissionFactor(), "");
                aboveZero(where, "number of diodes in series", i.diodesInSeries(), "");
                aboveZero(where, "thermal voltage", i.thermalVoltageV(), "V");
            }
        }
    }

    private void sources() {
        for (CurrentSource s : circuit.sources()) {
            ends("source " + s.id(), s.from(), s.to());
            finite("source " + s.id(), "current", s.currentA(), "A");
        }
    }

    private void mutuals() {
        Set<Set<String>> pairs = new HashSet<>();
        for (MutualResistance m : circuit.mutualResistances()) {
            String where = "mutual resistance " + m.a() + " to " + m.b();
            ends(where, m.a(), m.b());
            atLeastZero(where, "resistance", m.ohm(), "ohm");
            if (!m.a().equals(m.b()) && !pairs.add(Set.of(m.a(), m.b()))) {
                add(where, "the pair is listed twice", "Give each pair once; it counts both ways");
            }
        }
    }

    private void ends(String where, String a, String b) {
        for (String end : List.of(a, b)) {
            if (!bodies.contains(end)) {
                add(where, "there is no body \"" + end + "\"", "Name one of the bodies " + firstNames());
            }
        }
        if (a.equals(b)) {
            add(where, "both ends are on " + a, "Name two different bodies");
        }
    }

    private String firstNames() {
        List<String> names = circuit.bodies().stream().map(Body::id).limit(12).toList();
        return String.join(", ", names) + (circuit.bodies().size() > names.size() ? ", ..." : "");
    }

    private void finite(String where, String what, double value, String unit) {
        if (!Double.isFinite(value)) {
            add(where, what + " is " + value, "Give a number" + (unit.isEmpty() ? "" : " in " + unit));
        }
    }

    private void atLeastZero(String where, String what, double value, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            add(where, what + " is " + value, "Give a number of zero or more in " + unit);
        }
    }

    private void aboveZero(String where, String what, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            add(where, what + " is " + value, "Give a number above zero" + (unit.isEmpty() ? "" : " in " + unit));
        }
    }

    private void add(String where, String what, String advice) {
        problems.add(new CircuitProblem(where, what, advice));
    }
}
