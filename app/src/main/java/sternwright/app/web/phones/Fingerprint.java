package sternwright.app.web.phones;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** A fingerprint as two people compare it: four lines of eight pairs. */
final class Fingerprint {
    private static final Pattern EIGHT = Pattern.compile("(?:[0-9A-F]{2}:?){1,8}");

    private Fingerprint() {}

    static List<String> lines(String fingerprint) {
        return EIGHT.matcher(fingerprint)
                .results()
                .map(MatchResult::group)
                .map(l -> l.replace(':', ' ').strip())
                .toList();
    }
}
