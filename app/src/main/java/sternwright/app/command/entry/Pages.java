package sternwright.app.command.entry;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Opens the pages of a yard. Given by the entry of the program, so that no command has to know the pages. */
@FunctionalInterface
public interface Pages {
    /** For where there are none, as in tests of the other commands. */
    Pages NONE = (ask, out) -> {
        throw new IllegalStateException("this program has no pages");
    };

    /**
     * How they are asked to be opened.
     *
     * @param yard the yard's folder
     * @param address address to listen on
     * @param port port to listen on, 0 for any that is free
     * @param names further names of the machine
     * @param behindProxy whether a proxy stands in front
     * @param plainPort null for http; for https of the pages' own the port where phones fetch the root certificate
     * @param today the day to take for today, null for the clock's
     */
    record Ask(
            Path yard,
            String address,
            int port,
            List<String> names,
            boolean behindProxy,
            @Nullable Integer plainPort,
            @Nullable LocalDate today) {
        /** Copies the list. */
        public Ask {
            names = List.copyOf(names);
        }
    }

    /**
     * Opens them and stays until the program is ended.
     *
     * @param ask how
     * @param out where the address is said
     * @throws IOException if the disk refuses
     * @throws InterruptedException if the program is told to end
     */
    void open(Ask ask, PrintWriter out) throws IOException, InterruptedException;
}
