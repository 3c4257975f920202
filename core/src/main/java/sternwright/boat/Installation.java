package sternwright.boat;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One engine with everything between it and the water.
 *
 * @param id short name, unique in its boat
 * @param side where it sits
 * @param arrangement how power gets to the water
 * @param cooling how the engine is cooled
 * @param engineModel the maker's model as on the plate, by which rules are overridden; null if not known
 * @param powerKw rated power, kW; null if not known
 * @param parts its parts, parents before children
 */
public record Installation(
        String id,
        Side side,
        Arrangement arrangement,
        Cooling cooling,
        @Nullable String engineModel,
        @Nullable Double powerKw,
        List<Part> parts) {
    /** Copies the list. */
    public Installation {
        parts = List.copyOf(parts);
    }

    /**
     * The part of an id, if there is one.
     *
     * @param partId short name
     * @return the part
     */
    public Optional<Part> part(String partId) {
        return parts.stream().filter(p -> p.id().equals(partId)).findFirst();
    }
}
