package sternwright.app.files.problem;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import sternwright.finding.NearestName;

/** Advice on a name that is not known. */
public final class KnownNames {
    /** More names than this are not listed in a message: nobody would read them. */
    private static final int LISTED = 12;

    private static final int SUGGESTED = 3;

    private KnownNames() {}

    /**
     * Names the nearest known name, up to three if several are as near, or the first dozen if none is near.
     *
     * @param written what was written
     * @param known names that exist
     * @return a sentence
     */
    public static String advice(String written, Collection<String> known) {
        List<String> nearest = NearestName.several(written, known, SUGGESTED);
        if (!nearest.isEmpty()) {
            String last = nearest.get(nearest.size() - 1);
            String others = nearest.stream()
                    .limit(nearest.size() - 1L)
                    .map(n -> "\"" + n + "\"")
                    .collect(Collectors.joining(", "));
            return "Perhaps " + (others.isEmpty() ? "" : others + " or ") + "\"" + last + "\" is meant.";
        }
        if (known.isEmpty()) {
            return "None is known yet.";
        }
        String list = known.stream().sorted().limit(LISTED).collect(Collectors.joining(", "));
        return "Known: " + list + (known.size() > LISTED ? " and " + (known.size() - LISTED) + " more." : ".");
    }
}
