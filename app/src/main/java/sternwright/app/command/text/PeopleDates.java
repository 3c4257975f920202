package sternwright.app.command.text;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import sternwright.app.paper.Figures;

/**
 * The one form of dates for people on the command line: day, name of the month, year, in the order of the reader's region. What
 * programs read, and what a person wrote that is now wrong, stays ISO 8601.
 */
public final class PeopleDates {
    private PeopleDates() {}

    /**
     * The form for a reader.
     *
     * @param reader any locale; only its region counts, Great Britain where it has none
     * @return such as 25 Nov 2026
     */
    public static DateTimeFormatter of(Locale reader) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                .withLocale(Figures.of(reader).locale());
    }
}
