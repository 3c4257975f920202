package sternwright.protection.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.fault.Fault;

/**
 * A hypothesis in one severity.
 *
 * @param hypothesis the hypothesis
 * @param weight share of it that is like this
 * @param changes what it does to the circuit, one for each fault
 */
record Case(Hypothesis hypothesis, double weight, List<UnaryOperator<Circuit>> changes) {
    static List<Case> of(Hypothesis hypothesis) {
        List<Case> cases = List.of(new Case(hypothesis, 1, List.of()));
        for (Fault f : hypothesis.faults()) {
            List<Case> more = new ArrayList<>();
            for (Case c : cases) {
                for (Fault.Variant v : f.variants()) {
                    List<UnaryOperator<Circuit>> changes = new ArrayList<>(c.changes);
                    changes.add(v.change());
                    more.add(new Case(hypothesis, c.weight * v.weight(), changes));
                }
            }
            cases = more;
        }
        return cases;
    }

    Circuit applyTo(Circuit circuit) {
        Circuit c = circuit;
        for (UnaryOperator<Circuit> change : changes) {
            c = change.apply(c);
        }
        return c;
    }
}
