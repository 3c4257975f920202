package sternwright.app.paper;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import sternwright.job.reading.Limits;
import sternwright.measure.Money;
import sternwright.measure.unit.YardUnits;
import sternwright.service.ReadingAsked;

/**
 * Numbers, money, dates and units as printed: English words in the formats of the reader's region. A number and its unit are
 * joined by a space that does not break.
 */
public final class Figures {
    private static final String JOIN = "\u00a0";
    private static final Pattern ISO_DATE =
            Pattern.compile("(?<![-\\w])(?:19|20)[0-9]{2}-(?:0[1-9]|1[0-2])(-(?:0[1-9]|[12][0-9]|3[01]))?(?![-\\w])");
    private static final String PLAIN_NUMBER = "-?[0-9]+(?:[.][0-9]+)?";
    private static final Set<String> COUNTED = Set.of("piece", "week", "visit", "lift");

    private final Locale locale;
    private final YardUnits units;
    private final DateTimeFormatter date;
    private final DateTimeFormatter shortDate;
    private final Formats formats;

    /** What is made once for a region: looking it up costs more than using it. Numbers are formatted with copies, for many threads ask. */
    private record Formats(NumberFormat number, boolean dayFirst) {
        private static final Map<Locale, Formats> KNOWN = new ConcurrentHashMap<>();
        private static final int MOST_KEPT = 64;

        static Formats of(Locale locale, DateTimeFormatter date) {
            if (KNOWN.size() > MOST_KEPT) {
                KNOWN.clear();
            }
            return KNOWN.computeIfAbsent(locale, l -> new Formats(number(l), dayFirst(date)));
        }

        private static NumberFormat number(Locale locale) {
            NumberFormat format = NumberFormat.getNumberInstance(locale);
            format.setMaximumFractionDigits(3);
            format.setRoundingMode(RoundingMode.HALF_UP);
            return format;
        }

        private static boolean dayFirst(DateTimeFormatter date) {
            return Character.isDigit(date.format(LocalDate.of(2000, 1, 1)).charAt(0))
                    && date.format(LocalDate.of(2001, 2, 3)).startsWith("3");
        }
    }

