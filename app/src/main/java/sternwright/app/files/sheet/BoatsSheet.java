package sternwright.app.files.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.template.BoatTemplate;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Bond;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.Side;
import sternwright.boat.Winter;

/** The register as a table: a row for each installation, what is said of the boat repeated in each of her rows. */
public final class BoatsSheet {
    /**
     * One row.
     *
     * @param head what is said of the boat
     * @param installation id of the installation
     * @param side where it sits
     * @param arrangement how power gets to the water
     * @param cooling how the engine is cooled
     * @param engineModel as on the plate, null if not known
     * @param powerKw rated power, kW; null if not known
     */
    public record Line(
            Head head,
            String installation,
            Side side,
            Arrangement arrangement,
            Cooling cooling,
            @Nullable String engineModel,
            @Nullable Double powerKw) {
        /**
         * The boat.
         *
         * @return her id
         */
        public String boat() {
            return head.boat();
        }
    }

    /**
     * What is said of a boat.
     *
     * @param boat her id
     * @param name as painted on the stern
     * @param owner whose she is
     * @param berth id of her berth
     * @param use id of her kind of use
     * @param winter where she spends the winter
     * @param hull what hoist and hard standing need
     * @param programme id of her programme, null for the generic one
     * @param note free text, null for none
     */
    public record Head(
            String boat,
            String name,
            Owner owner,
            String berth,
            String use,
            Winter winter,
            Hull hull,
            @Nullable String programme,
            @Nullable String note) {}

    /** The table. */
    public static final Sheet<Line> SHEET = new Sheet<>(BoatColumns.LINE);

    private BoatsSheet() {}

    /**
     * The rows of a boat.
     *
     * @param b the boat
     * @return a row for each installation
     */
    public static List<Line> rows(Boat b) {
        Head head = new Head(
                b.id(), b.name(), b.owner(), b.berthId(), b.use(), b.winter(), b.hull(), b.programme(), b.note());
        return b.installations().stream()
                .map(i -> new Line(head, i.id(), i.side(), i.arrangement(), i.cooling(), i.engineModel(), i.powerKw()))
                .toList();
    }

    /**
     * Rows of one boat that say different things of her, or name an installation twice.
     *
     * @param file the table's name
     * @param rows her rows
     * @return what is wrong
     */
    public static List<Problem> disagreeing(String file, List<Sheet.Row<Line>> rows) {
        List<Problem> wrong = new ArrayList<>();
        Sheet.Row<Line> first = rows.get(0);
        List<String> seen = new ArrayList<>();
        for (Sheet.Row<Line> row : rows) {
            if (!row.value().head().equals(first.value().head())) {
                wrong.add(new Problem(
                        file,
                        row.line(),
                        "boat",
                        "says something else of boat " + row.value().boat() + " than line " + first.line(),
                        "the same in every row of a boat",
                        "Only the columns of the installation may differ."));
            }
            if (seen.contains(row.value().installation())) {
                wrong.add(new Problem(
                        file,
                        row.line(),
                        "installation",
                        "\"" + row.value().installation() + "\" is given twice for boat "
                                + row.value().boat(),
                        "each once",
                        ""));
            }
            seen.add(row.value().installation());
        }
        return wrong;
    }

    /**
     * The boat that rows describe.
     *
     * @param rows all rows of one boat
     * @param before the boat as she is, null if she is new
     * @param template gives the parts of installations that are new
     * @return the boat; parts and bonds of installations that are there stay as they are
     */
    public static Boat boat(List<Line> rows, @Nullable Boat before, BoatTemplate template) {
        Head head = rows.get(0).head();
        List<Installation> installations = new ArrayList<>();
        List<Bond> bonds = new ArrayList<>(before == null ? List.of() : before.bonds());
        for (Line row : rows) {
            Installation there = before == null
                    ? null
                    : before.installation(row.installation()).orElse(null);
            if (there != null && there.arrangement() == row.arrangement()) {
                installations.add(with(row, there.parts()));
            } else {
                Installation fresh = with(row, template.parts(row.arrangement(), row.cooling()));
                installations.add(fresh);
                bonds.removeIf(b -> b.from().installationId().equals(row.installation()));
                bonds.addAll(template.bonds(fresh));
            }
        }
        List<String> ids = installations.stream().map(Installation::id).toList();
        bonds.removeIf(b -> !ids.contains(b.from().installationId()) || !ids.contains(b.to().installationId()));
        return new Boat(
                head.boat(),
                head.name(),
                head.owner(),
                head.berth(),
                head.use(),
                head.winter(),
                head.hull(),
                installations,
                bonds,
                head.programme(),
                head.note());
    }

    private static Installation with(Line row, List<Part> parts) {
        return new Installation(
                row.installation(),
                row.side(),
                row.arrangement(),
                row.cooling(),
                row.engineModel(),
                row.powerKw(),
                parts);
    }
}
