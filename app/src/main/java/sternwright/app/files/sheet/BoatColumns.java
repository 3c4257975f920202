package sternwright.app.files.sheet;

import java.util.List;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.app.files.shape.Values;
import sternwright.app.files.sheet.BoatsSheet.Head;
import sternwright.app.files.sheet.BoatsSheet.Line;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Owner;
import sternwright.boat.Side;
import sternwright.boat.Winter;

/** The columns of the register. */
final class BoatColumns {
    private static final Field<Line, String> BOAT = Field.required("boat", Shapes.id(), Line::boat, "id of the boat");
    private static final Field<Line, String> NAME =
            Field.required("name", Shapes.text(), l -> l.head().name(), "as painted on the stern");
    private static final Field<Line, String> OWNER =
            Field.required("owner", Shapes.text(), l -> l.head().owner().name(), "whose it is");
    private static final Field<Line, String> CONTACT =
            Field.optional("contact", Shapes.text(), l -> l.head().owner().contact(), "telephone or e-mail");
    private static final Field<Line, String> BERTH =
            Field.required("berth", Shapes.id(), l -> l.head().berth(), "id of its berth");
    private static final Field<Line, String> USE =
            Field.required("use", Shapes.id(), l -> l.head().use(), "id of its kind of use");
    private static final Field<Line, Winter> WINTER = Field.or(
            "winter", Shapes.oneOf(Winter.class), Winter.ASHORE, l -> l.head().winter(), "where it spends the winter");
    private static final Field<Line, Double> LENGTH =
            Field.required("length-m", Numbers.positive(), l -> l.head().hull().lengthM(), "length overall, m");
    private static final Field<Line, Double> BEAM =
            Field.required("beam-m", Numbers.positive(), l -> l.head().hull().beamM(), "beam, m");
    private static final Field<Line, Double> DRAUGHT =
            Field.required("draught-m", Numbers.positive(), l -> l.head().hull().draughtM(), "draught, m");
    private static final Field<Line, Double> MASS =
            Field.required("mass-kg", Numbers.positive(), l -> l.head().hull().massKg(), "mass as lifted, kg");
    private static final Field<Line, HullMaterial> MATERIAL = Field.required(
            "material", Shapes.oneOf(HullMaterial.class), l -> l.head().hull().material(), "of the hull");
    private static final Field<Line, String> PROGRAMME = Field.optional(
            "programme", Shapes.id(), l -> l.head().programme(), "id of its programme; empty for the generic one");
    private static final Field<Line, String> NOTE =
            Field.optional("note", Shapes.text(), l -> l.head().note(), "free text");
    private static final Field<Line, String> INSTALLATION =
            Field.required("installation", Shapes.id(), Line::installation, "id of the installation");
    private static final Field<Line, Side> SIDE =
            Field.or("side", Shapes.oneOf(Side.class), Side.CENTRELINE, Line::side, "where it sits");
    private static final Field<Line, Arrangement> ARRANGEMENT = Field.required(
            "arrangement", Shapes.oneOf(Arrangement.class), Line::arrangement, "how power gets to the water");
    private static final Field<Line, Cooling> COOLING =
            Field.required("cooling", Shapes.oneOf(Cooling.class), Line::cooling, "how the engine is cooled");
    private static final Field<Line, String> MODEL =
            Field.optional("engine-model", Shapes.text(), Line::engineModel, "as on the plate");
    private static final Field<Line, Double> POWER =
            Field.optional("power-kw", Numbers.positive(), Line::powerKw, "rated power, kW");

    static final Block<Line> LINE = Block.of(
            "a boat",
            "the register, a row for each installation",
            BoatColumns::line,
            List.of(
                    BOAT,
                    NAME,
                    OWNER,
                    CONTACT,
                    BERTH,
                    USE,
                    WINTER,
                    LENGTH,
                    BEAM,
                    DRAUGHT,
                    MASS,
                    MATERIAL,
                    PROGRAMME,
                    NOTE,
                    INSTALLATION,
                    SIDE,
                    ARRANGEMENT,
                    COOLING,
                    MODEL,
                    POWER));

    private BoatColumns() {}

    private static Line line(Values<Line> v) {
        Head head = new Head(
                v.get(BOAT),
                v.get(NAME),
                new Owner(v.get(OWNER), v.orNull(CONTACT)),
                v.get(BERTH),
                v.get(USE),
                v.get(WINTER),
                new Hull(v.get(LENGTH), v.get(BEAM), v.get(DRAUGHT), v.get(MASS), v.get(MATERIAL)),
                v.orNull(PROGRAMME),
                v.orNull(NOTE));
        return new Line(
                head,
                v.get(INSTALLATION),
                v.get(SIDE),
                v.get(ARRANGEMENT),
                v.get(COOLING),
                v.orNull(MODEL),
                v.orNull(POWER));
    }
}
