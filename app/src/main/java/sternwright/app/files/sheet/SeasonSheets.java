package sternwright.app.files.sheet;

import java.time.LocalDate;
import java.time.LocalDateTime;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shape;
import sternwright.app.files.shape.Shapes;
import sternwright.season.dated.Away;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.HighWater;

/** The tables of the season: high waters, owners' dates, promises and the plan that the yard works by. */
public final class SeasonSheets {
    /** High waters: {@code tides.csv}. */
    public static final Sheet<HighWater> TIDES = tides();

    /** Dates set by owners and suppliers: {@code dates.csv}. */
    public static final Sheet<OwnerDate> DATES = dates();

    /** Dates given to owners: {@code promises.csv}. */
    public static final Sheet<PromisedDate> PROMISES = promises();

    /** The plan that the yard works by: {@code season.csv}. */
    public static final Sheet<Published> PLAN = plan();

    /** Who is away and which hoist is down: {@code away.csv}. */
    public static final Sheet<Away> AWAY = away();

    private SeasonSheets() {}

    private static Sheet<Away> away() {
        Field<Away, String> who = Field.required("who", Shapes.id(), Away::who, "id of one of the crew or of a hoist");
        Field<Away, LocalDate> from =
                Field.required("from", Shapes.date(), a -> a.days().from(), "first day");
        Field<Away, LocalDate> to =
                Field.required("to", Shapes.date(), a -> a.days().to(), "last day");
        Field<Away, String> why =
                Field.or("why", Shapes.anyText(), "", a -> a.days().why(), "free text");
        return new Sheet<>(Block.of(
                "an absence",
                "who is away and which hoist is down, beside what resources.yaml says",
                v -> new Away(v.get(who), new Absence(v.get(from), v.get(to), v.get(why))),
                who,
                from,
                to,
                why));
    }

    private static Sheet<HighWater> tides() {
        Shape<LocalDateTime> dateTime = Shapes.parsedText(
                "date and time such as 2026-10-05T11:42",
                "\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2})?",
                LocalDateTime::parse,
                "Write date and local time with a T between them.");
        Field<HighWater, LocalDateTime> at =
                Field.required("high-water", dateTime, HighWater::at, "local date and time");
        Field<HighWater, Double> height = Field.required(
                "height-m", Numbers.any().atLeast(-5).atMost(20), HighWater::heightM, "height above chart datum, m");
        return new Sheet<>(Block.of(
                "a high water",
                "high waters at the yard, from its tide table",
                v -> new HighWater(v.get(at), v.get(height)),
                at,
                height));
    }

    private static Sheet<OwnerDate> dates() {
        Field<OwnerDate, String> boat = Field.required("boat", Shapes.id(), OwnerDate::boatId, "id of the boat");
        Field<OwnerDate, OwnerDate.Kind> kind = Field.required(
                "kind",
                Shapes.oneOf(OwnerDate.Kind.class),
                OwnerDate::kind,
                "out-from: the owner gives her up; afloat-by: wants her; part-in: a part arrives; ashore-since: stands"
                        + " ashore; emergency: something is wrong with her, out at once or seen to where she stands");
        Field<OwnerDate, LocalDate> date = Field.required("date", Shapes.date(), OwnerDate::date, "the day");
        Field<OwnerDate, String> work = Field.or(
                "work", Shapes.anyText(), "", OwnerDate::work, "for part-in the id of the rule that waits for it");
        Field<OwnerDate, String> note = Field.or("note", Shapes.anyText(), "", OwnerDate::note, "free text");
        return new Sheet<>(Block.of(
                "a date",
                "dates set by owners and suppliers",
                v -> ownerDate(v.get(boat), v.get(kind), v.get(work), v.get(date), v.get(note)),
                boat,
                kind,
                date,
                work,
                note));
    }

    private static OwnerDate ownerDate(String boat, OwnerDate.Kind kind, String work, LocalDate date, String note) {
        if (kind == OwnerDate.Kind.PART_IN && work.isBlank()) {
            throw new IllegalArgumentException("part-in needs the rule that waits for the part, in the column work");
        }
        return new OwnerDate(boat, kind, work, date, note);
    }

