package sternwright.protection.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.judgement.MetalJudgement;
import sternwright.protection.judgement.PotentialJudge;
import sternwright.protection.judgement.Protection;
import sternwright.protection.metal.Metal;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.solver.BodyState;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;

/** Solves a boat with each of its single faults and ranks them by harm. */
public final class FaultStudy {
    private static final double OVERPROTECTION_MM_PER_V = 10;
    private static final double LIFE_HALVED_MM = 0.1;
    private static final double WORTH_SAYING_MM = 0.05;
    private static final double GONE_SOON_MM = 10;

    private final BoatCircuit boat;
    private final CircuitState sound;

    private FaultStudy(BoatCircuit boat) {
        this.boat = boat;
        sound = CircuitSolver.solve(boat.circuit());
    }

    /** Every single fault of a boat, worst first. */
    public static List<FaultEffect> of(BoatCircuit boat) {
        FaultStudy study = new FaultStudy(boat);
        return FaultList.of(boat).stream()
                .map(study::effect)
                .sorted(Comparator.comparingDouble(FaultEffect::harm).reversed())
                .toList();
    }

    private FaultEffect effect(Fault fault) {
        Circuit circuit = fault.applyTo(boat.circuit());
        CircuitState faulty = new CircuitSolver(circuit).solve(sound);
        List<FaultEffect.Part> parts = new ArrayList<>();
        for (BoatBody b : boat.bodies()) {
            if (b.onBoard() && b.areaM2() > 0) {
                boolean gone =
                        fault.kind() == FaultKind.ANODE_SPENT && fault.where().equals(b.id());
                parts.add(part(b, circuit.body(b.id()), faulty.body(b.id()), gone));
            }
        }
        double harm = parts.stream().mapToDouble(this::harm).sum();
        return new FaultEffect(fault, parts, harm, sentence(fault, parts));
    }

    private FaultEffect.Part part(BoatBody body, Body now, BodyState faulty, boolean gone) {
        BodyState before = sound.body(body.id());
        MetalJudgement judgement = PotentialJudge.judge(
                body.metal(), faulty.interfaceV(), boat.water().fresh());
        if (body.anode()) {
            double ratio = before.currentA() > 0 && faulty.currentA() > 0 ? before.currentA() / faulty.currentA() : 1;
            return new FaultEffect.Part(
                    body, before.interfaceV(), faulty.interfaceV(), 0, 0, gone ? 0 : ratio, judgement);
        }
        Body then = boat.circuit().body(body.id());
        double mm = mm(body, faulty.anodicCurrentA(), now);
        double mmBefore = mm(body, before.anodicCurrentA(), then);
        return new FaultEffect.Part(body, before.interfaceV(), faulty.interfaceV(), mm, mm - mmBefore, 1, judgement);
    }

    /** Penetration, mm a year, on the bare area. 1 A/m2 is 1.16 mm/a of iron, 1.09 of aluminium, 2.32 of copper (Faraday's law). */
    private static double mm(BoatBody body, double anodicA, Body now) {
        double each = body.metal().family() == Metal.Family.ALUMINIUM
                ? 1.09
                : body.metal().family() == Metal.Family.COPPER ? 2.32 : 1.16;
        return now.bareAreaM2() > 0 ? each * anodicA / now.bareAreaM2() : 0;
    }

    private double harm(FaultEffect.Part part) {
        double harm = Math.max(0, part.moreMmPerYear());
        Double notBelow = part.judgement().notBelowV();
        if (part.judgement().state() == Protection.OVER && notBelow != null) {
            harm += OVERPROTECTION_MM_PER_V * (notBelow - part.faultyV());
        }
        if (part.body().anode() && part.lifeRatio() < 1 && part.lifeRatio() > 0) {
            harm += LIFE_HALVED_MM * Math.log(1 / part.lifeRatio()) / Math.log(2);
        }
        return harm;
    }

    private String sentence(Fault fault, List<FaultEffect.Part> parts) {
        FaultEffect.Part worst = parts.stream()
                .filter(p -> !p.body().anode())
                .max(Comparator.comparingDouble(this::harm))
                .orElse(parts.get(0));
        FaultEffect.Part anode = parts.stream()
                .filter(p -> p.body().anode() && p.lifeRatio() > 0)
                .min(Comparator.comparingDouble(FaultEffect.Part::lifeRatio))
                .orElse(worst);
        List<String> says = new ArrayList<>();
        if (worst.judgement().state() == Protection.OVER) {
            says.add(String.format(
                    Locale.ROOT,
                    "%s goes to %.0f mV and is overprotected",
                    "the " + worst.body().name(),
                    worst.faultyV() * 1000));
        } else if (worst.moreMmPerYear() > WORTH_SAYING_MM) {
            says.add(wastes(worst));
        }
        if (anode.body().anode() && anode.lifeRatio() < 0.8) {
            says.add(String.format(
                    Locale.ROOT,
                    "%s lasts %.0f %% of its time",
                    "the " + anode.body().name(),
                    Math.max(1, 100 * anode.lifeRatio())));
        }
        return says.isEmpty() ? "little changes" : String.join("; ", says);
    }

    private static String wastes(FaultEffect.Part part) {
        String how = part.wastageMmPerYear() > GONE_SOON_MM
                ? String.format(Locale.ROOT, "more than %.0f mm a year: it is eaten through in weeks", GONE_SOON_MM)
                : String.format(Locale.ROOT, "about %.1f mm a year", part.wastageMmPerYear());
        return String.format(
                Locale.ROOT,
                "the %s moves from %.0f to %.0f mV and loses %s%s",
                part.body().name(),
                part.soundV() * 1000,
                part.faultyV() * 1000,
                how,
                part.body().coatedShare() > 0 ? " where its paint is off" : "");
    }
}
