package sternwright.app.desk.recording;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.safe.StagedFiles;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.Sheet;
import sternwright.history.MeterReading;
import sternwright.history.ServiceEntry;

/** Adds lines to the tables of a boat; what stands in them already stays as it is, byte for byte. */
public final class Appending {
    private Appending() {}

    public static void history(FolderLayout layout, String boatId, List<ServiceEntry> entries, StagedFiles staged)
            throws IOException {
        append(layout.history(boatId), HistorySheet.ONE_BOAT, entries, staged);
    }

    public static void hours(FolderLayout layout, String boatId, List<MeterReading> readings, StagedFiles staged)
            throws IOException {
        append(layout.hours(boatId), HoursSheet.ONE_BOAT, readings, staged);
    }

    private static <R> void append(Path file, Sheet<R> sheet, List<R> rows, StagedFiles staged) throws IOException {
        if (rows.isEmpty()) {
            return;
        }
        String before = Files.exists(file) ? Files.readString(file) : "";
        staged.put(file, before.isBlank() ? sheet.write(rows) : sheet.append(before, rows));
    }
}
