package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.List;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.shelf.Shelf;
import sternwright.season.dated.event.SeasonEvent;

/**
 * What is asked of the desk.
 *
 * @param shelf where the yard's texts are kept
 * @param today the day called today
 * @param latest the last day on which anything can have happened
 * @param to last day of the season, null for two months after the recommission ends
 * @param fresh plan without regard to the published plan; promises are kept all the same
 * @param events what has happened
 * @param seconds how long to search
 * @param seed seed of all random draws
 * @param nanoClock a clock of nanoseconds
 */
public record SeasonAsk(
        Shelf shelf,
        LocalDate today,
        LocalDate latest,
        @Nullable LocalDate to,
        boolean fresh,
        List<SeasonEvent> events,
        double seconds,
        long seed,
        LongSupplier nanoClock) {
    /** Copies the list. */
    public SeasonAsk {
        events = List.copyOf(events);
    }
}
