package sternwright.app.files.sheet;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;

/** A table from outside the yard's folder. */
public final class TableFile {
    private TableFile() {}

    /**
     * Reads it.
     *
     * @param <R> one row
     * @param file the file
     * @param sheet its columns
     * @param latest the last day on which anything can have happened
     * @param problems takes every row that is wrong
     * @return the rows that are right
     * @throws BadInput if there is no such file or it is not text
     * @throws IOException if the disk refuses
     */
    public static <R> List<Sheet.Row<R>> read(Path file, Sheet<R> sheet, LocalDate latest, List<Problem> problems)
            throws IOException {
        try {
            String text = Files.readString(file);
            return sheet.read(text, new Reading(String.valueOf(file.getFileName()), latest), problems);
        } catch (NoSuchFileException missing) {
            throw BadInput.of(file.toString(), "there is no such file", "a CSV table: " + sheet.header(), "");
        } catch (MalformedInputException notText) {
            throw BadInput.of(file.toString(), "not UTF-8 text", "", "Save it from the spreadsheet as CSV UTF-8.");
        }
    }
}
