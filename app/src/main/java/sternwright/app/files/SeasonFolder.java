package sternwright.app.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.kind.ResourcesShape;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.problem.Problems;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Yaml;
import sternwright.app.files.sheet.AgreedSheet;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.sheet.SeasonVisitsSheet;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Shelf;
import sternwright.season.dated.Away;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import sternwright.season.dated.PublishedWork;
import sternwright.season.dated.SeasonRequest.HoistDown;
import sternwright.visit.planned.AgreedWork;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.TideTable;

/** Reads what a yard's folder says of its season. */
public final class SeasonFolder {
    /** Hoists, places, people, times and prices. */
    public static final String RESOURCES = "resources.yaml";
    /** High waters. */
    public static final String TIDES = "tides.csv";
    /** Owners' and suppliers' dates. */
    public static final String DATES = "dates.csv";
    /** Dates given to owners. */
    public static final String PROMISES = "promises.csv";
    /** Who is away and which hoist is down. */
    public static final String AWAY = "away.csv";
    /** Visits agreed with owners. */
    public static final String AGREED = "agreed.csv";
    /** The plan that the yard works by. */
    public static final String PLAN = "season.csv";
    /** Which works are in which visit of that plan. */
    public static final String VISITS = "season-visits.csv";

    private final FolderLayout layout;
    private final LocalDate latest;
    private final Problems problems = new Problems();

    private SeasonFolder(FolderLayout layout, LocalDate latest) {
        this.layout = layout;
        this.latest = latest;
    }

    /**
     * Reads the season's files.
     *
     * @param root the yard's folder
     * @param latest the last day on which anything can have happened
     * @return all that they say
     * @throws sternwright.app.files.problem.BadInput with every problem of every file
     */
    public static SeasonFiles read(Path root, LocalDate latest) {
        return read(FolderLayout.of(root).shelf(), latest);
    }

