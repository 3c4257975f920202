package sternwright.app.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.kind.BerthsShape;
import sternwright.app.files.kind.BoatShape;
import sternwright.app.files.kind.CatalogueShape;
import sternwright.app.files.kind.ProgrammeShape;
import sternwright.app.files.kind.YardShape;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.problem.Problems;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Shape;
import sternwright.app.files.shape.Yaml;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Shelf;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.service.Programme;
import sternwright.yard.Yard;

/** Reads a yard's folder: whole, or some boats of it. */
public final class YardFolder {
    private final FolderLayout layout;
    private final LocalDate latest;
    private final Problems problems = new Problems();
    private boolean catalogueRead = true;

    private YardFolder(FolderLayout layout, LocalDate latest) {
        this.layout = layout;
        this.latest = latest;
    }

    /**
     * Reads everything.
     *
     * @param root the folder
     * @param latest the last day on which anything can have happened
     * @return all that it says
     * @throws BadInput with every problem of every file
     */
    public static YardFiles all(Path root, LocalDate latest) {
        return all(new FolderShelf(root), latest);
    }

    /**
     * Reads everything.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @return all that it says
     * @throws BadInput with every problem of every text
     */
    public static YardFiles all(Shelf shelf, LocalDate latest) {
        FolderLayout layout = layout(shelf);
        return new YardFolder(layout, latest).read(layout.boatIds());
    }

    /**
     * Reads some boats and what they refer to.
     *
     * @param root the folder
     * @param boatIds the boats
     * @param latest the last day on which anything can have happened
     * @return what it says of those boats
     * @throws BadInput with every problem, among them boats that are not there
     */
    public static YardFiles only(Path root, Collection<String> boatIds, LocalDate latest) {
        return only(new FolderShelf(root), boatIds, latest);
    }

    /**
     * Reads some boats and what they refer to.
     *
     * @param shelf where the yard's texts are kept
     * @param boatIds the boats
     * @param latest the last day on which anything can have happened
     * @return what it says of those boats
     * @throws BadInput with every problem, among them boats that are not there
     */
    public static YardFiles only(Shelf shelf, Collection<String> boatIds, LocalDate latest) {
        FolderLayout layout = layout(shelf);
        List<String> known = layout.boatIds();
        List<Problem> unknown = boatIds.stream()
                .filter(id -> !known.contains(id))
                .map(id -> new Problem(id, 0, "", "there is no boat of this id", "", KnownNames.advice(id, known)))
                .toList();
        if (!unknown.isEmpty()) {
            throw new BadInput(unknown);
        }
        return new YardFolder(layout, latest).read(boatIds.stream().distinct().toList());
    }

    /**
     * Reads the yard's own text alone.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @return the yard
     * @throws BadInput with every problem of that text
     */
    public static Yard yard(Shelf shelf, LocalDate latest) {
        YardFolder folder = new YardFolder(layout(shelf), latest);
        Yaml.Read<Yard> read = folder.yaml(FolderLayout.YARD, YardShape.YARD);
        folder.problems.stopIfAny();
        return java.util.Objects.requireNonNull(read, "a text that was not read noted no problem")
                .value();
    }

