package sternwright.app.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.kind.ResourcesShape;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.problem.Problems;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Yaml;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.sheet.Sheet;
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
    /** The plan that the yard works by. */
    public static final String PLAN = "season.csv";

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
        return new SeasonFolder(FolderLayout.of(root), latest).read();
    }

    private SeasonFiles read() {
        Resources resources = resources();
        SeasonFiles files = new SeasonFiles(
                resources == null ? NONE : resources,
                new TideTable(values(rows(TIDES, SeasonSheets.TIDES))),
                rows(DATES, SeasonSheets.DATES),
                rows(PROMISES, SeasonSheets.PROMISES),
                values(rows(PLAN, SeasonSheets.PLAN)));
        problems.stopIfAny();
        return files;
    }

    private static final Resources NONE = new Resources(
            List.of(),
            List.of(),
            List.of(),
            sternwright.yard.resource.StayTimes.USUAL,
            sternwright.yard.resource.SeasonPrices.USUAL);

    private @Nullable Resources resources() {
        Path file = layout.root().resolve(RESOURCES);
        if (!Files.exists(file)) {
            problems.note(new Problem(
                    RESOURCES,
                    0,
                    "",
                    "the file is missing: a season needs hoists, hard standing and crew",
                    "",
                    "Write it; docs/file-formats.md says how, and the demo's yard has one to copy."));
            return null;
        }
        String text = layout.text(file, problems);
        if (text == null) {
            return null;
        }
        List<Problem> found = new ArrayList<>();
        Yaml.Read<Resources> read =
                Yaml.read(text, ResourcesShape.RESOURCES, new Reading(layout.name(file), latest), found);
        problems.noteAll(found);
        return read == null ? null : read.value();
    }

    private <R> List<Sheet.Row<R>> rows(String name, Sheet<R> sheet) {
        Path file = layout.root().resolve(name);
        String text = Files.exists(file) ? layout.text(file, problems) : null;
        if (text == null) {
            return List.of();
        }
        List<Problem> found = new ArrayList<>();
        List<Sheet.Row<R>> rows = sheet.read(text, new Reading(layout.name(file), latest), found);
        problems.noteAll(found);
        return rows;
    }

    private static <R> List<R> values(List<Sheet.Row<R>> rows) {
        return rows.stream().map(Sheet.Row::value).toList();
    }
}
