package sternwright.app.web.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Locale;

/**
 * The code that is printed where the program was started, when more than this machine can reach it: whoever makes the
 * owner's account must be able to read it.
 *
 * @param code the code; empty if none is asked for
 */
public record FirstStartCode(String code) {
    /**
     * Whether a code must be typed.
     *
     * @return false when only this machine can reach the pages
     */
    public boolean asked() {
        return !code.isEmpty();
    }

    /**
     * Whether a typed code is right.
     *
     * @param typed as typed; blanks, dashes and case do not count
     * @return true if it is, or if none is asked for
     */
    public boolean right(String typed) {
        byte[] mine = plain(code).getBytes(StandardCharsets.UTF_8);
        return !asked() || MessageDigest.isEqual(mine, plain(typed).getBytes(StandardCharsets.UTF_8));
    }

    private static String plain(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }

    @Override
    public String toString() {
        return "FirstStartCode";
    }
}
