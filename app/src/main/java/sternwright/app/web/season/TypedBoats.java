package sternwright.app.web.season;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sternwright.boat.Boat;

/**
 * Boats by what is typed for them: the name, with the id behind it where several boats have it.
 *
 * @param idOf id by what is typed, in lower case, in the order of names
 * @param words what is offered while somebody types
 */
record TypedBoats(Map<String, String> idOf, List<String> words) {
    static TypedBoats of(Collection<Boat> boats) {
        Map<String, Long> times = boats.stream()
                .collect(Collectors.groupingBy(b -> b.name().toLowerCase(Locale.ROOT), Collectors.counting()));
        Map<String, String> idOf = new LinkedHashMap<>();
        List<String> words = boats.stream()
                .sorted(Comparator.comparing(Boat::name).thenComparing(Boat::id))
                .map(b -> {
                    boolean alone = times.getOrDefault(b.name().toLowerCase(Locale.ROOT), 0L) == 1;
                    String word = alone ? b.name() : b.name() + " (" + b.id() + ")";
                    idOf.put(word.toLowerCase(Locale.ROOT), b.id());
                    return word;
                })
                .toList();
        boats.forEach(b -> idOf.putIfAbsent(b.id(), b.id()));
        return new TypedBoats(idOf, words);
    }

    /** The boat that is meant; empty if there is none, or several have that name. */
    Optional<String> id(String typed) {
        return Optional.ofNullable(idOf.get(typed.strip().toLowerCase(Locale.ROOT)));
    }
}
