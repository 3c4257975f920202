package sternwright.protection.register;

import java.util.List;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.protection.register.BoatJoint.Kind;

/** Joins what sits on a metal hull to it. */
final class Hull {
    private static final List<String> ON_THE_HULL =
            List.of("engine", "bracket", "rudder", "hull-anode", "keel-cooler", "seacock", "jet-unit", "transom-unit");

    private Hull() {}

    static void join(JointsOfBoat joints, Boat boat) {
        String hull = joints.hull(boat);
        if (hull == null) {
            return;
        }
        for (Installation i : boat.installations()) {
            for (String kind : ON_THE_HULL) {
                for (String part : joints.all(i, kind)) {
                    double usual = kind.equals("hull-anode") ? 0.002 : kind.equals("rudder") ? 0.05 : 0.01;
                    Kind joint = kind.equals("hull-anode") ? Kind.ANODE_JOINT : Kind.BONDING;
                    joints.addLink(hull, part, joint, joints.jointOhm(hull, part, joint, usual));
                }
            }
        }
    }
}
