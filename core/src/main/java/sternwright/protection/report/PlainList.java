package sternwright.protection.report;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/** Lists and months in plain words. */
final class PlainList {
    private PlainList() {}

    /** "a, b and c"; with a capital where it begins a sentence. */
    static String of(List<String> names, boolean capital) {
        int last = names.size() - 1;
        String list = last <= 0
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
        return capital ? list.substring(0, 1).toUpperCase(Locale.ROOT) + list.substring(1) : list;
    }

    /** "March 2027". */
    static String month(LocalDate day) {
        return day.getMonth().getDisplayName(TextStyle.FULL, Locale.UK) + " " + day.getYear();
    }
}