    private Figures(Locale locale, YardUnits units) {
        this.locale = locale;
        this.units = units;
        this.date = DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale);
        this.shortDate = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale);
        this.formats = Formats.of(locale, date);
    }

    /**
     * Formats of a reader's region.
     *
     * @param reader any locale; only its region counts, Great Britain where it has none
     * @return the formats
     */
    public static Figures of(Locale reader) {
        String region = reader.getCountry().isEmpty() ? "GB" : reader.getCountry();
        return new Figures(
                new Locale.Builder().setLanguage("en").setRegion(region).build(), YardUnits.METRIC);
    }

    /**
     * The same formats with figures in the units a yard works in.
     *
     * @param yard the yard's units
     * @return the formats
     */
    public Figures in(YardUnits yard) {
        return new Figures(locale, yard);
    }

    /**
     * The unit in which readings are shown and written down.
     *
     * @param unit as the rule asks it
     * @return the yard's unit
     */
    public String unit(String unit) {
        return units.shown(0, unit).unit();
    }

    /** A figure in the yard's unit, no more exact than it was measured: four digits are plenty for a converted one. */
    private YardUnits.Shown shown(double value, String unit) {
        YardUnits.Shown shown = units.shown(value, unit);
        return shown.unit().equals(unit)
                ? shown
                : new YardUnits.Shown(
                        new BigDecimal(shown.value()).round(new MathContext(4)).doubleValue(), shown.unit());
    }

    /**
     * English in the formats of the region, for sentences that are worded elsewhere.
     *
     * @return the locale
     */
    public Locale locale() {
        return locale;
    }

    /**
     * What stands for these formats, to compare what was worded with them.
     *
     * @return the same for equal formats
     */
    public String mark() {
        return language() + " " + units;
    }

    /**
     * The language tag of the page.
     *
     * @return such as {@code en-GB}
     */
    public String language() {
        return locale.toLanguageTag();
    }

    /**
     * The sheet of paper used in the region.
     *
     * @return {@code letter} in North America, {@code A4} elsewhere
     */
    public String sheet() {
        return locale.getCountry().equals("US") || locale.getCountry().equals("CA") ? "letter" : "A4";
    }

    /**
     * A date in full.
     *
     * @param day the day
     * @return such as 5 October 2026
     */
    public String date(LocalDate day) {
        return date.format(day).replace(" ", JOIN);
    }

    /**
     * A date for tables.
     *
     * @param day the day
     * @return such as 5 Oct 2026
     */
    public String shortDate(LocalDate day) {
        return shortDate.format(day).replace(" ", JOIN);
    }

    /**
     * A sentence whose dates and months are ISO 8601, as the pure core words them, with both as people say them.
     *
     * @param sentence any text
     * @return the same with such dates as 5 Oct 2026 and such months as Oct 2026
     */
    public String dated(String sentence) {
        return ISO_DATE.matcher(sentence)
                .replaceAll(m -> m.group(1) == null
                        ? DateTimeFormatter.ofPattern("LLL" + JOIN + "yyyy", locale)
                                .format(YearMonth.parse(m.group()))
                        : shortDate(LocalDate.parse(m.group())));
    }

    /**
     * A sentence on a reading, as the pure core words it in the unit of the rule, with its figures in the unit the yard works in.
     *
     * @param sentence any text
     * @param unit the unit of the rule, as it stands behind the figures
     * @return the same with such figures as 29.01 psi for 2 bar
     */
    public String judged(String sentence, String unit) {
        if (unit(unit).equals(unit)) {
            return sentence;
        }
        Pattern figures = Pattern.compile(
                "(" + PLAIN_NUMBER + ")(?: to (" + PLAIN_NUMBER + "))? " + Pattern.quote(unit) + "(?![\\p{L}/])");
        return figures.matcher(sentence).replaceAll(m -> {
            String last = quantity(Double.parseDouble(m.group(m.group(2) == null ? 1 : 2)), unit);
            String both = m.group(2) == null
                    ? last
                    : number(shown(Double.parseDouble(m.group(1)), unit).value()) + JOIN + "to " + last;
            return Matcher.quoteReplacement(both);
        });
    }

    /**
     * A stretch of days, month and year said once where they agree.
     *
     * @param from first day
     * @param to last day
     * @return such as 5 to 16 October 2026
     */
    public String dates(LocalDate from, LocalDate to) {
        if (from.equals(to)) {
            return date(from);
        }
        if (formats.dayFirst && YearMonth.from(from).equals(YearMonth.from(to))) {
            return from.getDayOfMonth() + " to " + date(to);
        }
        String year = JOIN + from.getYear();
        String begin = date(from);
        return formats.dayFirst && from.getYear() == to.getYear() && begin.endsWith(year)
                ? begin.substring(0, begin.length() - year.length()) + " to " + date(to)
                : begin + " to " + date(to);
    }

    /**
     * A number with as many decimals as it needs, three at most.
     *
     * @param value the number
     * @return such as 4.5, with a true minus sign
     */
    public String number(double value) {
        NumberFormat format = (NumberFormat) formats.number.clone();
        return format.format(BigDecimal.valueOf(value)).replace('-', '\u2212');
    }

    /**
     * A quantity; pieces, weeks, visits and lifts are counted in words.
     *
     * @param value how many
     * @param unit the unit
     * @return such as 4.5 L or 1 piece
     */
    public String quantity(double value, String unit) {
        String one = unit.equals("pcs") ? "piece" : unit;
        if (COUNTED.contains(one)) {
            double shown = Math.rint(value * 10) / 10;
            return number(shown) + JOIN + one + (shown == 1 ? "" : "s");
        }
        YardUnits.Shown shown = shown(value, unit);
        return number(shown.value()) + JOIN + shown.unit();
    }

    /**
     * A quantity from the stores, as exactly as one can measure it out.
     *
     * @param value how many
     * @param unit the unit
     * @return such as 7.1 L or 0.127 L
     */
    public String supply(double value, String unit) {
        YardUnits.Shown shown = shown(value, unit);
        double steps = Math.abs(shown.value()) >= 1 ? 10 : 1000;
        double measured = Math.rint(shown.value() * steps) / steps;
        return shown.unit().equals(unit) ? quantity(measured, unit) : number(measured) + JOIN + shown.unit();
    }

    /**
     * An amount of money.
     *
     * @param amount the amount
     * @return such as €2,795.07
     */
    public String money(Money amount) {
        NumberFormat format = NumberFormat.getCurrencyInstance(locale);
        format.setCurrency(amount.currency());
        format.setMinimumFractionDigits(amount.amount().scale());
        format.setMaximumFractionDigits(amount.amount().scale());
        return format.format(amount.amount()).replace('-', '\u2212');
    }

    /**
     * An amount of money that is only weighed, in whole units.
     *
     * @param amount the amount
     * @param currency its currency
     * @return such as €2,795
     */
    public String about(double amount, Currency currency) {
        NumberFormat format = NumberFormat.getCurrencyInstance(locale);
        format.setCurrency(currency);
        format.setMaximumFractionDigits(0);
        return format.format(Math.rint(amount) + 0.0).replace('-', '\u2212');
    }

    /**
     * Minutes as people say them.
     *
     * @param minutes minutes, at least 0
     * @return such as 1 h 10 min
     */
    public String time(double minutes) {
        long all = Math.round(minutes);
        long hours = all / 60;
        long rest = all % 60;
        if (hours == 0) {
            return rest + JOIN + "min";
        }
        return hours + JOIN + "h" + (rest == 0 ? "" : JOIN + rest + JOIN + "min");
    }

    /**
     * The limit of a reading.
     *
     * @param asked the reading
     * @return such as at least 50 %
     */
    public String limit(ReadingAsked asked) {
        if (Limits.yesOrNo(asked)) {
            return Limits.words(asked);
        }
        Double low = asked.low();
        Double high = asked.high();
        if (low != null && high != null) {
            return low.equals(high)
                    ? quantity(low, asked.unit())
                    : number(shown(low, asked.unit()).value()) + JOIN + "to " + quantity(high, asked.unit());
        }
        if (low != null) {
            return "at least " + quantity(low, asked.unit());
        }
        return high == null
                ? "note it"
                : high == 0
                                && unit(asked.unit()).equals(asked.unit())
                                && !asked.unit().equals("°C")
                        ? "none"
                        : "at most " + quantity(high, asked.unit());
    }

    /**
     * A value of a reading.
     *
     * @param asked the reading
     * @param value the value, null if there is none
     * @return such as 82 %, a dash where there is none
     */
    public String value(ReadingAsked asked, @Nullable Double value) {
        if (value == null) {
            return "\u2013";
        }
        return Limits.yesOrNo(asked) ? Limits.quantity(value, asked) : quantity(value, asked.unit());
    }
}
