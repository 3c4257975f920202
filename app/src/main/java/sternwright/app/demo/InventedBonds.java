package sternwright.app.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Bond;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartRef;

/** What is joined in metal in an invented boat, and what must never be. Resistances are invented. */
final class InventedBonds {
    private static final double FASTENED_OHM = 0.002;
    private static final double WIRED_OHM = 0.01;
    private static final double BRUSHED_OHM = 0.05;

    /** A part of this kind is fastened to its parent. */
    private static final Map<String, Double> TO_PARENT = Map.ofEntries(
            Map.entry("propeller", FASTENED_OHM),
            Map.entry("folding-propeller", FASTENED_OHM),
            Map.entry("shaft-anode", FASTENED_OHM),
            Map.entry("propeller-anode", FASTENED_OHM),
            Map.entry("leg-anode", FASTENED_OHM),
            Map.entry("transom-anode", FASTENED_OHM),
            Map.entry("pod-anode", FASTENED_OHM),
            Map.entry("jet-anode", FASTENED_OHM),
            Map.entry("jet-impeller", FASTENED_OHM),
            Map.entry("wear-ring", FASTENED_OHM),
            Map.entry("bucket", WIRED_OHM),
            Map.entry("rams", WIRED_OHM),
            Map.entry("hull-anode", WIRED_OHM));

    private InventedBonds() {}

    static List<Bond> of(List<Installation> installations) {
        List<Bond> bonds = new ArrayList<>();
        for (Installation installation : installations) {
            for (Part part : installation.parts()) {
                Double ohm = TO_PARENT.get(part.kind());
                if (ohm != null && part.parentId() != null) {
                    bonds.add(bond(installation, part.id(), part.parentId(), ohm, false));
                }
            }
            arrangement(installation, bonds);
        }
        if (installations.size() > 1) {
            bonds.add(new Bond(
                    new PartRef(installations.get(0).id(), "engine"),
                    new PartRef(installations.get(1).id(), "engine"),
                    WIRED_OHM,
                    false));
        }
        return bonds;
    }

    private static void arrangement(Installation i, List<Bond> bonds) {
        if (i.arrangement() == Arrangement.SAILDRIVE) {
            bonds.add(bond(i, "leg", "engine", null, true));
        } else if (i.arrangement() == Arrangement.STERNDRIVE) {
            bonds.add(bond(i, "leg", "transom-unit", WIRED_OHM, false));
            bonds.add(bond(i, "transom-unit", "engine", WIRED_OHM, false));
        } else if (i.part("shaft-brush").isPresent()) {
            bonds.add(bond(i, "shaft", "engine", BRUSHED_OHM, false));
        }
    }

    private static Bond bond(Installation i, String from, String to, @Nullable Double ohm, boolean never) {
        return new Bond(new PartRef(i.id(), from), new PartRef(i.id(), to), ohm, never);
    }
}
