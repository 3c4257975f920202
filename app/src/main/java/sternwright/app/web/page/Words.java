package sternwright.app.web.page;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Every text of the pages by its key. The first part of a key names the file it stands in: {@code boats.title} stands in
 * {@code words/boats.properties}. Texts are patterns of {@link MessageFormat}; plurals are its {@code choice}. English is the
 * root; another language is one more file beside it.
 */
public final class Words {
    private static final String PLACE = "sternwright.app.web.words.";

    private static final ConcurrentHashMap<Locale, Words> KNOWN = new ConcurrentHashMap<>();
    private static final int LOCALES_KEPT = 64;

    private final Locale locale;
    private final ConcurrentHashMap<String, MessageFormat> patterns = new ConcurrentHashMap<>();

    /** Texts that have no places to fill, most of all: they are worded once. */
    private final ConcurrentHashMap<String, String> plain = new ConcurrentHashMap<>();

    private Words(Locale locale) {
        this.locale = locale;
    }

    /**
     * Words for a reader.
     *
     * @param locale the reader's locale
     * @return the words, in English where there is no translation
     */
    public static Words of(Locale locale) {
        if (KNOWN.size() > LOCALES_KEPT) {
            KNOWN.clear();
        }
        return KNOWN.computeIfAbsent(locale, Words::new);
    }

    /**
     * A text.
     *
     * @param key its key
     * @param values what its places {@code {0}}, {@code {1}} … are filled with: numbers to be counted, or texts
     * @return the text, not yet escaped for HTML
     * @throws MissingResourceException if there is no such text
     */
    public String say(String key, Object... values) {
        if (values.length == 0) {
            return plain.computeIfAbsent(key, k -> filled(k, values));
        }
        return filled(key, values);
    }

    private String filled(String key, Object... values) {
        MessageFormat pattern = patterns.computeIfAbsent(key, k -> new MessageFormat(pattern(k), locale));
        return ((MessageFormat) pattern.clone()).format(values);
    }

    /**
     * A text that need not be there.
     *
     * @param key its key
     * @return the text, empty if there is none
     */
    public Optional<String> find(String key) {
        ResourceBundle file = file(key);
        return file.containsKey(key) ? Optional.of(say(key)) : Optional.empty();
    }

    private String pattern(String key) {
        return file(key).getString(key);
    }

    private ResourceBundle file(String key) {
        int dot = key.indexOf('.');
        if (dot < 0) {
            throw new MissingResourceException("a key names its file first: " + key, PLACE, key);
        }
        return ResourceBundle.getBundle(
                PLACE + key.substring(0, dot),
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }
}
