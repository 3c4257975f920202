package sternwright.app.files.kind;

import java.util.List;
import java.util.Set;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;

/** Kinds of part: {@code catalogue.yaml} of the yard and the shipped one inside the program. */
public final class CatalogueShape {
    private static final Field<PartKind, String> ID =
            Field.required("id", Shapes.id(), PartKind::id, "short name, such as raw-water-pump");
    private static final Field<PartKind, String> NAME =
            Field.required("name", Shapes.text(), PartKind::name, "as people say it");
    private static final Field<PartKind, String> SERVICE_POINT = Field.required(
            "service-point",
            Shapes.id(),
            PartKind::servicePoint,
            "where on the installation one works on it; works at one point share the set-up");
    private static final Field<PartKind, Boolean> WET =
            Field.or("wet", Shapes.yesNo(), false, PartKind::wet, "in the water outside the hull");
    private static final Field<PartKind, String> USUAL_METAL =
            Field.optional("usual-metal", Shapes.id(), PartKind::usualMetal, "metal it is usually made of");
    private static final Field<PartKind, String> CAPACITY_OF = Field.optional(
            "capacity-of", Shapes.id(), PartKind::capacityOf, "what its capacity is of, such as engine-oil");
    private static final Field<PartKind, Set<String>> TAGS =
            Field.or("tags", Many.set(Shapes.id()), Set.of(), PartKind::tags, "words by which rules choose kinds");

    private static final Block<PartKind> KIND = Block.of(
            "a kind of part",
            "a kind of part",
            v -> new PartKind(
                    v.get(ID),
                    v.get(NAME),
                    v.get(SERVICE_POINT),
                    v.get(WET),
                    v.orNull(USUAL_METAL),
                    v.orNull(CAPACITY_OF),
                    v.get(TAGS)),
            ID,
            NAME,
            SERVICE_POINT,
            WET,
            USUAL_METAL,
            CAPACITY_OF,
            TAGS);

    private static final Field<PartCatalogue, List<PartKind>> KINDS = Field.required(
            "kinds",
            Many.list(KIND).uniqueBy(PartKind::id),
            PartCatalogue::kinds,
            "the kinds; one of a shipped id replaces the shipped one");

    /** The whole file. */
    public static final Block<PartCatalogue> CATALOGUE = Block.of(
            "a catalogue",
            "kinds of part, added to those inside the program",
            v -> new PartCatalogue(v.get(KINDS)),
            KINDS);

    private CatalogueShape() {}
}
