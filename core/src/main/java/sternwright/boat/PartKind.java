package sternwright.boat;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A kind of part in the catalogue. The catalogue is open: a yard adds kinds in its own files.
 *
 * @param id short name, such as {@code raw-water-pump}
 * @param name as people say it
 * @param servicePoint where on the installation one works on it; works at one point share the set-up
 * @param wet in the water outside the hull, so that it takes part in the protection circuit
 * @param usualMetal the metal it is usually made of, null if not metal or not wet
 * @param capacityOf what its capacity is of, such as {@code engine-oil}; null if it holds nothing
 * @param tags words by which rules choose kinds, such as {@code underwater-anode}
 */
public record PartKind(
        String id,
        String name,
        String servicePoint,
        boolean wet,
        @Nullable String usualMetal,
        @Nullable String capacityOf,
        Set<String> tags) {
    /** Copies the set. */
    public PartKind {
        tags = Set.copyOf(tags);
    }
}
