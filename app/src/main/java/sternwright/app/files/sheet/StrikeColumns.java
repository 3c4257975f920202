package sternwright.app.files.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Shapes;
import sternwright.app.files.shape.Values;
import sternwright.history.HistoryLine;
import sternwright.history.Strike;

/** The columns of a line that strikes an earlier one, written only where a table has such a line. */
final class StrikeColumns<R> {
    private static final String ON = "struck-on";
    private static final String BY = "struck-by";
    private static final String WHY = "struck-why";

    /** Their names. */
    static final Set<String> NAMES = Set.of(ON, BY, WHY);

    private final Field<R, LocalDate> on;
    private final Field<R, String> by;
    private final Field<R, String> why;

    StrikeColumns(Function<R, HistoryLine> line) {
        on = Field.optional(
                ON,
                Shapes.pastDate(),
                r -> of(line.apply(r), Strike::on),
                "on a line that repeats an earlier one: the day on which that one was struck");
        by = Field.or(BY, Shapes.anyText(), "", r -> of(line.apply(r), Strike::who), "who struck the earlier line");
        why = Field.or(WHY, Shapes.anyText(), "", r -> of(line.apply(r), Strike::why), "what was wrong with it");
    }

    private static <T> @Nullable T of(HistoryLine line, Function<Strike, T> what) {
        Strike strike = line.strike();
        return strike == null ? null : what.apply(strike);
    }

    List<Field<R, ?>> all() {
        return List.of(on, by, why);
    }

    @Nullable
    Strike strike(Values<R> v) {
        LocalDate day = v.orNull(on);
        if (day != null) {
            return new Strike(day, v.get(by), v.get(why));
        }
        if (!v.get(by).isEmpty() || !v.get(why).isEmpty()) {
            throw new IllegalArgumentException("a line that strikes an earlier one needs the day in struck-on");
        }
        return null;
    }
}
