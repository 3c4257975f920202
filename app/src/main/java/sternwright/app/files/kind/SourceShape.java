package sternwright.app.files.kind;

import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Shapes;
import sternwright.finding.Source;
import sternwright.finding.Standing;

/** Where a figure comes from, as files say it. */
final class SourceShape {
    /** What a rule rests on if its file does not say. */
    static final Source PRACTICE = new Source("service practice", "", Standing.COMMON_PRACTICE);
    /** What an overriding rests on if its file does not say. */
    static final Source OWN_RULE = new Source("yard's own rule", "", Standing.YARD);

    private static final Field<Source, String> TITLE =
            Field.required("title", Shapes.text(), Source::title, "document, or \"service practice\"");
    private static final Field<Source, String> PLACE =
            Field.or("place", Shapes.anyText(), "", Source::place, "edition, section, table");
    private static final Field<Source, Standing> STANDING =
            Field.required("standing", Shapes.oneOf(Standing.class), Source::standing, "what the figure rests on");

    static final Block<Source> SOURCE = Block.of(
            "a source",
            "where the figures come from",
            v -> new Source(v.get(TITLE), v.get(PLACE), v.get(STANDING)),
            TITLE,
            PLACE,
            STANDING);

    private SourceShape() {}
}
