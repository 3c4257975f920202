package sternwright.app.files.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known name that a person most likely meant. */
public final class NearestName {
    /** More names than this are not listed in a message: nobody would read them. */
    private static final int LISTED = 12;

    private NearestName() {}

    /**
     * The known name nearest to what was written, if it is near enough to be a slip of the pen: at most a third of its
     * letters differ, or one contains the other.
     *
     * @param written what was written
     * @param known names that exist
     * @return the nearest name
     */
    public static Optional<String> to(String written, Collection<String> known) {
        String low = written.toLowerCase(Locale.ROOT);
        return known.stream()
                .min(Comparator.comparingInt((String k) -> distance(low, k)).thenComparing(k -> k))
                .filter(k -> near(low, k));
    }

    /**
     * Advice that names the nearest known name, or all of them if they are few.
     *
     * @param written what was written
     * @param known names that exist
     * @return a sentence; empty if nothing is known
     */
    public static String advice(String written, Collection<String> known) {
        Optional<String> nearest = to(written, known);
        if (nearest.isPresent()) {
            return "Perhaps \"" + nearest.get() + "\" is meant.";
        }
        if (known.isEmpty()) {
            return "None is known yet.";
        }
        String list = known.stream().sorted().limit(LISTED).collect(Collectors.joining(", "));
        return "Known: " + list + (known.size() > LISTED ? " and " + (known.size() - LISTED) + " more." : ".");
    }

    private static int distance(String low, String known) {
        return LevenshteinDistance.getDefaultInstance().apply(low, known.toLowerCase(Locale.ROOT));
    }

    private static boolean near(String low, String known) {
        String other = known.toLowerCase(Locale.ROOT);
        boolean inside = low.length() >= 3 && (other.contains(low) || (other.length() >= 3 && low.contains(other)));
        return inside || distance(low, known) <= Math.max(1, Math.max(low.length(), other.length()) / 3);
    }
}
