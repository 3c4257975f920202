package sternwright.app.files.kind;

import java.util.List;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shape;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.Arrangement;
import sternwright.boat.Bond;
import sternwright.boat.Cooling;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.boat.Side;

/** One engine with its parts, and the bonds between parts, as boat files say them. */
final class InstallationShape {
    private static final String NAME = "[a-z0-9][a-z0-9._-]*";

    private static final Field<Installation, String> ID =
            Field.required("id", Shapes.id(), Installation::id, "short name, unique in its boat");
    private static final Field<Installation, Side> SIDE = Field.or(
            "side",
            Shapes.oneOf(Side.class),
            Side.CENTRELINE,
            Installation::side,
            "where it sits, seen from aft looking forward");
    private static final Field<Installation, Arrangement> ARRANGEMENT = Field.required(
            "arrangement", Shapes.oneOf(Arrangement.class), Installation::arrangement, "how power gets to the water");
    private static final Field<Installation, Cooling> COOLING =
            Field.required("cooling", Shapes.oneOf(Cooling.class), Installation::cooling, "how the engine is cooled");
    private static final Field<Installation, String> MODEL = Field.optional(
            "engine-model", Shapes.text(), Installation::engineModel, "the maker's model as on the plate");
    private static final Field<Installation, Double> POWER =
            Field.optional("power-kw", Numbers.positive().atMost(20_000), Installation::powerKw, "rated power, kW");
    private static final Field<Installation, List<Part>> PARTS = Field.required(
            "parts",
            Many.list(PartShape.PART).between(1, 500).uniqueBy(Part::id),
            Installation::parts,
            "its parts, parents before children");

    static final Block<Installation> INSTALLATION = Block.of(
            "an installation",
            "one engine with everything between it and the water",
            v -> new Installation(
                    v.get(ID),
                    v.get(SIDE),
                    v.get(ARRANGEMENT),
                    v.get(COOLING),
                    v.orNull(MODEL),
                    v.orNull(POWER),
                    v.get(PARTS)),
            ID,
            SIDE,
            ARRANGEMENT,
            COOLING,
            MODEL,
            POWER,
            PARTS);

    private static final Shape<PartRef> PART_REF = Shapes.parsedText(
            "a part as installation/part",
            NAME + "/" + NAME,
            InstallationShape::partRef,
            "Write the installation's id, a slash and the part's id, such as port/leg.");
    private static final Field<Bond, PartRef> FROM =
            Field.required("from", PART_REF, Bond::from, "one part, installation/part");
    private static final Field<Bond, PartRef> TO =
            Field.required("to", PART_REF, Bond::to, "the other part, installation/part");
    private static final Field<Bond, Double> RESISTANCE = Field.optional(
            "resistance-ohm",
            Numbers.notNegative().atMost(10_000_000),
            Bond::resistanceOhm,
            "resistance of the joint, ohm; empty if not measured");
    private static final Field<Bond, Boolean> NEVER =
            Field.or("never", Shapes.yesNo(), false, Bond::never, "true if the two must stay isolated");

    static final Block<Bond> BOND = Block.of(
            "a bond",
            "two parts joined in metal, or two that must never be",
            v -> {
                if (v.get(FROM).equals(v.get(TO))) {
                    throw new IllegalArgumentException("joins " + v.get(FROM) + " to itself");
                }
                return new Bond(v.get(FROM), v.get(TO), v.orNull(RESISTANCE), v.get(NEVER));
            },
            FROM,
            TO,
            RESISTANCE,
            NEVER);

    private InstallationShape() {}

    private static PartRef partRef(String text) {
        if (!text.matches(NAME + "/" + NAME)) {
            throw new IllegalArgumentException(text);
        }
        int slash = text.indexOf('/');
        return new PartRef(text.substring(0, slash), text.substring(slash + 1));
    }
}
