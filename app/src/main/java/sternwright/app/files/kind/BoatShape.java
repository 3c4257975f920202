package sternwright.app.files.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.Boat;
import sternwright.boat.Bond;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Winter;

/** A boat: {@code boats/ID.yaml}. */
public final class BoatShape {
    /** What a boat's berth is looked up as. */
    public static final String BERTHS = "berth in berths.yaml";
    /** What a boat's use is looked up as. */
    public static final String USES = "kind of use in yard.yaml";
    /** What a boat's programme is looked up as. */
    public static final String PROGRAMMES = "programme";
    /** What the kind of a part is looked up as. */
    public static final String KINDS = "kind of part in the catalogue";
    /** What the metal of a part is looked up as. */
    public static final String METALS = "metal";

    private static final Field<Owner, String> OWNER_NAME =
            Field.required("name", Shapes.text(), Owner::name, "as written on estimates");
    private static final Field<Owner, String> CONTACT =
            Field.optional("contact", Shapes.text(), Owner::contact, "telephone or e-mail");
    private static final Block<Owner> OWNER = Block.of(
            "an owner",
            "the person whose boat it is",
            v -> new Owner(v.get(OWNER_NAME), v.orNull(CONTACT)),
            OWNER_NAME,
            CONTACT);

    private static final Field<Hull, Double> LENGTH =
            Field.required("length-m", Numbers.positive().atMost(120), Hull::lengthM, "length overall, m");
    private static final Field<Hull, Double> BEAM =
            Field.required("beam-m", Numbers.positive().atMost(40), Hull::beamM, "beam, m");
    private static final Field<Hull, Double> DRAUGHT =
            Field.required("draught-m", Numbers.positive().atMost(15), Hull::draughtM, "draught, m");
    private static final Field<Hull, Double> MASS =
            Field.required("mass-kg", Numbers.positive().atMost(2_000_000), Hull::massKg, "mass as lifted, kg");
    private static final Field<Hull, HullMaterial> MATERIAL =
            Field.required("material", Shapes.oneOf(HullMaterial.class), Hull::material, "what the hull is made of");
    private static final Block<Hull> HULL = Block.of(
            "a hull",
            "what hoist and hard standing need to know",
            v -> new Hull(v.get(LENGTH), v.get(BEAM), v.get(DRAUGHT), v.get(MASS), v.get(MATERIAL)),
            LENGTH,
            BEAM,
            DRAUGHT,
            MASS,
            MATERIAL);

    private static final Field<Boat, String> ID =
            Field.required("id", Shapes.id(), Boat::id, "short name, the same as the file's");
    private static final Field<Boat, String> NAME =
            Field.required("name", Shapes.text(), Boat::name, "as painted on the stern");
    private static final Field<Boat, Owner> OWNER_FIELD = Field.required("owner", OWNER, Boat::owner, "whose it is");
    private static final Field<Boat, String> BERTH =
            Field.required("berth", Shapes.nameOf(BERTHS), Boat::berthId, "id of its berth in berths.yaml");
    private static final Field<Boat, String> USE =
            Field.required("use", Shapes.nameOf(USES), Boat::use, "id of its kind of use in yard.yaml");
    private static final Field<Boat, Winter> WINTER =
            Field.or("winter", Shapes.oneOf(Winter.class), Winter.ASHORE, Boat::winter, "where it spends the winter");
    private static final Field<Boat, Hull> HULL_FIELD =
            Field.required("hull", HULL, Boat::hull, "what hoist and hard standing need to know");
    private static final Field<Boat, List<Installation>> INSTALLATIONS = Field.required(
            "installations",
            Many.list(InstallationShape.INSTALLATION).between(1, 8).uniqueBy(Installation::id),
            Boat::installations,
            "its engines with everything between them and the water");
    private static final Field<Boat, List<Bond>> BONDS = Field.or(
            "bonds",
            Many.list(InstallationShape.BOND),
            List.of(),
            Boat::bonds,
            "parts joined in metal, and parts that must never be");
    private static final Field<Boat, String> PROGRAMME = Field.optional(
            "programme",
            Shapes.nameOf(PROGRAMMES),
            Boat::programme,
            "id of its service programme; empty for the generic one");
    private static final Field<Boat, String> NOTE = Field.optional("note", Shapes.text(), Boat::note, "free text");

    /** The whole file. */
    public static final Block<Boat> BOAT = Block.of(
            "a boat",
            "a boat as the register knows it",
            v -> new Boat(
                    v.get(ID),
                    v.get(NAME),
                    v.get(OWNER_FIELD),
                    v.get(BERTH),
                    v.get(USE),
                    v.get(WINTER),
                    v.get(HULL_FIELD),
                    v.get(INSTALLATIONS),
                    v.get(BONDS),
                    v.orNull(PROGRAMME),
                    v.orNull(NOTE)),
            ID,
            NAME,
            OWNER_FIELD,
            BERTH,
            USE,
            WINTER,
            HULL_FIELD,
            INSTALLATIONS,
            BONDS,
            PROGRAMME,
            NOTE);

    private BoatShape() {}

    /**
     * What a field of a boat's file means, wherever it stands; not for the fields of a part.
     *
     * @param field its name
     * @return the meaning; empty if there is no such field
     */
    public static String meaning(String field) {
        return Stream.of(BOAT, OWNER, HULL, InstallationShape.INSTALLATION, InstallationShape.BOND)
                .flatMap(b -> b.fields().stream())
                .filter(f -> f.name().equals(field))
                .map(Field::meaning)
                .findFirst()
                .orElse("");
    }

    /**
     * All fields a part may have, as lines of comment.
     *
     * @return one line for each field
     */
    public static List<String> partLegend() {
        List<String> lines = new ArrayList<>(List.of("Its parts, parents before children. A part may have:"));
        PartShape.PART.fields().forEach(f -> lines.add("  " + f.name() + ": " + f.meaning()));
        return lines;
    }
}
