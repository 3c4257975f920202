package sternwright.app.files;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import sternwright.app.files.kind.BoatShape;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.problem.Problems;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Yaml;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.history.BoatHistory;
import sternwright.history.HistoryLine;
import sternwright.history.MeterReading;

/**
 * What the files of one boat say.
 *
 * @param id the boat
 * @param boat the boat; empty if its file is wrong
 * @param history what is written down of it
 * @param problems everything that is wrong
 * @param remarks what does not stop the work
 */
record BoatFile(
        String id, Optional<Boat> boat, Supplier<BoatHistory> history, List<Problem> problems, List<Problem> remarks) {
    /** Reads boat, history and hours; safe to call side by side. */
    static BoatFile read(FolderLayout layout, String id, LocalDate latest, BoatCheck check) {
        Problems problems = new Problems();
        String file = FolderLayout.boat(id);
        String text = layout.text(file, problems);
        List<Problem> found = new ArrayList<>();
        Reading reading = new Reading(file, latest);
        Yaml.Read<Boat> read = text == null ? null : Yaml.read(text, BoatShape.BOAT, reading, found);
        found.addAll(check.references(reading));
        if (read != null) {
            found.addAll(check.problems(file, id, read));
        }
        List<Sheet.Row<HistoryLine>> lines =
                rows(layout, FolderLayout.history(id), HistorySheet.ONE_BOAT, latest, problems);
        List<Sheet.Row<MeterReading>> hours =
                rows(layout, FolderLayout.hours(id), HoursSheet.ONE_BOAT, latest, problems);
        problems.noteAll(found);
        List<Problem> remarks = new ArrayList<>();
        if (read != null) {
            remarks.addAll(BoatCheck.unusual(file, read));
            remarks.addAll(check.history(read.value(), lines, hours));
        }
        BoatHistory history = BoatHistory.of(id, values(lines), values(hours));
        return new BoatFile(
                id, Optional.ofNullable(read).map(Yaml.Read::value), () -> history, problems.inOrder(), remarks);
    }

    /** The same with its history packed, for a yard that stays open. */
    BoatFile pack() {
        return new BoatFile(id, boat, packed(), problems, remarks);
    }

    /** Its history, packed. */
    Histories.Packed packed() {
        return history instanceof Histories.Packed packed
                ? packed
                : new Histories.Packed(Histories.packing().pack(BoatHistory.class, history.get()));
    }

    private static <R> List<R> values(List<Sheet.Row<R>> rows) {
        return rows.stream().map(Sheet.Row::value).toList();
    }

    private static <R> List<Sheet.Row<R>> rows(
            FolderLayout layout, String file, Sheet<R> sheet, LocalDate latest, Problems problems) {
        if (!layout.holds(file)) {
            return List.of();
        }
        String text = layout.text(file, problems);
        if (text == null) {
            return List.of();
        }
        List<Problem> found = new ArrayList<>();
        List<Sheet.Row<R>> rows = sheet.read(text, new Reading(file, latest), found);
        problems.noteAll(found);
        return rows;
    }

    /** Puts boats, all of them right, into what the rest of the folder says. */
    static YardFiles into(YardFiles rest, List<BoatFile> files) {
        Map<String, Boat> boats = new LinkedHashMap<>();
        Map<String, Supplier<BoatHistory>> histories = new LinkedHashMap<>();
        List<Problem> remarks = new ArrayList<>();
        for (BoatFile file : files) {
            file.boat.ifPresent(b -> boats.put(b.id(), b));
            histories.put(file.id, file.history);
            remarks.addAll(file.remarks);
        }
        return new YardFiles(
                rest.yard(),
                rest.berths(),
                rest.catalogue(),
                rest.generic(),
                rest.programmes(),
                boats,
                Histories.of(histories),
                remarks);
    }
}
