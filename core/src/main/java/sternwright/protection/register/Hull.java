package sternwright.protection.register;

import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.protection.register.BoatJoint.Kind;

/** Joins what sits on a metal hull to it. */
final class Hull {
    private Hull() {}

    static void join(JointsOfBoat joints, Boat boat) {
        for (Installation i : boat.installations()) {
            String plating = joints.find(i, "hull-plating");
            String hull = plating != null ? plating : BodiesOfBoat.HULL;
            if (!joints.has(hull)) {
                continue;
            }
            for (String kind : new String[] {"engine", "bracket", "rudder", "hull-anode", "keel-cooler", "seacock"}) {
                String part = joints.find(i, kind);
                if (part != null) {
                    double usual = kind.equals("hull-anode") ? 0.002 : kind.equals("rudder") ? 0.05 : 0.01;
                    Kind joint = kind.equals("hull-anode") ? Kind.ANODE_JOINT : Kind.BONDING;
                    joints.addLink(hull, part, joint, joints.jointOhm(hull, part, joint, usual));
                }
            }
        }
    }
}
