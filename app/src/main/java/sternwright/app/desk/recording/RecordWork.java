package sternwright.app.desk.recording;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.history.BoatHistory;
import sternwright.history.HistoryLine;
import sternwright.history.MeterReading;
import sternwright.history.ServiceEntry;

/** Writes down what was done, seen, refused or happened on one boat, and tells how her due list moved. */
public final class RecordWork {
    /**
     * What a person says was done.
     *
     * @param source where it was said: a file, or the command line
     * @param entries lines for the history; their hours may be left out where a meter was read
     * @param meter hour meters read on that day
     */
    public record Said(String source, List<Sheet.Row<ServiceEntry>> entries, List<MeterReading> meter) {
        /** Copies the lists. */
        public Said {
            entries = List.copyOf(entries);
            meter = List.copyOf(meter);
        }
    }

    /**
     * What came of it.
     *
     * @param entries the lines as they were written, readings judged
     * @param meter the meter readings that were written
     * @param before the due list before
     * @param after the due list after
     * @param remarks what a person should know, such as a reading out of line
     */
    public record Recorded(
            List<ServiceEntry> entries,
            List<MeterReading> meter,
            List<Due> before,
            List<Due> after,
            List<String> remarks) {
        /** Copies the lists. */
        public Recorded {
            entries = List.copyOf(entries);
            meter = List.copyOf(meter);
            before = List.copyOf(before);
            after = List.copyOf(after);
            remarks = List.copyOf(remarks);
        }
    }

    private RecordWork() {}

    /**
     * Records it.
     *
     * @param shelf where the yard's texts are kept
     * @param boatId the boat
     * @param said what was done
     * @param today the day called today
     * @param latest the last day on which anything can have happened
     * @param asRead true if meter readings out of line are to be kept as read
     * @return what was written and how the due list moved
     * @throws BadInput with everything that is wrong; nothing was written then
     * @throws IOException if the disk refuses
     */
    public static Recorded record(
            Shelf shelf, String boatId, Said said, LocalDate today, LocalDate latest, boolean asRead)
            throws IOException {
        FolderLayout.of(shelf);
        try (Writing writing = shelf.write("work recorded on " + boatId)) {
            YardFiles files = YardFolder.only(shelf, List.of(boatId), latest);
            DueWork work = new DueWork(files);
            Boat boat = files.boats().values().iterator().next();
            BoatHistory before = files.history(boatId);
            List<Problem> wrong = new ArrayList<>();
            List<Sheet.Row<MeterReading>> meter = meter(said, before, wrong);
            wrong.addAll(MeterSense.check(boat, before, said.source(), meter, asRead));
            ReadingSense sense = new ReadingSense(work, boat, before);
            List<ServiceEntry> entries = new ArrayList<>();
            for (Sheet.Row<ServiceEntry> row : said.entries()) {
                EntrySense.Where where = new EntrySense.Where(said.source(), row.line());
                ServiceEntry entry =
                        sense.inUnitsAsked(CountedHours.withHours(row.value(), before, said.meter()), where, wrong);
                wrong.addAll(EntrySense.check(boat, work, entry, where, latest));
                entries.add(entry);
            }
            if (!wrong.isEmpty()) {
                throw new BadInput(wrong.stream().distinct().toList());
            }
            List<ServiceEntry> judged = entries.stream().map(sense::judged).toList();
            List<MeterReading> read = meter.stream().map(Sheet.Row::value).toList();
            Appending.history(
                    shelf, boatId, judged.stream().map(HistoryLine::of).toList(), writing);
            Appending.hours(shelf, boatId, read, writing);
            writing.commit();
            return new Recorded(
                    judged,
                    read,
                    work.of(boat, before, today),
                    work.of(boat, together(before, judged, read), today),
                    judged.stream().flatMap(e -> sense.remarks(e).stream()).toList());
        }
    }

    /** What the meters showed: as said, and as the lines of a table say by their hours. */
    private static List<Sheet.Row<MeterReading>> meter(Said said, BoatHistory before, List<Problem> wrong) {
        List<Sheet.Row<MeterReading>> meter = new ArrayList<>();
        said.meter().forEach(r -> meter.add(new Sheet.Row<>(0, r)));
        meter.addAll(CountedHours.shown(said.entries(), before, said.source(), wrong));
        return meter;
    }

    private static BoatHistory together(BoatHistory before, List<ServiceEntry> entries, List<MeterReading> meter) {
        List<ServiceEntry> all = new ArrayList<>(before.entries());
        all.addAll(entries);
        List<MeterReading> readings = new ArrayList<>(before.meter());
        readings.addAll(meter);
        return new BoatHistory(before.boatId(), all, readings, before.struck());
    }
}
