package sternwright.app.desk.season.run;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.season.SeasonAsk;
import sternwright.app.files.shelf.Shelf;
import sternwright.season.dated.event.SeasonEvent;
import tools.jackson.databind.json.JsonMapper;

/**
 * What is asked of a run of the season; what {@link SeasonAsk} says, without where and by which clock.
 *
 * @param today the day called today
 * @param to last day of the season, null for two months after the recommission ends
 * @param fresh plan without regard to the published plan; promises are kept all the same
 * @param events what has happened
 * @param seconds how long to search in all
 * @param seed seed of all random draws
 * @param published version of {@code season.csv} when it was asked, empty if no plan was published; whoever publishes the run's plan
 *     is told if another was published since; null where that does not matter
 */
public record RunAsk(
        LocalDate today,
        @Nullable LocalDate to,
        boolean fresh,
        List<SeasonEvent> events,
        double seconds,
        long seed,
        @Nullable String published) {
    /** Copies the list. */
    public RunAsk {
        events = List.copyOf(events);
    }

    /** A run that is published whatever was published since. */
    public RunAsk(
            LocalDate today,
            @Nullable LocalDate to,
            boolean fresh,
            List<SeasonEvent> events,
            double seconds,
            long seed) {
        this(today, to, fresh, events, seconds, seed, null);
    }

    /** Says which kind of event each is, by its name. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.SIMPLE_NAME)
    private interface Kind {}

    private static final JsonMapper MAPPER = mapper();

    private static JsonMapper mapper() {
        JsonMapper.Builder builder = JsonMapper.builder().addMixIn(SeasonEvent.class, Kind.class);
        builder.registerSubtypes(SeasonEvent.class.getPermittedSubclasses());
        return builder.build();
    }

    String text() {
        return MAPPER.writeValueAsString(this);
    }

    /**
     * What a run was asked.
     *
     * @param text as it stands with the run
     * @return the same
     */
    public static RunAsk of(String text) {
        return MAPPER.readValue(text, RunAsk.class);
    }

    SeasonAsk on(Shelf shelf, double sliceSeconds, long sliceSeed, LongSupplier nanoClock) {
        return new SeasonAsk(shelf, today, today, to, fresh, events, sliceSeconds, sliceSeed, nanoClock);
    }
}
