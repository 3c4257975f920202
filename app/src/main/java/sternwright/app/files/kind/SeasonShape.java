package sternwright.app.files.kind;

import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Path;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Shape;
import sternwright.app.files.shape.Shapes;
import sternwright.measure.MonthlyShare;
import sternwright.yard.SeasonDates;
import sternwright.yard.Use;

/** The halves of the year and the kinds of use, as the yard's file says them. */
final class SeasonShape {
    private static final Field<SeasonDates, MonthDay> LAY_UP_FROM =
            Field.required("lay-up-from", Shapes.monthDay(), SeasonDates::layUpFrom, "first day of lay-up");
    private static final Field<SeasonDates, MonthDay> LAY_UP_TO =
            Field.required("lay-up-to", Shapes.monthDay(), SeasonDates::layUpTo, "last day of lay-up");
    private static final Field<SeasonDates, MonthDay> RECOMMISSION_FROM = Field.required(
            "recommission-from", Shapes.monthDay(), SeasonDates::recommissionFrom, "first day of recommission");
    private static final Field<SeasonDates, MonthDay> RECOMMISSION_TO = Field.required(
            "recommission-to", Shapes.monthDay(), SeasonDates::recommissionTo, "last day of recommission");

    static final Block<SeasonDates> SEASON = Block.of(
            "a season",
            "the two halves of the yard's year",
            v -> new SeasonDates(
                    v.get(LAY_UP_FROM), v.get(LAY_UP_TO), v.get(RECOMMISSION_FROM), v.get(RECOMMISSION_TO)),
            LAY_UP_FROM,
            LAY_UP_TO,
            RECOMMISSION_FROM,
            RECOMMISSION_TO);

    private static final Field<Use, String> ID =
            Field.required("id", Shapes.id(), Use::id, "short name by which boats refer to it");
    private static final Field<Use, String> NAME = Field.required("name", Shapes.text(), Use::name, "as people say it");
    private static final Field<Use, Double> HOURS = Field.required(
            "annual-hours", Numbers.positive().atMost(8784), Use::annualHours, "expected engine hours a year");
    private static final Field<Use, Double> VARIATION = Field.or(
            "variation",
            Numbers.positive().atMost(2),
            0.5,
            Use::variation,
            "coefficient of variation of that figure between boats");
    private static final Field<Use, MonthlyShare> MONTHS = Field.required(
            "months",
            new Shares(),
            Use::months,
            "how a year's hours spread over January to December, north of the equator");
    private static final Field<Use, Boolean> HEAVY =
            Field.or("heavy", Shapes.yesNo(), false, Use::heavy, "counts as heavy use in rules that shorten lives");

    static final Block<Use> USE = Block.of(
            "a kind of use",
            "a kind of use and the running hours to expect of it",
            v -> new Use(v.get(ID), v.get(NAME), v.get(HOURS), v.get(VARIATION), v.get(MONTHS), v.get(HEAVY)),
            ID,
            NAME,
            HOURS,
            VARIATION,
            MONTHS,
            HEAVY);

    private SeasonShape() {}

    /** Twelve shares; they are scaled to one when read, so 0 0 1 2 … is as good as 0 0 0.04 0.08 …. */
    private record Shares() implements Shape<MonthlyShare> {
        private static final int MOST_PARTS = 200;
        private static final double ROUNDING = 1e-12;
        private static final Many<Double, List<Double>> TWELVE =
                Many.list((Shape<Double>) Numbers.notNegative()).between(12, 12);

        @Override
        public @Nullable MonthlyShare read(Node node, Path path, Reading reading) {
            List<Double> shares = TWELVE.read(node, path, reading);
            if (shares == null) {
                return null;
            }
            if (shares.stream().allMatch(s -> s == 0)) {
                reading.note(node, path, "all twelve are 0", "at least one month in use", "");
                return null;
            }
            return new MonthlyShare(shares);
        }

        @Override
        public Object write(MonthlyShare value) {
            return TWELVE.write(wholeNumbers(value.shares()).orElse(value.shares()));
        }

        /** People think "two parts in May, three in June": shares are written so where small whole numbers say them. */
        private static Optional<List<Double>> wholeNumbers(List<Double> shares) {
            return IntStream.rangeClosed(1, MOST_PARTS)
                    .mapToObj(k -> shares.stream().map(s -> s * k).toList())
                    .filter(parts -> parts.stream().allMatch(p -> Math.abs(p - Math.rint(p)) < ROUNDING))
                    .findFirst()
                    .map(parts -> parts.stream().map(Math::rint).toList());
        }

        @Override
        public Map<String, Object> schema() {
            return TWELVE.schema();
        }

        @Override
        public String words() {
            return "twelve numbers of at least 0, January to December";
        }
    }
}
