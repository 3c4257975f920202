package sternwright.protection.register;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.water.WaterResistance;

/**
 * The water path that an anode shares with the part it sits on. In the sea it moves a potential by a few millivolts and is left out; in
 * fresh and brackish water it counts.
 */
final class SharedWater {
    private static final double COUNTS_ABOVE_OHM_M = 1;
    private static final double DISTANCE_M = 0.45;

    private SharedWater() {}

    static List<MutualResistance> of(double resistivityOhmM, List<BoatJoint> joints, List<Body> bodies) {
        if (resistivityOhmM < COUNTS_ABOVE_OHM_M) {
            return List.of();
        }
        Map<String, Body> byId = new HashMap<>();
        bodies.forEach(b -> byId.put(b.id(), b));
        List<BoatJoint> pairs = joints.stream()
                .filter(j -> j.kind() == BoatJoint.Kind.ANODE_JOINT)
                .toList();
        Map<String, Integer> count = new HashMap<>();
        pairs.forEach(j -> {
            count.merge(j.link().a(), 1, Integer::sum);
            count.merge(j.link().b(), 1, Integer::sum);
        });
        List<MutualResistance> list = new ArrayList<>();
        for (BoatJoint j : pairs) {
            Body a = byId.get(j.link().a());
            Body b = byId.get(j.link().b());
            if (a == null || b == null) {
                continue;
            }
            // Several anodes on one part: kept so small together that the matrix stays one that water can have.
            int shares = Math.max(count.getOrDefault(a.id(), 1), count.getOrDefault(b.id(), 1));
            double most = 0.9 * Math.sqrt(a.waterOhm() * b.waterOhm()) / shares;
            list.add(new MutualResistance(
                    a.id(), b.id(), Math.min(most, WaterResistance.mutual(resistivityOhmM, DISTANCE_M))));
        }
        return list;
    }
}
