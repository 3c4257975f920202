package sternwright.app.demo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.Shipped;
import sternwright.app.files.kind.BerthsShape;
import sternwright.app.files.kind.ProgrammeShape;
import sternwright.app.files.kind.ResourcesShape;
import sternwright.app.files.kind.YardShape;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Shape;
import sternwright.app.files.shape.Yaml;
import sternwright.app.files.shape.YamlText;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.files.template.BoatText;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.history.BoatHistory;
import sternwright.service.Programme;
import sternwright.service.RuleBook;
import sternwright.yard.Yard;
import sternwright.yard.resource.Resources;

/** Writes an invented yard as a folder that every command reads. */
public final class InventedFolder {
    private static final String RESOURCES = "/sternwright/demo/";

    /** Which half of the globe the invented yard is in. */
    public enum Where {
        /** Six berths between 47° and 67° north, from fresh water to salt. */
        NORTH,
        /** Two berths south of the equator, one that never freezes. */
        SOUTH
    }

    private final Where where;

    /**
     * An invented yard in a place.
     *
     * @param where which half of the globe
     */
    public InventedFolder(Where where) {
        this.where = where;
    }

    /**
     * Makes the yard and writes it.
     *
     * @param root the folder; must be missing or empty
     * @param boats how many boats
     * @param today the day after the last one of the past
     * @param seed the same seed and day give the same yard
     * @return what was written
     * @throws IOException if the disk refuses; then nothing was written
     * @throws BadInput if the folder holds something already
     */
    public InventedYard write(Path root, int boats, LocalDate today, long seed) throws IOException {
        refuseFilled(root);
        Files.createDirectories(root);
        return write(new FolderShelf(root), boats, today, seed);
    }

    /**
     * Makes the yard and writes it where there is none.
     *
     * @param shelf where its texts shall be kept
     * @param boats how many boats
     * @param today the day after the last one of the past
     * @param seed the same seed and day give the same yard
     * @return what was written
     * @throws IOException if the keeper refuses; then nothing was written
     */
    public InventedYard write(Shelf shelf, int boats, LocalDate today, long seed) throws IOException {
        InventedYard made = make(boats, today, seed);
        try (Writing writing = shelf.write("an invented yard")) {
            put(writing, made, today, seed);
            writing.commit();
        }
        return made;
    }

    private void put(Writing files, InventedYard made, LocalDate today, long seed) {
        files.put(FolderLayout.YARD, yardText());
        files.put(FolderLayout.BERTHS, text(folder() + "berths.yaml"));
        files.put(FolderLayout.PROGRAMMES + "/own.yaml", text("own-programme.yaml"));
        season(files, made, today, seed);
        for (Boat boat : made.boats()) {
            files.put(FolderLayout.boat(boat.id()), boatText(boat));
            BoatHistory history = Objects.requireNonNull(made.histories().get(boat.id()));
            files.put(FolderLayout.history(boat.id()), HistorySheet.ONE_BOAT.write(history.lines()));
            files.put(FolderLayout.hours(boat.id()), HoursSheet.ONE_BOAT.write(history.meter()));
        }
    }

    /** What the season is planned with. */
    private void season(Writing files, InventedYard made, LocalDate today, long seed) {
        InventedResources invented = new InventedResources(yard(today).season(), today, seed);
        Resources resources = invented.resources(made.boats());
        files.put(
                SeasonFolder.RESOURCES,
                "# Invented hoists, places and people.\n"
                        + YamlText.of(ResourcesShape.RESOURCES.write(resources), YamlText.NONE));
        files.put(
                SeasonFolder.TIDES,
                SeasonSheets.TIDES.write(InventedTides.between(today.minusMonths(1), today.plusMonths(26))));
        files.put(
                SeasonFolder.DATES,
                SeasonSheets.DATES.write(invented.dates(made.boats(), berthsById(today), made.histories(), today)));
    }

    private Map<String, Berth> berthsById(LocalDate today) {
        return berths(today).stream().collect(Collectors.toMap(Berth::id, b -> b));
    }

    /**
     * Makes the boats and their past without writing them.
     *
     * @param boats how many boats
     * @param today the day after the last one of the past
     * @param seed the same seed and day give the same yard
     * @return boats and histories
     */
    public InventedYard make(int boats, LocalDate today, long seed) {
        Programme own = read("own-programme.yaml", text("own-programme.yaml"), ProgrammeShape.PROGRAMME, today);
        RuleBook book = RuleBook.of(Shipped.genericProgramme(), List.of(own), Shipped.catalogue());
        return InventedYard.make(boats, yard(today), berths(today), book, today, seed);
    }

    /**
     * The invented yard.
     *
     * @param today the last day on which anything can have happened
     * @return its rates, tariff, season and stores
     */
    public Yard yard(LocalDate today) {
        return read("yard.yaml", yardText(), YardShape.YARD, today);
    }

    /**
     * The invented berths.
     *
     * @param today the last day on which anything can have happened
     * @return the berths
     */
    public List<Berth> berths(LocalDate today) {
        return read("berths.yaml", text(folder() + "berths.yaml"), BerthsShape.BERTHS, today);
    }

    private String folder() {
        return where == Where.NORTH ? "north/" : "south/";
    }

    /** The yard's own file with the stores behind it, priced as in the shipped list. */
    private String yardText() {
        String stores = resource("/sternwright/stores.yaml");
        return text(folder() + "yard.yaml") + "# Example prices, without tax.\n"
                + stores.substring(stores.indexOf("stores:"));
    }

    private static String boatText(Boat boat) {
        return "# " + boat.name() + ": an invented boat of an invented owner.\n" + BoatText.plain(boat);
    }

    private static void refuseFilled(Path root) throws IOException {
        if (!Files.exists(root)) {
            return;
        }
        boolean filled = !Files.isDirectory(root);
        if (!filled) {
            try (Stream<Path> inside = Files.list(root)) {
                filled = inside.findAny().isPresent();
            }
        }
        if (filled) {
            throw BadInput.of(
                    root.toString(),
                    "there is something here already, and it is left as it is",
                    "a folder that is missing or empty",
                    "Name another one with --folder, or remove this one yourself.");
        }
    }

    private static <T> T read(String name, String text, Shape<T> shape, LocalDate today) {
        List<Problem> problems = new ArrayList<>();
        Yaml.Read<T> read = Yaml.read(text, shape, new Reading("shipped " + name, today), problems);
        if (read == null) {
            throw new BadInput(problems);
        }
        return read.value();
    }

    private static String text(String name) {
        return resource(RESOURCES + name);
    }

    private static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(
                InventedFolder.class.getResourceAsStream(name), "the program is incomplete: " + name + " is missing")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("cannot read " + name + " inside the program", e);
        }
    }
}
