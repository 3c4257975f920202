package sternwright.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The known name a slip of the pen most likely meant. */
public final class NearestName {
    private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();

    private NearestName() {}

    /**
     * The nearest known name by edit distance, letter case passed over.
     *
     * @param written the name as written
     * @param known the names there are
     * @return the nearest; empty if not even half the letters agree
     */
    public static Optional<String> of(String written, Collection<String> known) {
        String lower = written.toLowerCase(Locale.ROOT);
        return known.stream()
                .map(name -> new Near(name, DISTANCE.apply(lower, name.toLowerCase(Locale.ROOT))))
                .filter(near -> near.edits * 2 <= Math.max(lower.length(), near.name.length()))
                .min(Comparator.comparingInt(Near::edits).thenComparing(Near::name))
                .map(Near::name);
    }

    private record Near(String name, int edits) {}
}
