package sternwright.protection.fault;

import java.util.List;
import java.util.function.UnaryOperator;
import sternwright.protection.circuit.Circuit;

/**
 * One thing wrong at one place.
 *
 * @param id short name, unique for the boat
 * @param kind what kind of fault
 * @param where the body or joint
 * @param words as one says it
 * @param prior probability before any reading
 * @param variants how bad it may be
 */
public record Fault(String id, FaultKind kind, String where, String words, double prior, List<Variant> variants) {
    public Fault {
        variants = List.copyOf(variants);
    }

    /**
     * One severity.
     *
     * @param weight share of such faults that are like this; the shares of a fault add up to one
     * @param change what it does to the circuit
     */
    public record Variant(double weight, UnaryOperator<Circuit> change) {}

    /** The circuit with this fault in its middle severity. */
    public Circuit applyTo(Circuit circuit) {
        return variants.get(variants.size() / 2).change().apply(circuit);
    }

    /** The same fault with the yard's own figure of how often it is met. */
    public Fault withPrior(double probability) {
        return new Fault(id, kind, where, words, probability, variants);
    }
}