    /**
     * Reads what is said of the season.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @return all that they say
     * @throws sternwright.app.files.problem.BadInput with every problem of every text
     */
    public static SeasonFiles read(Shelf shelf, LocalDate latest) {
        try {
            FolderLayout.of(shelf);
            return new SeasonFolder(new FolderLayout(shelf.still()), latest).read();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + shelf.place(), e);
        }
    }

    private SeasonFiles read() {
        Resources resources = resources();
        List<Sheet.Row<Away>> away = rows(AWAY, SeasonSheets.AWAY);
        if (resources != null) {
            away.forEach(a -> known(a, resources));
        }
        SeasonFiles files = new SeasonFiles(
                resources == null ? NONE : without(resources, values(away)),
                new TideTable(values(rows(TIDES, SeasonSheets.TIDES))),
                rows(DATES, SeasonSheets.DATES),
                rows(PROMISES, SeasonSheets.PROMISES),
                down(resources == null ? NONE : resources, values(away)),
                values(rows(PLAN, SeasonSheets.PLAN)));
        problems.stopIfAny();
        return files;
    }

    /**
     * Everything that is wrong with what is said of the season, the published plan and agreed visits included. A yard that plans no season
     * may have none of these texts.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @param yard what the yard's other texts say, whose boats, parts and rules are asked for; null if they are wrong themselves
     * @return every problem of every text; empty if all is right
     */
    public static List<Problem> problems(Shelf shelf, LocalDate latest, @Nullable YardFiles yard) {
        SeasonFolder folder = new SeasonFolder(FolderLayout.of(shelf), latest);
        Resources resources = folder.layout.holds(RESOURCES) ? folder.resources() : null;
        List<Sheet.Row<Away>> away = folder.rows(AWAY, SeasonSheets.AWAY);
        if (resources != null) {
            away.forEach(a -> folder.known(a, resources));
        }
        folder.rows(TIDES, SeasonSheets.TIDES);
        folder.rows(PLAN, SeasonSheets.PLAN);
        folder.rows(VISITS, SeasonVisitsSheet.VISITS);
        List<Sheet.Row<OwnerDate>> dates = folder.rows(DATES, SeasonSheets.DATES);
        List<Sheet.Row<PromisedDate>> promises = folder.rows(PROMISES, SeasonSheets.PROMISES);
        List<Sheet.Row<AgreedWork>> agreed = folder.rows(AGREED, AgreedSheet.AGREED);
        if (yard != null) {
            SeasonReferences references = new SeasonReferences(yard, folder.problems);
            references.dates(dates);
            references.promises(promises);
            references.agreed(agreed);
        }
        return folder.problems.inOrder();
    }

    /**
     * Who is away and which hoist is down, as it is written down.
     *
     * @param shelf where the yard's texts are kept
     * @return lines in their order; empty if there is no such text
     */
    public static List<Away> away(Shelf shelf) {
        return rows(shelf, AWAY, SeasonSheets.AWAY);
    }

    /**
     * Dates given to owners, as they are written down.
     *
     * @param shelf where the yard's texts are kept
     * @return lines in their order; empty if there is no such text
     */
    public static List<PromisedDate> promises(Shelf shelf) {
        return rows(shelf, PROMISES, SeasonSheets.PROMISES);
    }

    /**
     * Owners' and suppliers' dates, as they are written down.
     *
     * @param shelf where the yard's texts are kept
     * @return lines in their order; empty if there is no such text
     */
    public static List<OwnerDate> dates(Shelf shelf) {
        return rows(shelf, DATES, SeasonSheets.DATES);
    }

    /**
     * Visits agreed with owners, as they are written down.
     *
     * @param shelf where the yard's texts are kept
     * @return lines in their order; empty if there is no such text
     */
    public static List<AgreedWork> agreed(Shelf shelf) {
        return rows(shelf, AGREED, AgreedSheet.AGREED);
    }

    /**
     * Which works are in which visit of the published season.
     *
     * @param shelf where the yard's texts are kept
     * @return lines in their order; empty if there is no such text
     */
    public static List<PublishedWork> visits(Shelf shelf) {
        return rows(shelf, VISITS, SeasonVisitsSheet.VISITS);
    }

    private static <R> List<R> rows(Shelf shelf, String name, Sheet<R> sheet) {
        SeasonFolder folder = new SeasonFolder(FolderLayout.of(shelf), LocalDate.MAX);
        List<R> rows = values(folder.rows(name, sheet));
        folder.problems.stopIfAny();
        return rows;
    }

    /**
     * A plan that was published or kept.
     *
     * @param shelf where the yard's texts are kept
     * @param name of the plan, such as {@link #PLAN}
     * @param latest the last day on which anything can have happened
     * @return its operations
     * @throws sternwright.app.files.problem.BadInput if it is not there or wrong
     */
    public static List<Published> plan(Shelf shelf, String name, LocalDate latest) {
        return plan(FolderLayout.of(shelf), name, latest);
    }

    private static List<Published> plan(FolderLayout layout, String name, LocalDate latest) {
        SeasonFolder folder = new SeasonFolder(layout, latest);
        String text = folder.layout.text(name, folder.problems);
        List<Problem> found = new ArrayList<>();
        List<Published> plan =
                text == null ? List.of() : values(SeasonSheets.PLAN.read(text, new Reading(name, latest), found));
        folder.problems.noteAll(found);
        folder.problems.stopIfAny();
        return plan;
    }

    /**
     * A plan that was kept as a file anywhere.
     *
     * @param root the yard's folder
     * @param file the plan; relative names are of the yard's folder
     * @param latest the last day on which anything can have happened
     * @return its operations
     * @throws sternwright.app.files.problem.BadInput if it is not there or wrong
     */
    public static List<Published> plan(Path root, Path file, LocalDate latest) {
        Path at = root.resolve(file).toAbsolutePath();
        Path in = at.getParent();
        FolderShelf folder = new FolderShelf(in == null ? at : in);
        return plan(new FolderLayout(folder), String.valueOf(at.getFileName()), latest);
    }

    private void known(Sheet.Row<Away> row, Resources resources) {
        List<String> known = Stream.concat(
                        resources.crew().stream().map(CrewMember::id),
                        resources.hoists().stream().map(Hoist::id))
                .toList();
        if (!known.contains(row.value().who())) {
            problems.note(BoatCheck.unknown(
                    AWAY, row.line(), "who", row.value().who(), "one of the crew and no hoist", known));
        }
    }

    private static Resources without(Resources resources, List<Away> away) {
        List<CrewMember> crew = new ArrayList<>();
        for (CrewMember member : resources.crew()) {
            CrewMember there = member;
            for (Away a : away) {
                there = a.who().equals(member.id()) ? there.away(a.days()) : there;
            }
            crew.add(there);
        }
        return resources.crew(crew);
    }

    private static List<HoistDown> down(Resources resources, List<Away> away) {
        return away.stream()
                .filter(a -> resources.hoists().stream().anyMatch(h -> h.id().equals(a.who())))
                .map(a -> new HoistDown(a.who(), a.days()))
                .toList();
    }

    private static final Resources NONE = new Resources(
            List.of(),
            List.of(),
            List.of(),
            sternwright.yard.resource.StayTimes.USUAL,
            sternwright.yard.resource.SeasonPrices.USUAL);

    private @Nullable Resources resources() {
        if (!layout.holds(RESOURCES)) {
            problems.note(new Problem(
                    RESOURCES,
                    0,
                    "",
                    "the file is missing: a season needs hoists, hard standing and crew",
                    "",
                    "Write it; docs/file-formats.md says how, and the demo's yard has one to copy."));
            return null;
        }
        String text = layout.text(RESOURCES, problems);
        if (text == null) {
            return null;
        }
        List<Problem> found = new ArrayList<>();
        Yaml.Read<Resources> read = Yaml.read(text, ResourcesShape.RESOURCES, new Reading(RESOURCES, latest), found);
        problems.noteAll(found);
        return read == null ? null : read.value();
    }

    private <R> List<Sheet.Row<R>> rows(String name, Sheet<R> sheet) {
        String text = layout.holds(name) ? layout.text(name, problems) : null;
        if (text == null) {
            return List.of();
        }
        List<Problem> found = new ArrayList<>();
        List<Sheet.Row<R>> rows = sheet.read(text, new Reading(name, latest), found);
        problems.noteAll(found);
        return rows;
    }

    private static <R> List<R> values(List<Sheet.Row<R>> rows) {
        return rows.stream().map(Sheet.Row::value).toList();
    }
}
