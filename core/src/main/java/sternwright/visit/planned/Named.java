package sternwright.visit.planned;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** A work and its part without saying one thing twice. */
public final class Named {
    private Named() {}

    /**
     * The work with the part.
     *
     * @param work what is done, as an order
     * @param partName the part as people say it, its side after a comma where there are two
     * @return both; the side alone, or nothing, after a work that names the part
     */
    public static String of(String work, String partName) {
        int comma = partName.indexOf(", ");
        String part = comma < 0 ? partName : partName.substring(0, comma);
        String side = comma < 0 ? "" : partName.substring(comma);
        Set<String> said = words(work);
        boolean named = Arrays.stream(part.split(" and ")).anyMatch(p -> said.containsAll(words(p)));
        return named ? work + side : work + ", " + partName;
    }

    /** The words of a phrase, singular and plural taken for the same. */
    private static Set<String> words(String phrase) {
        Set<String> words = new HashSet<>();
        for (String w : phrase.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
            if (!w.isEmpty()) {
                words.add(w.endsWith("s") ? w.substring(0, w.length() - 1) : w);
            }
        }
        return words;
    }
}
