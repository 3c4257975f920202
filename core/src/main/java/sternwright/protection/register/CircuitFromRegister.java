package sternwright.protection.register;

import java.util.ArrayList;
import java.util.List;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.boat.ShorePower;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.metal.MetalCatalogue;

/** Builds the protection circuit of a boat at its berth. */
public final class CircuitFromRegister {
    private final PartCatalogue kinds;
    private final MetalCatalogue metals;

    /** Builds with these catalogues. */
    public CircuitFromRegister(PartCatalogue kinds, MetalCatalogue metals) {
        this.kinds = kinds;
        this.metals = metals;
    }

    /**
     * The circuit of a boat.
     *
     * @param boat the boat
     * @param berth where it lies
     * @param condition month, berth or under way, shore lead, paint, overrides
     * @throws UnusableRegisterException with every reason, where the berth's water, a metal or an override is not known, or nothing of the boat is wet metal
     */
    public BoatCircuit build(Boat boat, Berth berth, CircuitCondition condition) {
        AssumedFigures figures = new AssumedFigures(condition.overrides());
        BerthWater water = BerthWater.of(berth, condition.month(), figures);
        BodiesOfBoat bodies = new BodiesOfBoat(kinds, metals, figures, water, condition, new PartNames(boat));
        bodies.addAll(boat, berth.shorePower() != ShorePower.NONE);
        if (bodies.meanings.stream().noneMatch(b -> b.onBoard() && b.areaM2() > 0)) {
            figures.refuse(new RegisterProblem(
                    RegisterProblem.About.BOAT,
                    boat.id(),
                    "she has no metal in the water",
                    "a leg, shaft, propeller or metal hull",
                    "Give it in the boat's file."));
        }
        JointsOfBoat joints = new JointsOfBoat(figures, bodies.meanings, condition.running());
        joints.addAll(boat, berth, condition.shoreLead());
        bodies.rawWater.forEach(joints::insideOfDrive);
        figures.requireSound(true);
        List<Link> links = joints.joints.stream().map(BoatJoint::link).toList();
        List<MutualResistance> shared =
                new ArrayList<>(SharedWater.of(water.resistivityOhmM(), joints.joints, bodies.bodies));
        shared.addAll(RawWaterPath.shared(bodies.rawWater, bodies.bodies));
        Circuit circuit = new Circuit(bodies.bodies, links, List.of(), shared);
        return new BoatCircuit(
                DryBodies.without(circuit),
                water,
                condition,
                DryBodies.kept(circuit, bodies.meanings),
                joints.joints,
                figures.list(),
                berth.hotMarina());
    }
}
