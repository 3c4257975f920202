package sternwright.app.desk.tables;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import sternwright.app.desk.due.DueWork;
import sternwright.app.desk.recording.Appending;
import sternwright.app.desk.recording.EntrySense;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.safe.StagedFiles;
import sternwright.app.files.safe.YardLock;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.sheet.TableFile;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;

/** Takes in a table of history or hours of many boats: all of it, or, if any row is wrong, nothing. */
public final class ImportTable {
    /**
     * What came of it.
     *
     * @param added rows written
     * @param known rows that were there already, letter by letter, and were passed over
     * @param boats boats they belong to
     */
    public record Imported(int added, int known, int boats) {}

    private final Path root;
    private final LocalDate latest;
    private final List<Problem> problems = new ArrayList<>();

    private ImportTable(Path root, LocalDate latest) {
        this.root = root;
        this.latest = latest;
    }

    /**
     * Takes in a table of history.
     *
     * @param root the yard's folder
     * @param table the file, columns as docs/file-formats.md says
     * @param latest the last day on which anything can have happened
     * @return how much came in
     * @throws BadInput with every row that is wrong; nothing was written then
     * @throws IOException if the disk refuses
     */
    public static Imported history(Path root, Path table, LocalDate latest) throws IOException {
        return new ImportTable(root, latest).history(table);
    }

    /**
     * Takes in a table of meter readings.
     *
     * @param root the yard's folder
     * @param table the file, columns as docs/file-formats.md says
     * @param latest the last day on which anything can have happened
     * @return how much came in
     * @throws BadInput with every row that is wrong; nothing was written then
     * @throws IOException if the disk refuses
     */
    public static Imported hours(Path root, Path table, LocalDate latest) throws IOException {
        return new ImportTable(root, latest).hours(table);
    }

    private Imported history(Path table) throws IOException {
        return take(
                table,
                HistorySheet.MANY_BOATS,
                new Kind<>(
                        HistorySheet.OfBoat::boatId,
                        HistorySheet.OfBoat::entry,
                        (work, boat, entry, at) -> EntrySense.check(boat, work, entry, at, latest),
                        BoatHistory::entries,
                        Appending::history));
    }

    private Imported hours(Path table) throws IOException {
        return take(
                table,
                HoursSheet.MANY_BOATS,
                new Kind<>(
                        HoursSheet.OfBoat::boatId,
                        HoursSheet.OfBoat::reading,
                        (work, boat, reading, at) -> engine(boat, reading, at),
                        BoatHistory::meter,
                        Appending::hours));
    }

    /** What tells history from hours. */
    private record Kind<R, T>(
            Function<R, String> boat,
            Function<R, T> value,
            Check<T> check,
            Function<BoatHistory, List<T>> known,
            Append<T> append) {}

    private interface Check<T> {
        List<Problem> of(DueWork work, Boat boat, T value, EntrySense.Where at);
    }

    private interface Append<T> {
        void to(FolderLayout layout, String boatId, List<T> values, StagedFiles staged) throws IOException;
    }

    private <R, T> Imported take(Path table, Sheet<R> sheet, Kind<R, T> kind) throws IOException {
        FolderLayout layout = FolderLayout.of(root);
        try (YardLock lock = YardLock.take(root)) {
            YardFiles files = YardFolder.all(root, latest);
            DueWork work = new DueWork(files);
            List<Sheet.Row<R>> rows = TableFile.read(table, sheet, latest, problems);
            Map<String, List<T>> byBoat = new LinkedHashMap<>();
            for (Sheet.Row<R> row : rows) {
                EntrySense.Where at = new EntrySense.Where(String.valueOf(table.getFileName()), row.line());
                String id = kind.boat().apply(row.value());
                T value = kind.value().apply(row.value());
                Boat boat = files.boats().get(id);
                problems.addAll(
                        boat == null ? noBoat(files, id, at) : kind.check().of(work, boat, value, at));
                byBoat.computeIfAbsent(id, b -> new ArrayList<>()).add(value);
            }
            if (!problems.isEmpty()) {
                throw new BadInput(problems.stream().sorted().toList());
            }
            StagedFiles staged = new StagedFiles(root);
            int added = 0;
            for (Map.Entry<String, List<T>> one : byBoat.entrySet()) {
                Set<T> known = new HashSet<>(kind.known().apply(files.history(one.getKey())));
                List<T> fresh = one.getValue().stream().filter(known::add).toList();
                kind.append().to(layout, one.getKey(), fresh, staged);
                added += fresh.size();
            }
            staged.commit();
            return new Imported(added, rows.size() - added, byBoat.size());
        }
    }

    private static List<Problem> noBoat(YardFiles files, String id, EntrySense.Where at) {
        String advice = KnownNames.advice(id, files.boats().keySet());
        return List.of(at.problem("boat", "there is no boat \"" + id + "\"", "", advice));
    }

    private static List<Problem> engine(Boat boat, MeterReading reading, EntrySense.Where at) {
        List<String> engines =
                boat.installations().stream().map(Installation::id).toList();
        if (engines.contains(reading.installationId())) {
            return List.of();
        }
        String found = "boat " + boat.id() + " has no installation \"" + reading.installationId() + "\"";
        return List.of(at.problem("installation", found, "", KnownNames.advice(reading.installationId(), engines)));
    }
}
