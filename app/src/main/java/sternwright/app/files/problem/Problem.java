package sternwright.app.files.problem;

import java.util.Comparator;

/**
 * One thing that is wrong in one place.
 *
 * @param file the file, as the person knows it, relative to the yard's folder
 * @param line line counted from 1; 0 if the problem is with the file as a whole
 * @param field path of the field, such as {@code installations[port].parts[leg].fitted-on}; empty if there is none
 * @param found what stands there, as a phrase; empty if the advice says it all
 * @param expected what should stand there, as a phrase; empty if nothing can
 * @param advice what to do, a full sentence; may be empty
 */
public record Problem(String file, int line, String field, String found, String expected, String advice)
        implements Comparable<Problem> {
    private static final Comparator<Problem> IN_READING_ORDER = Comparator.comparing(Problem::file)
            .thenComparingInt(Problem::line)
            .thenComparing(Problem::field)
            .thenComparing(Problem::found);

    /**
     * The problem in one line: place, what was found, what was expected, what to do. {@code file:line:} is what editors
     * and terminals turn into a link.
     *
     * @return one line without a line end
     */
    public String text() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line);
        }
        text.append(": ");
        if (!field.isEmpty()) {
            text.append(field).append(": ");
        }
        if (found.isEmpty()) {
            return text.append(advice).toString();
        }
        text.append(found);
        if (!expected.isEmpty()) {
            text.append("; expected ").append(expected);
        }
        text.append('.');
        if (!advice.isEmpty()) {
            text.append(' ').append(advice);
        }
        return text.toString();
    }

    @Override
    public int compareTo(Problem other) {
        return IN_READING_ORDER.compare(this, other);
    }
}
