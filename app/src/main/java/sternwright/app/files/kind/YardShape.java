package sternwright.app.files.kind;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.app.files.shape.Values;
import sternwright.measure.unit.YardUnits;
import sternwright.yard.SeasonDates;
import sternwright.yard.StoreItem;
import sternwright.yard.Tariff;
import sternwright.yard.Use;
import sternwright.yard.WorkCalendar;
import sternwright.yard.Yard;

/** The yard itself: {@code yard.yaml}. */
public final class YardShape {
    private static final Set<DayOfWeek> MONDAY_TO_FRIDAY = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    private static final Field<WorkCalendar, Set<DayOfWeek>> WORKING_DAYS = Field.or(
            "working-days",
            Many.set(Shapes.oneOf(DayOfWeek.class)).between(1, 7),
            MONDAY_TO_FRIDAY,
            WorkCalendar::workingDays,
            "days of the week on which the yard works");
    private static final Field<WorkCalendar, Set<LocalDate>> HOLIDAYS =
            Field.or("holidays", Many.set(Shapes.date()), Set.of(), WorkCalendar::holidays, "days off");
    private static final Block<WorkCalendar> CALENDAR = Block.of(
            "a work calendar",
            "the days on which the yard works",
            v -> new WorkCalendar(v.get(WORKING_DAYS), v.get(HOLIDAYS)),
            WORKING_DAYS,
            HOLIDAYS);

    private static final Field<Yard, String> NAME =
            Field.required("name", Shapes.text(), Yard::name, "as on the letterhead");
    private static final Field<Yard, Boolean> INVENTED =
            Field.or("invented", Shapes.yesNo(), false, Yard::invented, "true for demo data; said on every paper");
    private static final Field<Yard, Currency> CURRENCY = Field.required(
            "currency",
            Shapes.parsedText(
                    "a currency of ISO 4217",
                    "[A-Z]{3}",
                    Currency::getInstance,
                    "Write its three capital letters, such as EUR."),
            Yard::currency,
            "ISO 4217 currency of every price");
    private static final Field<Yard, String> TAX_NAME =
            Field.or("tax-name", Shapes.text(), "tax", Yard::taxName, "what tax is called on an estimate");
    private static final Field<Yard, Double> TAX = Field.required(
            "tax-percent",
            Numbers.notNegative().atMost(100),
            Yard::taxPercent,
            "tax on labour and supplies, percent; 0 for none");
    private static final Field<Yard, Double> LABOUR = Field.required(
            "labour-per-hour", Numbers.notNegative(), Yard::labourPerHour, "price of an engineer's hour without tax");
    private static final Field<Yard, Double> SET_UP = Field.or(
            "set-up-minutes",
            Numbers.notNegative().atMost(600),
            15.0,
            Yard::setUpMinutes,
            "minutes of set-up at one service point, shared by the works there");
    private static final Field<Yard, Tariff> TARIFF =
            Field.required("tariff", TariffShape.TARIFF, Yard::tariff, "lifts, hard standing, call-outs");
    private static final Field<Yard, SeasonDates> SEASON = Field.or(
            "season",
            SeasonShape.SEASON,
            SeasonDates.NORTHERN,
            Yard::season,
            "lay-up and recommission; left out: September to November, March to May");
    private static final Field<Yard, WorkCalendar> CALENDAR_FIELD = Field.or(
            "calendar",
            CALENDAR,
            new WorkCalendar(MONDAY_TO_FRIDAY, Set.of()),
            Yard::calendar,
            "the days on which the yard works");
    private static final Field<Yard, List<Use>> USES = Field.required(
            "uses",
            Many.list(SeasonShape.USE).between(1, 100).uniqueBy(Use::id),
            Yard::uses,
            "kinds of use with the hours to expect");
    private static final Field<Yard, List<StoreItem>> STORES = Field.or(
            "stores",
            Many.list(TariffShape.STORE_ITEM).uniqueBy(StoreItem::id),
            List.of(),
            Yard::stores,
            "what the stores sell");

    private static final Field<Yard, YardUnits> UNITS = Field.or(
            "units",
            UnitsShape.UNITS,
            YardUnits.METRIC,
            Yard::units,
            "the units in which figures are shown; left out: °C, L, bar, mm, N m, kW");

    /** The whole file. */
    public static final Block<Yard> YARD = Block.of(
            "a yard",
            "the yard itself: rates, tariff, season, calendar, uses, stores",
            YardShape::yard,
            NAME,
            INVENTED,
            CURRENCY,
            TAX_NAME,
            TAX,
            LABOUR,
            SET_UP,
            TARIFF,
            SEASON,
            CALENDAR_FIELD,
            USES,
            STORES,
            UNITS);

    private YardShape() {}

    /**
     * What a field of the file means.
     *
     * @param field its name
     * @return the meaning; empty if it needs no saying
     */
    public static String meaning(String field) {
        return Stream.of(YARD, TariffShape.TARIFF, SeasonShape.USE, SeasonShape.SEASON, CALENDAR)
                .flatMap(b -> b.fields().stream())
                .filter(f -> f.name().equals(field))
                .map(Field::meaning)
                .findFirst()
                .orElse("");
    }

    private static Yard yard(Values<Yard> v) {
        return new Yard(
                v.get(NAME),
                v.get(INVENTED),
                v.get(CURRENCY),
                v.get(TAX_NAME),
                v.get(TAX),
                v.get(LABOUR),
                v.get(SET_UP),
                v.get(TARIFF),
                v.get(SEASON),
                v.get(CALENDAR_FIELD),
                v.get(USES),
                v.get(STORES),
                v.get(UNITS));
    }
}
