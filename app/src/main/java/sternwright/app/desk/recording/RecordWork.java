package sternwright.app.desk.recording;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.safe.StagedFiles;
import sternwright.app.files.safe.YardLock;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.service.ReadingAsked;

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
     * @param entries the lines as they were written
     * @param before the due list before
     * @param after the due list after
     * @param remarks what a person should know, such as a reading out of line
     */
    public record Recorded(List<ServiceEntry> entries, List<Due> before, List<Due> after, List<String> remarks) {
        /** Copies the lists. */
        public Recorded {
            entries = List.copyOf(entries);
            before = List.copyOf(before);
            after = List.copyOf(after);
            remarks = List.copyOf(remarks);
        }
    }

    private RecordWork() {}

    /**
     * Records it.
     *
     * @param root the yard's folder
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
            Path root, String boatId, Said said, LocalDate today, LocalDate latest, boolean asRead) throws IOException {
        FolderLayout layout = FolderLayout.of(root);
        try (YardLock lock = YardLock.take(root)) {
            YardFiles files = YardFolder.only(root, List.of(boatId), latest);
            DueWork work = new DueWork(files);
            Boat boat = files.boats().values().iterator().next();
            BoatHistory before = files.history(boatId);
            List<Problem> wrong = new ArrayList<>();
            MeterSense.check(boat, before, said.meter(), asRead).forEach(wrong::add);
            List<ServiceEntry> entries = new ArrayList<>();
            for (Sheet.Row<ServiceEntry> row : said.entries()) {
                ServiceEntry entry = MeterSense.withHours(row.value(), before, said.meter());
                EntrySense.check(boat, work, entry, new EntrySense.Where(said.source(), row.line()), latest)
                        .forEach(wrong::add);
                entries.add(entry);
            }
            if (!wrong.isEmpty()) {
                throw new BadInput(wrong);
            }
            BoatHistory after = together(before, entries, said.meter());
            StagedFiles staged = new StagedFiles(root);
            Appending.history(layout, boatId, entries, staged);
            Appending.hours(layout, boatId, said.meter(), staged);
            staged.commit();
            return new Recorded(
                    entries, work.of(boat, before, today), work.of(boat, after, today), remarks(work, boat, entries));
        }
    }

    private static BoatHistory together(BoatHistory before, List<ServiceEntry> entries, List<MeterReading> meter) {
        List<ServiceEntry> all = new ArrayList<>(before.entries());
        all.addAll(entries);
        List<MeterReading> readings = new ArrayList<>(before.meter());
        readings.addAll(meter);
        return new BoatHistory(before.boatId(), all, readings);
    }

    /** Readings that the rule does not ask for are kept; they are said, because a slip of the pen looks the same. */
    private static List<String> remarks(DueWork work, Boat boat, List<ServiceEntry> entries) {
        List<String> remarks = new ArrayList<>();
        for (ServiceEntry e : entries) {
            List<String> asked = work.rules(boat, e.part()).stream()
                    .filter(r -> r.id().equals(e.ruleId()))
                    .flatMap(r -> r.readings().stream())
                    .map(ReadingAsked::name)
                    .toList();
            e.readings().stream()
                    .filter(r -> e.outcome() != Outcome.HAPPENED && !asked.contains(r.name()))
                    .forEach(r -> remarks.add("reading " + r.name() + " is not asked for by " + e.ruleId()
                            + "; it was kept. " + KnownNames.advice(r.name(), asked)));
        }
        return remarks;
    }
}
