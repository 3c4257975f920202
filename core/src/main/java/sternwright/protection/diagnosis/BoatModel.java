package sternwright.protection.diagnosis;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.Link;
import sternwright.protection.fault.Fault;
import sternwright.protection.fault.FaultKind;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.BoatJoint;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;

/** Foretells readings of a boat with given faults and given values of what is not known. */
final class BoatModel {
    /** Share of an anode's area that stands for an anode lifted off. */
    private static final double LIFTED = 1e-6;

    /** What a spent anode's weight says: it lost all it had, more than was expected of it. */
    private static final double SPENT_RATIO = 2;

    private final BoatCircuit boat;
    private final Set<String> anodes = new HashSet<>();
    private final Map<Setting, CircuitState> sound = new ConcurrentHashMap<>();
    private final Circuit[] shifted = new Circuit[Unknowns.IN_CIRCUIT + 1];

    BoatModel(BoatCircuit boat) {
        this.boat = boat;
        boat.anodes().stream().map(BoatBody::id).forEach(anodes::add);
        shifted[0] = boat.circuit();
        for (int u = 0; u < Unknowns.IN_CIRCUIT; u++) {
            double[] values = new double[Unknowns.ALL];
            values[u] = step(u);
            shifted[u + 1] = Unknowns.at(boat, values);
        }
    }

    private static double step(int unknown) {
        return Unknowns.SPREAD[unknown] / 2;
    }

    BoatCircuit boat() {
        return boat;
    }

    /** Mean of the readings, scaled, with the unknowns at their medians. */
    double[] mean(Case c, List<Measurement> measurements) {
        return values(c, shifted[0], measurements);
    }

    /** Change of the scaled readings with each unknown, one row for each. */
    double[][] slopes(Case c, List<Measurement> measurements, double[] mean) {
        double[][] slopes = new double[Unknowns.ALL][measurements.size()];
        for (int u = 0; u < Unknowns.IN_CIRCUIT; u++) {
            double[] moved = values(c, shifted[u + 1], measurements);
            for (int m = 0; m < mean.length; m++) {
                slopes[u][m] = (moved[m] - mean[m]) / step(u);
            }
        }
        for (int m = 0; m < mean.length; m++) {
            Quantity q = measurements.get(m).quantity();
            slopes[Unknowns.IN_CIRCUIT][m] = q == Quantity.POTENTIAL_CLOSE || q == Quantity.POTENTIAL_FAR ? 1 : 0;
        }
        return slopes;
    }

    /** Scaled readings with the unknowns at any values. */
    double[] at(Case c, List<Measurement> measurements, double[] unknowns) {
        double[] values = values(c, Unknowns.at(boat, unknowns), measurements);
        for (int m = 0; m < values.length; m++) {
            Quantity q = measurements.get(m).quantity();
            values[m] +=
                    q == Quantity.POTENTIAL_CLOSE || q == Quantity.POTENTIAL_FAR ? unknowns[Unknowns.IN_CIRCUIT] : 0;
        }
        return values;
    }

    private double[] values(Case c, Circuit base, List<Measurement> measurements) {
        double[] out = new double[measurements.size()];
        Circuit faulty = c.applyTo(base);
        Map<Setting, CircuitState> solved = new HashMap<>();
        for (int m = 0; m < out.length; m++) {
            Measurement x = measurements.get(m);
            if (x.quantity() == Quantity.JOINT_OHM) {
                out[m] = x.quantity().scaled(ohm(faulty, x.where()));
                continue;
            }
            Setting setting = x.quantity() == Quantity.WASTAGE_RATIO ? resting() : x.setting();
            CircuitState state = solved.computeIfAbsent(setting, s -> solve(faulty, s));
            out[m] = x.quantity().scaled(value(c, x, state));
        }
        return out;
    }

    /** How the boat lies from day to day: plugged in where the circuit has it so. */
    Setting resting() {
        boolean plugged = boat.joints().stream()
                .anyMatch(
                        j -> j.kind() == BoatJoint.Kind.SHORE_EARTH && j.link().conducts());
        return new Setting(true, plugged);
    }

    private double value(Case c, Measurement x, CircuitState state) {
        return switch (x.quantity()) {
            case POTENTIAL_CLOSE -> state.body(x.where()).interfaceV();
            case POTENTIAL_FAR -> state.body(x.where()).metalV();
            case JOINT_VOLTAGE -> {
                Link l = boat.joint(x.where()).link();
                yield Math.abs(state.body(l.a()).metalV() - state.body(l.b()).metalV());
            }
            case WASTAGE_RATIO -> wastage(c, x.where(), state);
            case SHORE_CURRENT -> state.linkCurrentA(x.where());
            case JOINT_OHM -> throw new IllegalStateException("not from a state");
        };
    }

    private double wastage(Case c, String anode, CircuitState state) {
        for (Fault f : c.hypothesis().faults()) {
            if (f.kind() == FaultKind.ANODE_SPENT && f.where().equals(anode)) {
                return SPENT_RATIO;
            }
        }
        double expected = sound(resting()).body(anode).currentA();
        return Math.max(0, state.body(anode).currentA()) / Math.max(1e-6, expected);
    }

    private static double ohm(Circuit circuit, String link) {
        Link l = circuit.link(link);
        return l instanceof Link.Resistor r ? r.ohm() : Double.MAX_VALUE;
    }

    CircuitState sound(Setting setting) {
        return sound.computeIfAbsent(setting, s -> new CircuitSolver(in(boat.circuit(), s)).solve());
    }

    private CircuitState solve(Circuit faulty, Setting setting) {
        return new CircuitSolver(in(faulty, setting)).solve(sound(setting));
    }

    private Circuit in(Circuit circuit, Setting setting) {
        Circuit c = circuit;
        if (!setting.anodesOn()) {
            c = c.withBodies(b -> anodes.contains(b.id()) ? b.withAreaM2(b.areaM2() * LIFTED) : b);
        }
        if (!setting.shoreLead()) {
            for (BoatJoint j : boat.joints()) {
                if (j.kind() == BoatJoint.Kind.SHORE_EARTH && j.link().conducts()) {
                    Link l = j.link();
                    c = c.withLink(new Link.OpenJoint(l.id(), l.a(), l.b()));
                    c = new Circuit(
                            c.bodies(),
                            c.links(),
                            c.sources().stream()
                                    .filter(s -> !s.id().equals("shore-stray"))
                                    .toList(),
                            c.mutualResistances());
                }
            }
        }
        return c;
    }
}
