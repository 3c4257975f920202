package sternwright.app.desk.recording;

import java.io.IOException;
import java.util.List;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.history.HistoryLine;
import sternwright.history.MeterReading;

/** Adds lines to the tables of a boat; what stands in them already stays as it is, byte for byte. */
public final class Appending {
    private Appending() {}

    /** Adds lines to the history of a boat. */
    public static void history(Shelf shelf, String boatId, List<HistoryLine> lines, Writing writing)
            throws IOException {
        append(shelf, FolderLayout.history(boatId), HistorySheet.ONE_BOAT, lines, writing);
    }

    /** Adds lines to the meter readings of a boat. */
    public static void hours(Shelf shelf, String boatId, List<MeterReading> readings, Writing writing)
            throws IOException {
        append(shelf, FolderLayout.hours(boatId), HoursSheet.ONE_BOAT, readings, writing);
    }

    private static <R> void append(Shelf shelf, String name, Sheet<R> sheet, List<R> rows, Writing writing)
            throws IOException {
        if (rows.isEmpty()) {
            return;
        }
        String before = shelf.text(name).orElse("");
        writing.put(name, before.isBlank() ? sheet.write(rows) : sheet.append(before, rows));
    }
}
