package sternwright.app.command;

import java.util.Locale;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Winter;

/** Words of the trade on the command line are written as in files: lower case with hyphens. */
final class TradeWords {
    private TradeWords() {}

    static void teach(CommandLine line) {
        line.registerConverter(Arrangement.class, of(Arrangement.class));
        line.registerConverter(Cooling.class, of(Cooling.class));
        line.registerConverter(Winter.class, of(Winter.class));
        line.registerConverter(Table.class, of(Table.class));
        line.registerConverter(HullMaterial.class, of(HullMaterial.class));
    }

    private static <E extends Enum<E>> ITypeConverter<E> of(Class<E> type) {
        return text -> Stream.of(type.getEnumConstants())
                .filter(e -> Shapes.kebab(e).equals(text.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("\"" + text + "\" is not known. "
                        + KnownNames.advice(
                                text,
                                Stream.of(type.getEnumConstants())
                                        .map(Shapes::kebab)
                                        .toList())));
    }
}
