package sternwright.app.command.entry;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.shape.Shapes;

/** Words of the trade on the command line are written as in files: lower case with hyphens; upper case does no harm. */
public final class TradeWords {
    private TradeWords() {}

    /**
     * Teaches every option and parameter that takes one of a few words to read them.
     *
     * @param line a command, with those below it
     */
    public static void teach(CommandLine line) {
        line.getSubcommands().values().forEach(TradeWords::teach);
        line.getCommandSpec().args().stream()
                .flatMap(arg -> Stream.of(arg.auxiliaryTypes()))
                .filter(Class::isEnum)
                .forEach(type -> teach(line, type));
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
