package sternwright.app.command.entry;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.shape.Shapes;

/**
 * Words of the trade on the command line are written as in files: lower case with hyphens; upper case does no harm. Dates are ISO
 * 8601, numbers have a decimal point.
 */
public final class TradeWords {
    private TradeWords() {}

    /**
     * Teaches every option and parameter that takes one of a few words to read them.
     *
     * @param line a command, with those below it
     */
    public static void teach(CommandLine line) {
        line.registerConverter(LocalDate.class, TradeWords::date);
        // One object for the two kinds of each number: two alike, of an interface as old as this one, crash Java 17
        // (17.0.15 seen)
        // while it lays classes out for a quick start.
        ITypeConverter<Double> number = TradeWords::number;
        line.registerConverter(Double.class, number);
        line.registerConverter(double.class, number);
        ITypeConverter<Integer> whole = TradeWords::whole;
        line.registerConverter(Integer.class, whole);
        line.registerConverter(int.class, whole);
        ITypeConverter<Long> wholeLong = TradeWords::wholeLong;
        line.registerConverter(Long.class, wholeLong);
        line.registerConverter(long.class, wholeLong);
        words(line);
    }

    private static void words(CommandLine line) {
        line.getSubcommands().values().forEach(TradeWords::words);
        line.getCommandSpec().args().stream()
                .flatMap(arg -> Stream.of(arg.auxiliaryTypes()))
                .filter(Class::isEnum)
                .forEach(type -> teach(line, type));
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException e) {
            throw wrong(text, "a date as year-month-day, such as 2026-09-30", "");
        }
    }

    private static double number(String text) {
        try {
            double value = Double.parseDouble(text.strip());
            if (Double.isFinite(value) && !text.strip().matches(".*[dfDF]")) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw wrong(text, "a number such as 11.5", numberAdvice(text));
    }

    private static int whole(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            throw wrong(text, "a whole number such as 12", numberAdvice(text));
        }
    }

    private static long wholeLong(String text) {
        try {
            return Long.parseLong(text.strip());
        } catch (NumberFormatException e) {
            throw wrong(text, "a whole number such as 12", numberAdvice(text));
        }
    }

    private static String numberAdvice(String text) {
        if (text.matches("-?[0-9]+,[0-9]+")) {
            return " Write a decimal point.";
        }
        return text.matches("-?[0-9.]+\\s*\\p{L}+.*") ? " Leave the unit out." : "";
    }

    private static TypeConversionException wrong(String text, String expected, String advice) {
        return new TypeConversionException("found \"" + text + "\"; expected " + expected + "." + advice);
    }

    private static <E> void teach(CommandLine line, Class<E> type) {
        line.registerConverter(type, text -> word(type, text));
    }

    private static <E> E word(Class<E> type, String text) {
        List<E> all = List.of(type.getEnumConstants());
        List<String> words = all.stream().map(e -> Shapes.kebab((Enum<?>) e)).toList();
        int at = words.indexOf(text.strip().toLowerCase(Locale.ROOT));
        if (at < 0) {
            throw new TypeConversionException("\"" + text + "\" is not known. " + KnownNames.advice(text, words));
        }
        return all.get(at);
    }
}
