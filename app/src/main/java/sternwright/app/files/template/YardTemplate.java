package sternwright.app.files.template;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sternwright.app.files.kind.BerthsShape;
import sternwright.app.files.kind.YardShape;
import sternwright.app.files.shape.Path;
import sternwright.app.files.shape.YamlText;
import sternwright.boat.Berth;
import sternwright.boat.ShorePower;
import sternwright.boat.Water;
import sternwright.measure.MonthlyShare;
import sternwright.yard.LengthBand;
import sternwright.yard.SeasonDates;
import sternwright.yard.StoreItem;
import sternwright.yard.Tariff;
import sternwright.yard.Use;
import sternwright.yard.WorkCalendar;
import sternwright.yard.Yard;

/** A yard to start from: every price is an invented example that the yard replaces. */
public final class YardTemplate {
    private static final MonthlyShare SUMMER =
            new MonthlyShare(List.of(0.0, 0.0, 1.0, 2.0, 4.0, 5.0, 6.0, 5.0, 4.0, 2.0, 0.0, 0.0));
    private static final MonthlyShare ALL_YEAR =
            new MonthlyShare(List.of(2.0, 2.0, 3.0, 4.0, 5.0, 5.0, 5.0, 5.0, 4.0, 3.0, 2.0, 2.0));

    private YardTemplate() {}

    /**
     * The yard.
     *
     * @param name as on the letterhead
     * @param currency of every price
     * @param southern true south of the equator
     * @param stores what rules take, with example prices
     * @return the yard
     */
    public static Yard yard(String name, Currency currency, boolean southern, List<StoreItem> stores) {
        Tariff tariff = new Tariff(
                List.of(
                        new LengthBand(8, 240),
                        new LengthBand(10, 320),
                        new LengthBand(12, 420),
                        new LengthBand(15, 620),
                        new LengthBand(20, 1100)),
                6,
                65,
                35,
                150,
                95);
        return new Yard(
                name,
                false,
                currency,
                "tax",
                20,
                85,
                15,
                tariff,
                southern ? SeasonDates.SOUTHERN : SeasonDates.NORTHERN,
                new WorkCalendar(EnumSet.range(java.time.DayOfWeek.MONDAY, java.time.DayOfWeek.FRIDAY), Set.of()),
                List.of(
                        new Use("weekends", "weekends and holidays", 60, 0.5, SUMMER, false),
                        new Use("cruising", "long cruises", 200, 0.5, SUMMER, false),
                        new Use("charter", "charter", 350, 0.4, SUMMER, true),
                        new Use("working", "working boat, all year", 800, 0.4, ALL_YEAR, true)),
                stores);
    }

    /** Open sea, practical salinity; assumed. */
    private static final double SEA_PSU = 35;

    /** January to December of temperate coastal water, °C; assumed, half a year later in the south. */
    private static List<Double> temperatures(boolean southern) {
        List<Double> north =
                new ArrayList<>(List.of(7.0, 7.0, 7.0, 9.0, 11.0, 14.0, 16.0, 17.0, 16.0, 13.0, 11.0, 8.0));
        if (southern) {
            Collections.rotate(north, 6);
        }
        return north;
    }

    /**
     * One berth to start from.
     *
     * @param latitudeDeg latitude, north positive
     * @return the berth; frost from mid November to mid April, or the same half a year later in the south
     */
    public static Berth berth(double latitudeDeg) {
        boolean southern = latitudeDeg < 0;
        return new Berth(
                "home",
                "home berth",
                latitudeDeg,
                new Water(SEA_PSU, null, temperatures(southern)),
                southern ? MonthDay.of(5, 15) : MonthDay.of(11, 15),
                southern ? MonthDay.of(10, 15) : MonthDay.of(4, 15),
                false,
                ShorePower.EARTHED);
    }

    /**
     * The text of {@code yard.yaml}.
     *
     * @param yard the yard
     * @return YAML with comments
     */
    public static String text(Yard yard) {
        return YamlText.of(
                YardShape.YARD.write(yard),
                new Meanings(
                        "The yard itself. Every price below is an invented example: put your own in its place.",
                        YardShape::meaning));
    }

    /**
     * The text of {@code berths.yaml}.
     *
     * @param berths the berths
     * @return YAML with comments
     */
    public static String text(List<Berth> berths) {
        return YamlText.of(
                BerthsShape.BERTHS.write(berths),
                new Meanings(
                        "Where boats lie. The frost dates and the water are assumed: put those of the place in, no frost where it never"
                                + " freezes.",
                        BerthsShape::meaning));
    }

    /** Says what each field means where it stands first. */
    private static final class Meanings implements YamlText.Comments {
        private final String head;
        private final java.util.function.UnaryOperator<String> meaning;
        private final Set<String> said = new HashSet<>();

        Meanings(String head, java.util.function.UnaryOperator<String> meaning) {
            this.head = head;
            this.meaning = meaning;
        }

        @Override
        public List<String> above(Path path) {
            List<String> lines = new ArrayList<>();
            if (path.parent() != null && path.parent().parent() == null) {
                lines.addAll(
                        said.isEmpty()
                                ? List.of(head, "Every field is described in docs/file-formats.md.", "")
                                : List.of(""));
            }
            String text = path.inList() ? "" : meaning.apply(path.step());
            if (!text.isEmpty() && said.add(path.step())) {
                lines.add(text);
            }
            return lines;
        }

        @Override
        public String behind(Path path) {
            return "";
        }
    }
}
