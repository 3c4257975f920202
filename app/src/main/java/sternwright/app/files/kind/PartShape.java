package sternwright.app.files.kind;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Figures;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.Part;

/** One part of an installation, as boat files say it. */
final class PartShape {
    private static final Field<Part, String> ID =
            Field.required("id", Shapes.id(), Part::id, "short name, unique in its installation");
    private static final Field<Part, String> KIND =
            Field.required("kind", Shapes.nameOf(BoatShape.KINDS), Part::kind, "id of its kind in the catalogue");
    private static final Field<Part, String> PARENT = Field.optional(
            "parent", Shapes.id(), Part::parentId, "id of the part it sits on; empty for the installation itself");
    private static final Field<Part, LocalDate> FITTED =
            Field.optional("fitted-on", Shapes.pastDate(), Part::fittedOn, "date of fitting; empty: not known");
    private static final Field<Part, Double> HOURS = Field.optional(
            "hours-at-fitting",
            Numbers.notNegative(),
            Part::hoursAtFitting,
            "engine hours at fitting, counted over meter changes");
    private static final Field<Part, Double> CAPACITY =
            Field.optional("capacity-l", Numbers.positive().atMost(100_000), Part::capacityL, "what it holds, litres");
    private static final Field<Part, Double> ACCESS = Field.or(
            "access",
            Numbers.any().atLeast(0.5).atMost(10),
            1.0,
            Part::access,
            "1 good, 1.5 cramped, 2.5 needs dismantling: multiplies minutes");
    private static final Field<Part, String> METAL = Field.optional(
            "metal",
            Shapes.nameOf(BoatShape.METALS),
            Part::metal,
            "its metal or alloy; empty if it does not conduct or is not known");
    private static final Field<Part, Double> AREA = Field.optional(
            "wetted-area-m2", Numbers.positive().atMost(10_000), Part::wettedAreaM2, "area in the water, m²");
    private static final Field<Part, Double> MASS =
            Field.optional("mass-kg", Numbers.positive().atMost(10_000), Part::massKg, "mass when new, kg (anodes)");
    private static final Field<Part, Double> COATED = Field.optional(
            "coated-share",
            Numbers.notNegative().atMost(1),
            Part::coatedShare,
            "share of the wetted area under paint, 0 to 1");
    private static final Field<Part, Set<String>> CONDITIONS = Field.or(
            "conditions",
            Many.set(Shapes.id()),
            Set.of(),
            Part::conditions,
            "facts that change lives, such as contaminated");
    private static final Field<Part, Map<String, Double>> MAKER = Field.or(
            "maker-figures", new Figures(), Map.of(), Part::makerFigures, "figures from the maker's manual by name");

    static final Block<Part> PART = Block.of(
            "a part",
            "one part; a field left out or empty is not known",
            v -> new Part(
                    v.get(ID),
                    v.get(KIND),
                    v.orNull(PARENT),
                    v.orNull(FITTED),
                    v.orNull(HOURS),
                    v.orNull(CAPACITY),
                    v.get(ACCESS),
                    v.orNull(METAL),
                    v.orNull(AREA),
                    v.orNull(MASS),
                    v.orNull(COATED),
                    v.get(CONDITIONS),
                    v.get(MAKER)),
            ID,
            KIND,
            PARENT,
            FITTED,
            HOURS,
            CAPACITY,
            ACCESS,
            METAL,
            AREA,
            MASS,
            COATED,
            CONDITIONS,
            MAKER);

    private PartShape() {}
}
