package sternwright.service.check;

import java.util.Collection;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.finding.NearestName;

/**
 * Something in a programme that cannot be relied on.
 *
 * @param programme id of the programme
 * @param where the rule or overriding and the field in it, such as {@code rule renew-mounts, interval.unless-lasts-to}
 * @param written what is written there
 * @param expected what is expected, and what to do
 * @param nearest the nearest known name, null if there is none
 */
public record ProgrammeFault(
        String programme,
        String where,
        String written,
        String expected,
        @Nullable String nearest) {

    /** A name that is not known. */
    static ProgrammeFault unknown(
            String programme, String where, String written, String what, Collection<String> known) {
        Optional<String> near = NearestName.of(written, known);
        return new ProgrammeFault(
                programme, where, written, "there is no " + what + " of this name", near.orElse(null));
    }

    /**
     * The fault as one line.
     *
     * @return where, what is written, what is expected, the nearest name
     */
    public String line() {
        return "programme " + programme + ", " + where + ": \"" + written + "\": " + expected
                + (nearest == null ? "" : "; did you mean \"" + nearest + "\"?");
    }
}
