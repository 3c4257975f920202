package sternwright.protection.register;

import java.util.HashSet;
import java.util.Set;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartKind;
import sternwright.boat.Side;

/** Names of a boat's parts as one says them on the quay: "port leg anode". Only as long as needed to tell them apart. */
final class PartNames {
    private final Boat boat;
    private final boolean sidesDiffer;

    PartNames(Boat boat) {
        this.boat = boat;
        Set<Side> sides = new HashSet<>();
        boat.installations().forEach(i -> sides.add(i.side()));
        sidesDiffer = sides.size() == boat.installations().size();
    }

    /** The name of a part. */
    String of(Installation i, Part p, PartKind kind) {
        // Catalogue names may carry an explanation after a comma or in brackets.
        String plain = kind.name().replaceFirst("[,(].*", "").strip();
        long alike = i.parts().stream().filter(o -> o.kind().equals(p.kind())).count();
        String which = alike > 1 ? " (" + p.id() + ")" : "";
        return of(i, plain) + which;
    }

    /** Something of an installation. */
    String of(Installation i, String plain) {
        if (boat.installations().size() < 2) {
            return plain;
        }
        String side = !sidesDiffer
                ? i.id()
                : switch (i.side()) {
                    case PORT -> "port";
                    case STARBOARD -> "starboard";
                    case CENTRELINE -> "centre";
                };
        return side + " " + plain;
    }
}
