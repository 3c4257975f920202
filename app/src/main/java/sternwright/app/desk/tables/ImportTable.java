package sternwright.app.desk.tables;

import java.io.IOException;
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
import sternwright.app.desk.recording.CountedHours;
import sternwright.app.desk.recording.EntrySense;
import sternwright.app.desk.recording.MeterSense;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.sheet.TableFile;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.boat.Boat;
import sternwright.history.BoatHistory;
import sternwright.history.HistoryLine;
import sternwright.history.MeterReading;

/** Takes in a table of history or hours of many boats: all of it, or, if any row is wrong, nothing. */
public final class ImportTable {
    /**
     * What came of it.
     *
     * @param added rows written
     * @param known rows that were there already, letter by letter, and were passed over
     * @param meter meter readings written, for a table of history those its hours tell of
     * @param boats boats they belong to
     */
    public record Imported(int added, int known, int meter, int boats) {}

    private final Shelf shelf;
    private final LocalDate latest;
    private final boolean asRead;
    private final List<Problem> problems = new ArrayList<>();

    private ImportTable(Shelf shelf, LocalDate latest, boolean asRead) {
        this.shelf = shelf;
        this.latest = latest;
        this.asRead = asRead;
    }

    /**
     * Takes in a table of history. Its hours, counted over meter changes, reach the hour tables too, as a work recorded by hand
     * does; its findings are taken as they are, for what a reading meant years ago is not judged by the limits of today.
     *
     * @param shelf where the yard's texts are kept
     * @param table its columns as docs/file-formats.md says
     * @param latest the last day on which anything can have happened
     * @param asRead true if meter readings out of line are to be kept as read
     * @return how much came in
     * @throws BadInput with every row that is wrong; nothing was written then
     * @throws IOException if the disk refuses
     */
    public static Imported history(Shelf shelf, TableFile table, LocalDate latest, boolean asRead) throws IOException {
        return new ImportTable(shelf, latest, asRead).history(table);
    }

    /**
     * Takes in a table of meter readings.
     *
     * @param shelf where the yard's texts are kept
     * @param table its columns as docs/file-formats.md says
     * @param latest the last day on which anything can have happened
     * @param asRead true if meter readings out of line are to be kept as read
     * @return how much came in
     * @throws BadInput with every row that is wrong; nothing was written then
     * @throws IOException if the disk refuses
     */
    public static Imported hours(Shelf shelf, TableFile table, LocalDate latest, boolean asRead) throws IOException {
        return new ImportTable(shelf, latest, asRead).hours(table);
    }

    private Imported history(TableFile table) throws IOException {
        return take(table, HistorySheet.MANY_BOATS, HistorySheet.OfBoat::boatId, (boat, rows) -> {
            FreshLines fresh = new FreshLines(boat.boat, boat.work, boat.history, boat.source, latest, problems);
            rows.forEach(r -> fresh.take(new Sheet.Row<>(r.line(), r.value().line())));
            List<Sheet.Row<MeterReading>> meter =
                    CountedHours.shown(fresh.standing(), boat.history, boat.source, problems);
            problems.addAll(MeterSense.check(boat.boat, boat.history, boat.source, meter, asRead));
            return new Fresh(fresh.lines(), meter.stream().map(Sheet.Row::value).toList());
        });
    }

    private Imported hours(TableFile table) throws IOException {
        return take(table, HoursSheet.MANY_BOATS, HoursSheet.OfBoat::boatId, (boat, rows) -> {
            Set<MeterReading> known = new HashSet<>(boat.history.meter());
            List<Sheet.Row<MeterReading>> fresh = rows.stream()
                    .map(r -> new Sheet.Row<>(r.line(), r.value().reading()))
                    .filter(r -> known.add(r.value()))
                    .toList();
            problems.addAll(MeterSense.check(boat.boat, boat.history, boat.source, fresh, asRead));
            return new Fresh(List.of(), fresh.stream().map(Sheet.Row::value).toList());
        });
    }

    /** A boat that a table speaks of, with what is written down of her. */
    private record Spoken(Boat boat, BoatHistory history, DueWork work, String source) {}

    /** What of a table is new for one boat. */
    private record Fresh(List<HistoryLine> lines, List<MeterReading> meter) {}

    private interface Sift<R> {
        Fresh of(Spoken boat, List<Sheet.Row<R>> rows);
    }

    private <R> Imported take(TableFile table, Sheet<R> sheet, Function<R, String> boatOf, Sift<R> sift)
            throws IOException {
        FolderLayout.of(shelf);
        try (Writing writing = shelf.write("lines taken in from " + table.name())) {
            YardFiles files = YardFolder.all(shelf, latest);
            DueWork work = new DueWork(files);
            String source = table.name();
            List<Sheet.Row<R>> rows = table.read(sheet, latest, problems);
            Map<String, List<Sheet.Row<R>>> byBoat = new LinkedHashMap<>();
            rows.forEach(r -> byBoat.computeIfAbsent(boatOf.apply(r.value()), b -> new ArrayList<>())
                    .add(r));
            Map<String, Fresh> fresh = new LinkedHashMap<>();
            byBoat.forEach((id, of) -> {
                Boat boat = files.boats().get(id);
                if (boat == null) {
                    of.forEach(r -> problems.add(noBoat(files, id, new EntrySense.Where(source, r.line()))));
                } else {
                    fresh.put(id, sift.of(new Spoken(boat, files.history(id), work, source), of));
                }
            });
            if (!problems.isEmpty()) {
                throw new BadInput(problems.stream().distinct().sorted().toList());
            }
            write(writing, fresh);
            int entries = fresh.values().stream().mapToInt(f -> f.lines.size()).sum();
            int meter = fresh.values().stream().mapToInt(f -> f.meter.size()).sum();
            int added = sheet == (Sheet<?>) HoursSheet.MANY_BOATS ? meter : entries;
            return new Imported(added, rows.size() - added, meter, byBoat.size());
        }
    }

    private void write(Writing writing, Map<String, Fresh> fresh) throws IOException {
        for (Map.Entry<String, Fresh> one : fresh.entrySet()) {
            Appending.history(shelf, one.getKey(), one.getValue().lines, writing);
            Appending.hours(shelf, one.getKey(), one.getValue().meter, writing);
        }
        writing.commit();
    }

    private static Problem noBoat(YardFiles files, String id, EntrySense.Where at) {
        String advice = KnownNames.advice(id, files.boats().keySet());
        return at.problem("boat", "there is no boat \"" + id + "\"", "", advice);
    }
}
