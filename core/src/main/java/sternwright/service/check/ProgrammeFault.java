package sternwright.service.check;

import java.util.Collection;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.finding.NearestName;

/**
 * Something in a programme that cannot be relied on.
 *
 * @param spot the programme, the rule or overriding and the field in it
 * @param written what is written there
 * @param expected what is expected, and what to do
 * @param nearest the nearest known name, null if there is none
 */
public record ProgrammeFault(
        Spot spot,
        String written,
        String expected,
        @Nullable String nearest) {

    /** A name that is not known. */
    static ProgrammeFault unknown(Spot spot, String written, String what, Collection<String> known) {
        Optional<String> near = NearestName.of(written, known);
        return new ProgrammeFault(spot, written, "there is no " + what + " of this name", near.orElse(null));
    }

    /**
     * The fault as one line.
     *
     * @return where, what is written, what is expected, the nearest name
     */
    public String line() {
        return "programme " + spot.programme() + ", " + spot.words() + ": \"" + written + "\": " + expected
                + (nearest == null ? "" : "; did you mean \"" + nearest + "\"?");
    }
}
