package sternwright.app.desk.find;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Words without case and accents. */
final class Folded {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern GAPS = Pattern.compile("[\\s\\p{Punct}\u2018\u2019\u201c\u201d\u2013\u2014]+");

    private Folded() {}

    /** Letters without marks: Søren and Soren are one, and ö is o. */
    static String of(String words) {
        String apart = Normalizer.normalize(words, Normalizer.Form.NFKD);
        String plain = letters(MARKS.matcher(apart).replaceAll("").toLowerCase(Locale.ROOT));
        return GAPS.matcher(plain).replaceAll(" ").strip();
    }

    /** The same with letters written out: ö is oe, å is aa. */
    static String writtenOut(String words) {
        String lower = Normalizer.normalize(words, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
        return of(lower.replace("ä", "ae")
                .replace("ö", "oe")
                .replace("ü", "ue")
                .replace("å", "aa")
                .replace("ø", "oe"));
    }

    /** Letters that Unicode does not take apart. */
    private static String letters(String lower) {
        return lower.replace("ß", "ss")
                .replace("ø", "o")
                .replace("æ", "ae")
                .replace("œ", "oe")
                .replace("ł", "l")
                .replace("đ", "d")
                .replace("ð", "d")
                .replace("þ", "th")
                .replace("ı", "i");
    }
}
