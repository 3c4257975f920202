package sternwright.protection.metal;

import java.util.List;
import sternwright.protection.circuit.Reaction;

/** Shapes of polarisation curves by family; the catalogue moves each to its metal's free potential. */
final class Curves {
    /** Hydrogen lines lie where they are whatever the metal's free potential. */
    private static final double HYDROGEN_BELOW_V = -0.85;

    static final List<Reaction> IRON = List.of(
            Reaction.anodic(-0.65, 0.08, 0.06),
            Reaction.cathodic(-0.65, 0.4, 0.12, 0.12),
            Reaction.cathodic(-0.9, 0.001, 0.12, Reaction.NO_LIMIT));
    static final List<Reaction> IRON_FRESH = List.of(
            Reaction.anodic(-0.50, 0.03, 0.08),
            Reaction.cathodic(-0.50, 0.1, 0.12, 0.06),
            Reaction.cathodic(-0.9, 0.001, 0.12, Reaction.NO_LIMIT));
    static final List<Reaction> COPPER = List.of(
            Reaction.anodic(-0.25, 0.02, 0.06),
            Reaction.cathodic(-0.25, 0.02, 0.12, 0.4),
            Reaction.cathodic(-0.9, 0.003, 0.12, Reaction.NO_LIMIT));
    static final List<Reaction> COPPER_FRESH = List.of(
            Reaction.anodic(-0.10, 0.005, 0.06),
            Reaction.cathodic(-0.10, 0.005, 0.12, 0.1),
            Reaction.cathodic(-0.9, 0.001, 0.12, Reaction.NO_LIMIT));
    static final List<Reaction> ALUMINIUM = List.of(
            Reaction.anodic(-0.78, 0.01, 0.03),
            new Reaction(Reaction.Kind.ANODIC, -0.78, 0.001, 10, 0.002),
            Reaction.cathodic(-0.78, 0.01, 0.25, 0.05),
            Reaction.cathodic(-1.2, 0.1, 0.15, Reaction.NO_LIMIT));
    static final List<Reaction> ALUMINIUM_FRESH = List.of(
            Reaction.anodic(-0.60, 0.005, 0.06),
            new Reaction(Reaction.Kind.ANODIC, -0.60, 0.0005, 10, 0.001),
            Reaction.cathodic(-0.60, 0.01, 0.25, 0.03),
            Reaction.cathodic(-1.2, 0.05, 0.15, Reaction.NO_LIMIT));
    static final List<Reaction> PASSIVE = List.of(
            new Reaction(Reaction.Kind.ANODIC, -0.1, 0.0001, 0.25, 0.01),
            Reaction.cathodic(-0.1, 0.0001, 0.12, 0.2),
            Reaction.cathodic(-0.9, 0.0005, 0.12, Reaction.NO_LIMIT),
            // Breakdown of the passive film: 0.85 V above the free potential pitting takes any current.
            Reaction.anodic(0.75, 0.01, 0.06));

    private Curves() {}

    /** The curve moved along the potential axis, hydrogen left where it is. */
    static List<Reaction> moved(List<Reaction> curve, double byV) {
        return curve.stream()
                .map(r -> r.e0V() < HYDROGEN_BELOW_V
                        ? r
                        : new Reaction(r.kind(), r.e0V() + byV, r.i0APerM2(), r.slopeVPerDecade(), r.limitAPerM2()))
                .toList();
    }
}
