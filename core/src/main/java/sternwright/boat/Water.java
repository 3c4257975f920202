package sternwright.boat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The water of a berth. Either salinity or resistivity is given; both null means not known.
 *
 * @param salinityPsu practical salinity, 0 to 42
 * @param resistivityOhmM measured resistivity at 25 °C, Ω m; leads over salinity
 * @param temperatureC water temperature of the months January to December, °C; empty if not known
 */
public record Water(@Nullable Double salinityPsu, @Nullable Double resistivityOhmM, List<Double> temperatureC) {
    /** Copies the list. */
    public Water {
        temperatureC = List.copyOf(temperatureC);
    }
}
