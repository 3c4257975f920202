package sternwright.app.account;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which passwords are taken. Length counts, not kinds of sign; the obvious ones are refused. */
public final class Passwords {
    /** Fewest signs. */
    public static final int SHORTEST = 12;
    /** Most signs; longer ones only cost time. */
    public static final int LONGEST = 128;

    private static final List<String> OBVIOUS = List.of(
            "password", "passwort", "123456789012", "qwertyuiop", "sternwright", "letmein", "iloveyou", "welcome");

    /** Why a password is not taken; the words page shows it by this key. */
    public enum Refused {
        /** Too short. */
        SHORT,
        /** Too long. */
        LONG,
        /** Made of one or two signs, or of an obvious word. */
        OBVIOUS,
        /** Holds the name it belongs to. */
        NAME
    }

    private Passwords() {}

    /**
     * Judges a password.
     *
     * @param password as typed
     * @param name the name that is typed beside it
     * @return why it is refused; empty if it is taken
     */
    public static Optional<Refused> refused(String password, String name) {
        int length = password.codePointCount(0, password.length());
        if (length < SHORTEST) {
            return Optional.of(Refused.SHORT);
        }
        if (length > LONGEST) {
            return Optional.of(Refused.LONG);
        }
        String plain = password.toLowerCase(Locale.ROOT);
        if (plain.codePoints().distinct().count() < 4
                || OBVIOUS.stream().anyMatch(o -> plain.replace(o, "").length() < SHORTEST / 2 && plain.contains(o))) {
            return Optional.of(Refused.OBVIOUS);
        }
        String own = Accounts.plain(name);
        return own.length() >= 3 && plain.contains(own) ? Optional.of(Refused.NAME) : Optional.empty();
    }
}
