package sternwright.app.files.template;

import java.util.List;
import java.util.Set;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;

/**
 * What each arrangement usually consists of.
 *
 * @param parts parts in the order in which they are written
 * @param bonds bonds between them
 */
public record Arrangements(List<UsualPart> parts, List<UsualBond> bonds) {
    /**
     * A part that such an installation usually has.
     *
     * @param id its short name
     * @param kind its kind
     * @param parent the part it sits on, empty for the installation
     * @param arrangements arrangements that have it; empty for all
     * @param coolings cooling systems that have it; empty for all
     * @param wettedAreaM2 guessed area in the water, m²; 0 if it is not wet
     * @param coatedShare guessed share under paint
     * @param massKg guessed mass when new, kg; 0 where it does not matter
     */
    public record UsualPart(
            String id,
            String kind,
            String parent,
            Set<Arrangement> arrangements,
            Set<Cooling> coolings,
            double wettedAreaM2,
            double coatedShare,
            double massKg) {
        /** Copies the sets. */
        public UsualPart {
            arrangements = Set.copyOf(arrangements);
            coolings = Set.copyOf(coolings);
        }

        boolean of(Arrangement arrangement, Cooling cooling) {
            return (arrangements.isEmpty() || arrangements.contains(arrangement))
                    && (coolings.isEmpty() || coolings.contains(cooling));
        }
    }

    /**
     * A bond between two usual parts.
     *
     * @param from one part
     * @param to the other
     * @param never true if they must stay isolated
     * @param arrangements arrangements that have it; empty for all
     */
    public record UsualBond(String from, String to, boolean never, Set<Arrangement> arrangements) {
        /** Copies the set. */
        public UsualBond {
            arrangements = Set.copyOf(arrangements);
        }
    }

    /** Copies the lists. */
    public Arrangements {
        parts = List.copyOf(parts);
        bonds = List.copyOf(bonds);
    }

    private static final Field<UsualPart, String> ID = Field.required("id", Shapes.id(), UsualPart::id, "id");
    private static final Field<UsualPart, String> KIND = Field.required("kind", Shapes.id(), UsualPart::kind, "kind");
    private static final Field<UsualPart, String> PARENT =
            Field.or("parent", Shapes.id(), "", UsualPart::parent, "part it sits on");
    private static final Field<UsualPart, Set<Arrangement>> IN = Field.or(
            "in", Many.set(Shapes.oneOf(Arrangement.class)), Set.of(), UsualPart::arrangements, "arrangements");
    private static final Field<UsualPart, Set<Cooling>> COOLINGS = Field.or(
            "coolings", Many.set(Shapes.oneOf(Cooling.class)), Set.of(), UsualPart::coolings, "cooling systems");
    private static final Field<UsualPart, Double> AREA =
            Field.or("wetted-area-m2", Numbers.positive(), 0.0, UsualPart::wettedAreaM2, "guessed area in the water");
    private static final Field<UsualPart, Double> COATED = Field.or(
            "coated-share", Numbers.notNegative().atMost(1), 0.0, UsualPart::coatedShare, "guessed share under paint");
    private static final Field<UsualPart, Double> MASS =
            Field.or("mass-kg", Numbers.positive(), 0.0, UsualPart::massKg, "guessed mass when new");
    private static final Block<UsualPart> PART = Block.of(
            "a usual part",
            "a part such an installation usually has",
            v -> new UsualPart(
                    v.get(ID),
                    v.get(KIND),
                    v.get(PARENT),
                    v.get(IN),
                    v.get(COOLINGS),
                    v.get(AREA),
                    v.get(COATED),
                    v.get(MASS)),
            ID,
            KIND,
            PARENT,
            IN,
            COOLINGS,
            AREA,
            COATED,
            MASS);

    private static final Field<UsualBond, String> FROM = Field.required("from", Shapes.id(), UsualBond::from, "part");
    private static final Field<UsualBond, String> TO = Field.required("to", Shapes.id(), UsualBond::to, "part");
    private static final Field<UsualBond, Boolean> NEVER =
            Field.or("never", Shapes.yesNo(), false, UsualBond::never, "must stay isolated");
    private static final Field<UsualBond, Set<Arrangement>> BOND_IN = Field.or(
            "in", Many.set(Shapes.oneOf(Arrangement.class)), Set.of(), UsualBond::arrangements, "arrangements");
    private static final Block<UsualBond> BOND = Block.of(
            "a usual bond",
            "a bond between usual parts",
            v -> new UsualBond(v.get(FROM), v.get(TO), v.get(NEVER), v.get(BOND_IN)),
            FROM,
            TO,
            NEVER,
            BOND_IN);

    private static final Field<Arrangements, List<UsualPart>> PARTS =
            Field.required("parts", Many.list(PART), Arrangements::parts, "usual parts");
    private static final Field<Arrangements, List<UsualBond>> BONDS =
            Field.required("bonds", Many.list(BOND), Arrangements::bonds, "usual bonds; those whose parts are there");

    /** The whole file. */
    public static final Block<Arrangements> SHAPE = Block.of(
            "the arrangements",
            "what each arrangement usually consists of",
            v -> new Arrangements(v.get(PARTS), v.get(BONDS)),
            PARTS,
            BONDS);
}
