package sternwright.app.desk.season;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.safe.SafeFile;
import sternwright.app.paper.Figures;
import sternwright.app.paper.Paper;
import sternwright.app.paper.SeasonPaper;
import sternwright.app.paper.calendar.SeasonCalendars;

/** Writes what people hold in their hands: the board and the calendars. */
public final class SeasonPapers {
    private final PlannedSeason planned;
    private final LocalDate today;

    /**
     * Papers of a season.
     *
     * @param planned the season
     * @param today the day called today
     */
    public SeasonPapers(PlannedSeason planned, LocalDate today) {
        this.planned = planned;
        this.today = today;
    }

    /**
     * The board as a paper.
     *
     * @param locale the reader's
     * @return page and printable page
     */
    public Paper board(Locale locale) {
        return new SeasonPaper(planned.yard().yard(), planned.dated(), today, planned.remarks())
                .paper(Figures.of(locale));
    }

    /**
     * Writes the board.
     *
     * @param file a page if its name ends in .html, paper if it ends in .pdf
     * @throws IOException if the disk refuses
     */
    public void board(Path file) throws IOException {
        requireEnding(file);
        Paper paper = board(Figures.of(Locale.getDefault()).locale());
        if (ending(file).endsWith(".pdf")) {
            Files.write(file, paper.pdf());
        } else {
            SafeFile.write(file, paper.html());
        }
    }

    /**
     * Refuses a name that says neither page nor paper.
     *
     * @param file the file asked for
     * @throws BadInput if it is neither
     */
    public static void requireEnding(Path file) {
        String name = ending(file);
        if (!name.endsWith(".html") && !name.endsWith(".pdf")) {
            throw BadInput.of(
                    "--board", "found \"" + file + "\"", "a name that ends in .html or .pdf", "Name it board.html.");
        }
    }

    private static String ending(Path file) {
        return file.toString().toLowerCase(Locale.ROOT);
    }

    /**
     * Writes one calendar file for each of the crew and for each boat.
     *
     * @param folder where; made if it is not there
     * @return how many
     * @throws IOException if the disk refuses
     */
    public int calendars(Path folder) throws IOException {
        SeasonCalendars calendars = new SeasonCalendars(planned.yard().yard().name(), today.atStartOfDay());
        Map<String, String> people = calendars.people(planned.dated());
        Map<String, String> boats = calendars.boats(planned.dated());
        write(folder.resolve("people"), people);
        write(folder.resolve("boats"), boats);
        return people.size() + boats.size();
    }

    private static void write(Path folder, Map<String, String> texts) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, String> text : texts.entrySet()) {
            String name = text.getKey().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}._-]+", "-");
            Files.write(folder.resolve(name + ".ics"), text.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }
}