    private static FolderLayout layout(Shelf shelf) {
        FolderLayout.of(shelf);
        try {
            return new FolderLayout(shelf.still());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + shelf.place(), e);
        }
    }

    /**
     * Proves that a boat's file would be right before it is written.
     *
     * @param yard what the rest of the folder says
     * @param id the boat
     * @param text of its file
     * @param latest the last day on which anything can have happened
     * @return the boat
     * @throws BadInput with everything that is wrong
     */
    public static Boat proveBoat(YardFiles yard, String id, String text, LocalDate latest) {
        BoatCheck check = new BoatCheck(
                yard.yard(), yard.berths().keySet(), yard.catalogue(), yard.generic(), yard.programmes(), true);
        String name = FolderLayout.boat(id);
        List<Problem> problems = new ArrayList<>();
        Reading reading = new Reading(name, latest);
        Yaml.Read<Boat> read = Yaml.read(text, BoatShape.BOAT, reading, problems);
        problems.addAll(check.references(reading));
        if (read != null) {
            problems.addAll(check.problems(name, id, read));
        }
        if (read == null || !problems.isEmpty()) {
            throw new BadInput(problems);
        }
        return read.value();
    }

    /**
     * What holds for all boats; the yard or the berths are null if their text is wrong.
     *
     * @param yard the yard
     * @param berths the berths
     * @param catalogue kinds of part, the yard's own included
     * @param programmes the yard's own programmes by the names of their texts, those that could be read
     * @param catalogueRead false if the yard's own kinds of part could not be read
     * @param programmeCount how many programmes there are, right or wrong
     */
    record Common(
            @Nullable Yard yard,
            @Nullable List<Berth> berths,
            PartCatalogue catalogue,
            Map<String, Yaml.Read<Programme>> programmes,
            boolean catalogueRead,
            int programmeCount) {
        List<Programme> own() {
            return programmes.values().stream().map(Yaml.Read::value).toList();
        }

        BoatCheck check() {
            return new BoatCheck(
                    yard,
                    berths == null ? null : ids(berths, Berth::id),
                    catalogueRead ? catalogue : null,
                    Shipped.genericProgramme(),
                    own(),
                    programmes.size() == programmeCount);
        }
    }

    private YardFiles read(List<String> boatIds) {
        Common common = common();
        BoatCheck check = common.check();
        return together(
                common,
                boatIds.parallelStream()
                        .map(id -> BoatFile.read(layout, id, latest, check))
                        .toList());
    }

    /** A reader of a yard whose texts are read piece by piece. */
    static YardFolder piecewise(Shelf shelf, LocalDate latest) {
        return new YardFolder(layout(shelf), latest);
    }

    FolderLayout layout() {
        return layout;
    }

    /** Reads what holds for all boats; what is wrong is told by {@link #together}. */
    Common common() {
        Yaml.Read<Yard> yard = yaml(FolderLayout.YARD, YardShape.YARD);
        Yaml.Read<List<Berth>> berths = yaml(FolderLayout.BERTHS, BerthsShape.BERTHS);
        return new Common(
                yard == null ? null : yard.value(),
                berths == null ? null : berths.value(),
                catalogue(),
                programmes(),
                catalogueRead,
                layout.programmes().size());
    }

    /** Puts boats into what holds for all of them, or tells everything that is wrong. */
    YardFiles together(Common common, List<BoatFile> boats) {
        boats.forEach(b -> problems.noteAll(b.problems()));
        if (common.catalogueRead()) {
            new ProgrammeReferences(layout, Shipped.genericProgramme(), common.programmes(), common.catalogue())
                    .check(boats.stream().flatMap(b -> b.boat().stream()).toList())
                    .forEach(problems::note);
        }
        problems.stopIfAny();
        Yard yard = common.yard();
        List<Berth> berths = common.berths();
        if (yard == null || berths == null) {
            throw new IllegalStateException("a file that was not read noted no problem");
        }
        Map<String, Berth> byId = new LinkedHashMap<>();
        berths.forEach(b -> byId.put(b.id(), b));
        YardFiles empty = new YardFiles(
                yard,
                byId,
                common.catalogue(),
                Shipped.genericProgramme(),
                common.own(),
                Map.of(),
                Map.of(),
                List.of());
        return BoatFile.into(empty, boats);
    }

    private PartCatalogue catalogue() {
        PartCatalogue shipped = Shipped.catalogue();
        if (!layout.holds(FolderLayout.CATALOGUE)) {
            return shipped;
        }
        Yaml.Read<PartCatalogue> own = yaml(FolderLayout.CATALOGUE, CatalogueShape.CATALOGUE);
        catalogueRead = own != null;
        return own == null ? shipped : shipped.with(own.value().kinds());
    }

    private Map<String, Yaml.Read<Programme>> programmes() {
        Map<String, Yaml.Read<Programme>> read = new TreeMap<>();
        Map<String, String> fileOfId = new TreeMap<>();
        for (String file : layout.programmes()) {
            Yaml.Read<Programme> programme = yaml(file, ProgrammeShape.PROGRAMME);
            if (programme != null) {
                String before = fileOfId.putIfAbsent(programme.value().id(), file);
                if (before != null) {
                    problems.note(new Problem(
                            file,
                            programme.line("id"),
                            "id",
                            "\"" + programme.value().id() + "\" is also the id of " + before,
                            "each programme has its own id",
                            "Rename one of them."));
                }
                read.put(file, programme);
            }
        }
        return read;
    }

    private <T> Yaml.@Nullable Read<T> yaml(String file, Shape<T> shape) {
        String text = layout.text(file, problems);
        if (text == null) {
            return null;
        }
        List<Problem> found = new ArrayList<>();
        Yaml.Read<T> read = Yaml.read(text, shape, new Reading(file, latest), found);
        problems.noteAll(found);
        return read;
    }

    private static <T> Set<String> ids(Collection<T> all, Function<T, String> id) {
        return all.stream().map(id).collect(Collectors.toSet());
    }

    /** The ids of all kinds, for checks. */
    static Set<String> kindIds(PartCatalogue catalogue) {
        return ids(catalogue.kinds(), PartKind::id);
    }
}
