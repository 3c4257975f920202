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

/**
 * A table from outside the yard, as a spreadsheet wrote it.
 *
 * @param name of its file, for problems
 * @param text what it says
 */
public record TableFile(String name, String text) {
    /**
     * Reads a file.
     *
     * @param file the file
     * @param expected the columns it should have, for advice
     * @return the table
     * @throws BadInput if there is no such file or it is not text
     * @throws IOException if the disk refuses
     */
    public static TableFile of(Path file, String expected) throws IOException {
        try {
            return new TableFile(String.valueOf(file.getFileName()), Files.readString(file));
        } catch (NoSuchFileException missing) {
            throw BadInput.of(file.toString(), "there is no such file", "a CSV table: " + expected, "");
        } catch (MalformedInputException notText) {
            throw BadInput.of(file.toString(), "not UTF-8 text", "", "Save it from the spreadsheet as CSV UTF-8.");
        }
    }

    /**
     * Reads its rows.
     *
     * @param <R> one row
     * @param sheet its columns
     * @param latest the last day on which anything can have happened
     * @param problems takes every row that is wrong
     * @return the rows that are right
     */
    public <R> List<Sheet.Row<R>> read(Sheet<R> sheet, LocalDate latest, List<Problem> problems) {
        return sheet.read(text, new Reading(name, latest), problems);
    }
}
