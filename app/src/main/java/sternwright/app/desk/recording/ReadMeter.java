package sternwright.app.desk.recording;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import sternwright.app.files.shelf.Shelf;
import sternwright.history.MeterReading;

/** Writes down what an hour meter showed, or that it was replaced. */
public final class ReadMeter {
    private ReadMeter() {}

    /**
     * Records one reading.
     *
     * @param shelf where the yard's texts are kept
     * @param boatId the boat
     * @param reading what the meter showed
     * @param today the day called today
     * @param latest the last day on which anything can have happened
     * @param asRead true if a reading out of line is to be kept as read
     * @return how the due list moved
     * @throws IOException if the disk refuses
     */
    public static RecordWork.Recorded read(
            Shelf shelf, String boatId, MeterReading reading, LocalDate today, LocalDate latest, boolean asRead)
            throws IOException {
        RecordWork.Said said = new RecordWork.Said("command line", List.of(), List.of(reading));
        return RecordWork.record(shelf, boatId, said, today, latest, asRead);
    }
}
