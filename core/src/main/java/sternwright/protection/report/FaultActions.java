package sternwright.protection.report;

import sternwright.finding.Severity;
import sternwright.protection.fault.Fault;
import sternwright.protection.fault.FaultKind;
import sternwright.protection.metal.Metal;
import sternwright.protection.register.BoatCircuit;

/** What to do about each kind of fault. Common practice, no source, where none is named. */
final class FaultActions {
    private static final String SEAT =
            "cleaned to bright metal, made tight, and checked:" + " less than 10 mV across it while the anode works";

    private final BoatCircuit boat;
    private final Metal alloy;

    FaultActions(BoatCircuit boat, Metal alloy) {
        this.boat = boat;
        this.alloy = alloy;
    }

    /** What to do, one or more sentences. */
    String act(Fault fault) {
        String place = "the " + boat.words(fault.where());
        return switch (fault.kind()) {
            case ANODE_SPENT -> "Renew " + place + ".";
            case ANODE_PAINTED -> "Have " + place + " scraped to bright metal, or renewed and left bare.";
            case WRONG_ANODE -> "Have " + place + " taken off now and one of " + plain(alloy) + " fitted.";
            case ANODE_LOOSE, ANODE_JOINT_CORRODED -> "Have " + place + " " + SEAT + ".";
            case BOND_OPEN, BOND_CORRODED -> "Have " + place + " mended: wire and terminals " + SEAT + ".";
            case SHAFT_CONTACT_POOR ->
                "Have " + place + " looked at: brush and ring cleaned or renewed, or a shaft brush fitted.";
            case ISOLATION_BRIDGED, ISOLATION_LEAKS ->
                "Have whatever bridges " + place
                        + " found and parted (a cable, a hose clip, a bolt without its sleeve, salt), until an ohmmeter shows it open ashore.";
            case WRONG_BOND ->
                "Have the wire to " + place
                        + " found and its purpose asked before it is taken off: a lightning or shore earth stays.";
            case ISOLATOR_SHORT -> "Have the galvanic isolator tested and renewed.";
            case PAINT_GONE -> "Have the paint of " + place + " made good at the next haul-out.";
            case HOT_BERTH ->
                "Have the anodes looked at twice as often, and fit more anode or an isolation transformer if they go this fast.";
            case STRAY_FROM_BOARD ->
                "Switch the batteries off when nobody is aboard, and have the leak from battery positive traced now.";
            case STRAY_FROM_SHORE ->
                "Unplug the shore lead when it is not needed, and have shore earth and isolator tested now.";
        };
    }

    /** What can hurt. */
    static String caution(FaultKind kind) {
        return switch (kind) {
            case ISOLATOR_SHORT, STRAY_FROM_SHORE, HOT_BERTH, WRONG_BOND -> Advice.SHORE_POWER;
            case ANODE_SPENT, ANODE_PAINTED, ANODE_LOOSE, ANODE_JOINT_CORRODED, WRONG_ANODE -> Advice.IN_THE_WATER;
            default -> "";
        };
    }

    /** How much it matters. */
    static Severity severity(FaultKind kind) {
        return kind == FaultKind.PAINT_GONE || kind == FaultKind.HOT_BERTH ? Severity.WATCH : Severity.ACT;
    }

    /** The metal of an anode in plain words. */
    static String plain(Metal alloy) {
        return alloy.name().replace(" anode", "");
    }
}
