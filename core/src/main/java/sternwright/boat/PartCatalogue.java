package sternwright.boat;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All kinds of part known to the yard, by id, in the order given.
 *
 * @param kinds the kinds; a later one of the same id replaces the earlier
 */
public record PartCatalogue(List<PartKind> kinds) {
    /** Keeps the last of each id, so that a yard can replace a shipped kind. */
    public PartCatalogue {
        Map<String, PartKind> byId = new LinkedHashMap<>();
        kinds.forEach(k -> byId.put(k.id(), k));
        kinds = List.copyOf(byId.values());
    }

    /**
     * The kind of an id, if there is one.
     *
     * @param id short name
     * @return the kind
     */
    public Optional<PartKind> find(String id) {
        return kinds.stream().filter(k -> k.id().equals(id)).findFirst();
    }

    /**
     * The same catalogue with the yard's own kinds added or replaced.
     *
     * @param more the yard's kinds
     * @return a new catalogue
     */
    public PartCatalogue with(Collection<PartKind> more) {
        List<PartKind> all = new java.util.ArrayList<>(kinds);
        all.addAll(more);
        return new PartCatalogue(all);
    }
}
