package sternwright.app.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.due.Due;

/** An invented yard, written and read once for all tests of the desk. */
public final class InventedDesk {
    /** The day called today. */
    public static final LocalDate TODAY = LocalDate.of(2026, 10, 5);

    private static final int BOATS = 40;

    private static final class Once {
        static final Path FOLDER = folder();
        static final YardFiles YARD = YardFolder.all(FOLDER, TODAY);
        static final SeasonFiles SEASON = SeasonFolder.read(FOLDER, TODAY);
        static final List<Due> DUES = new DueWork(YARD).all(TODAY);

        private static Path folder() {
            try {
                Path folder = Files.createTempDirectory("invented-desk");
                folder.toFile().deleteOnExit();
                new InventedFolder(InventedFolder.Where.NORTH).write(folder, BOATS, TODAY, 7);
                return folder;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private InventedDesk() {}

    /** The yard's files. */
    public static YardFiles yard() {
        return Once.YARD;
    }

    /** What they say of the season. */
    public static SeasonFiles season() {
        return Once.SEASON;
    }

    /** What is due. */
    public static List<Due> dues() {
        return Once.DUES;
    }

    /** Where it stands. */
    public static Path folder() {
        return Once.FOLDER;
    }
}
