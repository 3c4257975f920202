package sternwright.app.files.problem;

import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;
import sternwright.finding.NearestName;

/** Advice on a name that is not known. */
public final class KnownNames {
    /** More names than this are not listed in a message: nobody would read them. */
    private static final int LISTED = 12;

    private KnownNames() {}

    /**
     * Names the nearest known name, or the first dozen if none is near.
     *
     * @param written what was written
     * @param known names that exist
     * @return a sentence
     */
    public static String advice(String written, Collection<String> known) {
        Optional<String> nearest = NearestName.of(written, known);
        if (nearest.isPresent()) {
            return "Perhaps \"" + nearest.get() + "\" is meant.";
        }
        if (known.isEmpty()) {
            return "None is known yet.";
        }
        String list = known.stream().sorted().limit(LISTED).collect(Collectors.joining(", "));
        return "Known: " + list + (known.size() > LISTED ? " and " + (known.size() - LISTED) + " more." : ".");
    }
}
