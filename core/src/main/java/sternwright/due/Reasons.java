package sternwright.due;

import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;

/** Says in one sentence why a work is due; dates in the reader's locale. */
public final class Reasons {
    private final ResourceBundle words;
    private final DateTimeFormatter dates;
    private final NumberFormat numbers;
    private final Locale locale;

    /**
     * Reasons for a reader.
     *
     * @param locale the reader's locale
     */
    public Reasons(Locale locale) {
        this.locale = locale;
        this.words = ResourceBundle.getBundle("sternwright.due.reasons", locale);
        this.dates = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale);
        this.numbers = NumberFormat.getIntegerInstance(locale);
    }

    /**
     * The sentence.
     *
     * @param due what is due
     * @return one sentence with date, clause and, where hours are forecast, the 80 % range
     */
    public String sentence(Due due) {
        String why = clause(due, due.first());
        if (due.clauses().size() > 1 && due.first().kind() == ClauseKind.MONTHS) {
            Clause second = due.clauses().get(1);
            if (second.kind() == ClauseKind.HOURS && second.early80() != null) {
                why += say("also", clause(due, second));
            }
        }
        return say("state." + due.state().name(), why, dates.format(due.dueOn()));
    }

    private String clause(Due due, Clause clause) {
        String text = sayClause(key(due, clause), clause, from(due, clause));
        boolean hasWhy = !clause.detail().isEmpty()
                && (clause.kind() == ClauseKind.MONTHS
                        || clause.kind() == ClauseKind.HOURS
                        || clause.kind() == ClauseKind.LIFE);
        return hasWhy ? say("why", text, clause.detail()) : text;
    }

    private static String key(Due due, Clause clause) {
        return switch (clause.kind()) {
            case MONTHS -> startsAtLastDone(due, clause) ? "months.last" : "months.fitted";
            case HOURS -> clause.early80() == null ? "hours.certain" : "hours.forecast";
            case LIFE -> "life";
            case NTH -> "nth";
            case OCCASION -> "occasion." + clause.detail();
            case AFTER -> clause.detail().startsWith("event:") ? "after.event" : "after.rule";
            case CONDITION -> "condition";
            case WASTAGE -> wastage(clause);
            case OPPORTUNITY -> "opportunity";
            case UNKNOWN -> "unknown";
        };
    }

    /** An anode that is half gone already has no range of days ahead. */
    private static String wastage(Clause clause) {
        boolean gone = clause.date().equals(clause.late80());
        return (gone ? "wastage.gone" : "wastage") + (clause.amount() > 0 ? ".again" : "");
    }

    private static boolean startsAtLastDone(Due due, Clause clause) {
        LocalDate last = due.lastDone();
        return last != null && last.plusMonths((long) clause.amount()).equals(clause.date());
    }

    /** Where a clause of months began. */
    private static LocalDate from(Due due, Clause clause) {
        LocalDate last = due.lastDone();
        if (clause.kind() == ClauseKind.MONTHS && last != null && startsAtLastDone(due, clause)) {
            return last;
        }
        return clause.date().minusMonths((long) clause.amount());
    }

    private String sayClause(String key, Clause clause, LocalDate from) {
        String detail = clause.detail();
        int colon = detail.indexOf(':');
        boolean reference = clause.kind() == ClauseKind.AFTER;
        return say(
                key,
                dates.format(clause.date()),
                date(clause.early80()),
                date(clause.late80()),
                clause.kind() == ClauseKind.NTH ? clause.amount() : numbers.format(clause.amount()),
                dates.format(from),
                reference ? detail.substring(colon + 1).replace('-', ' ') : detail,
                clause.amount());
    }

    private String date(@Nullable LocalDate date) {
        return date == null ? "" : dates.format(date);
    }

    private String say(String key, Object... values) {
        return new MessageFormat(words.getString(key), locale).format(values);
    }
}
