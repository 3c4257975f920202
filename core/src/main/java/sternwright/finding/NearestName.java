package sternwright.finding;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/**
 * The known name a slip of the pen most likely meant. Names are compared as wholes and word by word, so that
 * {@code impeller} finds {@code renew-impeller} and {@code chnge-oil} finds {@code change-engine-oil}. Similarity: Jaro and
 * Winkler (as in Apache Commons Text), which forgives swapped letters and weighs the beginning.
 */
public final class NearestName {
    private static final JaroWinklerSimilarity SIMILARITY = new JaroWinklerSimilarity();
    /** Less alike than this is no suggestion but a guess. */
    private static final double ALIKE = 0.8;
    /** A word this alike is the same word, misspelt. */
    private static final double SAME_WORD = 0.9;
    /** All words found, others beside them: a little less than the whole name. */
    private static final double WORDS_ONLY = 0.95;

    private static final int SHORTEST_BEGINNING = 3;
    private static final double AS_GOOD = 0.02;

    private NearestName() {}

    /**
     * The nearest known name, letter case passed over.
     *
     * @param written the name as written
     * @param known the names there are
     * @return the nearest; empty if none is alike
     */
    public static Optional<String> of(String written, Collection<String> known) {
        return several(written, known, 1).stream().findFirst();
    }

    /**
     * The nearest known names that are as good as each other.
     *
     * @param written the name as written
     * @param known the names there are
     * @param most how many at most
     * @return the nearest first; empty if none is alike
     */
    public static List<String> several(String written, Collection<String> known, int most) {
        String lower = written.strip().toLowerCase(Locale.ROOT);
        List<Near> near = known.stream()
                .distinct()
                .map(name -> new Near(name, alike(lower, name.toLowerCase(Locale.ROOT))))
                .filter(n -> n.alike >= ALIKE)
                .sorted(Comparator.comparingDouble(Near::alike)
                        .reversed()
                        .thenComparing(n -> n.name.length())
                        .thenComparing(Near::name))
                .toList();
        return near.stream()
                .filter(n -> n.alike >= near.get(0).alike - AS_GOOD)
                .limit(most)
                .map(Near::name)
                .toList();
    }

    private static double alike(String written, String name) {
        double whole = SIMILARITY.apply(written, name);
        List<String> words = words(written);
        if (words.isEmpty()) {
            return whole;
        }
        List<String> there = words(name);
        double[] found = words.stream()
                .mapToDouble(
                        w -> there.stream().mapToDouble(t -> word(w, t)).max().orElse(0))
                .toArray();
        double mean = Arrays.stream(found).average().orElse(0);
        double worst = Arrays.stream(found).min().orElse(0);
        return Math.max((whole + mean) / 2, worst >= SAME_WORD ? WORDS_ONLY * mean : 0);
    }

    private static double word(String written, String word) {
        boolean beginning = written.length() >= SHORTEST_BEGINNING && word.startsWith(written);
        return Math.max(SIMILARITY.apply(written, word), beginning ? WORDS_ONLY : 0);
    }

    private static List<String> words(String name) {
        return Stream.of(name.split("[^\\p{L}\\p{N}]+"))
                .filter(w -> !w.isEmpty())
                .toList();
    }

    private record Near(String name, double alike) {}
}
