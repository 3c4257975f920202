package sternwright.app.desk.campaign;

import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which works of a due list are asked for.
 *
 * @param wanted values by facet; a row must have one of them in every facet that is named
 * @param dueBy due on this day or before; null for any day
 * @param boatId of this boat; null for any
 */
public record DueFilter(
        Map<Facet, Set<String>> wanted,
        @Nullable LocalDate dueBy,
        @Nullable String boatId) {
    /** Everything. */
    public static final DueFilter ALL = new DueFilter(Map.of(), null, null);

    /** Copies, without facets that name nothing. */
    public DueFilter {
        wanted = wanted.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, e -> Set.copyOf(e.getValue())));
    }

    /**
     * A filter from what stands in an address; names that are no facets are passed over, as are empty values.
     *
     * @param parameters values by name
     * @param dueBy due on this day or before; null for any day
     * @return the filter
     */
    public static DueFilter of(Map<String, ? extends Collection<String>> parameters, @Nullable LocalDate dueBy) {
        Map<Facet, Set<String>> wanted = new EnumMap<>(Facet.class);
        parameters.forEach((name, values) -> Facet.of(name)
                .ifPresent(f ->
                        wanted.put(f, values.stream().filter(v -> !v.isBlank()).collect(Collectors.toSet()))));
        return new DueFilter(wanted, dueBy, null);
    }

    /**
     * The same for one boat.
     *
     * @param id the boat
     * @return the filter
     */
    public DueFilter ofBoat(String id) {
        return new DueFilter(wanted, dueBy, id);
    }

    /**
     * What is wanted of a facet.
     *
     * @param facet the facet
     * @return values; empty if any will do
     */
    public Set<String> values(Facet facet) {
        return Optional.ofNullable(wanted.get(facet)).orElse(Set.of());
    }

    /** Whether a row is of the days and the boat asked for. */
    boolean open(DueRow row) {
        return (dueBy == null || !row.due().dueOn().isAfter(dueBy))
                && (boatId == null || boatId.equals(row.boat().id()));
    }
}
