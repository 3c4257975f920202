package sternwright.app.desk.register;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;

/** Short names, which are also the names of files. */
public final class ShortName {
    private ShortName() {}

    /**
     * A short name made from a name: letters without their accents, words joined by hyphens.
     *
     * @param text such as the name on the stern
     * @return the short name, empty if the text has no letter or figure of the Latin alphabet
     */
    public static String of(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
    }

    /**
     * A short name that nobody has yet.
     *
     * @param text such as the name on the stern
     * @param taken short names in use
     * @return the short name, with a number behind it if needed
     */
    public static String free(String text, Collection<String> taken) {
        String made = of(text);
        String first = made.isEmpty() ? "boat" : made.substring(0, Math.min(60, made.length()));
        String name = first;
        for (int n = 2; taken.contains(name); n++) {
            name = first + "-" + n;
        }
        return name;
    }
}