    private static Sheet<PromisedDate> promises() {
        Field<PromisedDate, String> boat =
                Field.required("boat", Shapes.id(), p -> p.name().boatId(), "id of the boat");
        Field<PromisedDate, String> visit = Field.required(
                "visit", Shapes.text(), p -> p.name().visit(), "name of the visit, as the plan calls it");
        Field<PromisedDate, String> operation = Field.required(
                "operation", Shapes.text(), p -> p.name().operation(), "name of the operation, such as launch");
        Field<PromisedDate, LocalDate> date =
                Field.required("date", Shapes.date(), PromisedDate::date, "the day promised");
        Field<PromisedDate, Integer> quarter = quarter(p -> p.quarter() + 1);
        Field<PromisedDate, LocalDate> on =
                Field.required("promised-on", Shapes.pastDate(), PromisedDate::promisedOn, "when it was promised");
        Field<PromisedDate, Boolean> firm =
                Field.or("firm", Shapes.yesNo(), false, PromisedDate::firm, "true: never moved, whatever it costs");
        Field<PromisedDate, Double> price = Field.optional(
                "moved-price",
                Numbers.any().atLeast(0).atMost(1_000_000),
                PromisedDate::movedPrice,
                "what moving it to another day costs; left out: promise-moved of resources.yaml");
        return new Sheet<>(Block.of(
                "a promise",
                "dates given to owners",
                v -> new PromisedDate(
                        new OperationName(v.get(boat), v.get(visit), v.get(operation)),
                        v.get(date),
                        v.get(quarter) - 1,
                        v.get(on),
                        v.get(firm),
                        v.orNull(price)),
                boat,
                visit,
                operation,
                date,
                quarter,
                on,
                firm,
                price));
    }

    private static <R> Field<R, Integer> quarter(Field.Getter<R, Integer> getter) {
        return Field.or(
                "quarter", new QuarterOfDay(), 1, getter, "quarter of the working day in which it begins, 1 to 4");
    }

    private static Field<Published, LocalDate> plannedOn() {
        return Field.required(
                "planned-on",
                Shapes.date(),
                Published::plannedOn,
                "the day on which the visits of this plan were planned");
    }

    private static Sheet<Published> plan() {
        Field<Published, String> boat =
                Field.required("boat", Shapes.id(), p -> p.name().boatId(), "id of the boat");
        Field<Published, String> visit =
                Field.required("visit", Shapes.text(), p -> p.name().visit(), "name of the visit");
        Field<Published, String> operation =
                Field.required("operation", Shapes.text(), p -> p.name().operation(), "name of the operation");
        Field<Published, LocalDate> date = Field.required("date", Shapes.date(), Published::date, "the day it begins");
        Field<Published, Integer> quarter = quarter(p -> p.quarter() + 1);
        Field<Published, LocalDate> until = Field.required("until", Shapes.date(), Published::until, "the day it ends");
        Field<Published, String> people = Field.or("people", Shapes.anyText(), "", Published::people, "who does it");
        Field<Published, String> hoist =
                Field.or("hoist", Shapes.anyText(), "", Published::hoist, "the hoist, for lift and launch");
        Field<Published, String> reason =
                Field.or("reason", Shapes.anyText(), "", Published::reason, "why on this date");
        Field<Published, LocalDate> on = plannedOn();
        return new Sheet<>(Block.of(
                "an operation",
                "the plan that the yard works by",
                v -> new Published(
                        new OperationName(v.get(boat), v.get(visit), v.get(operation)),
                        v.get(date),
                        v.get(quarter) - 1,
                        v.get(until),
                        v.get(people),
                        v.get(hoist),
                        v.get(reason),
                        v.get(on)),
                boat,
                visit,
                operation,
                date,
                quarter,
                until,
                people,
                hoist,
                reason,
                on));
    }
}
