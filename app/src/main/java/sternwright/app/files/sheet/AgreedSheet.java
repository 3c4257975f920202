package sternwright.app.files.sheet;

import java.time.LocalDate;
import java.time.YearMonth;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Shape;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.PartRef;
import sternwright.service.Place;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.VisitAt;

/** Visits agreed with owners: {@code agreed.csv}. */
public final class AgreedSheet {
    /** The table, a row for each work of each visit. */
    public static final Sheet<AgreedWork> AGREED = agreed();

    private AgreedSheet() {}

    private static Sheet<AgreedWork> agreed() {
        Shape<YearMonth> yearMonth = Shapes.parsedText(
                "month such as 2026-11", "\\d{4}-\\d{2}", YearMonth::parse, "Write year and month with a hyphen.");
        Field<AgreedWork, String> boat = Field.required("boat", Shapes.id(), AgreedWork::boatId, "id of the boat");
        Field<AgreedWork, YearMonth> month =
                Field.required("month", yearMonth, a -> a.at().month(), "month of the visit");
        Field<AgreedWork, Place> place =
                Field.required("place", Shapes.oneOf(Place.class), a -> a.at().place(), "afloat or ashore");
        Field<AgreedWork, String> installation =
                Field.required("installation", Shapes.id(), a -> a.part().installationId(), "id of the installation");
        Field<AgreedWork, String> part =
                Field.required("part", Shapes.id(), a -> a.part().partId(), "id of the part");
        Field<AgreedWork, String> rule = Field.required("rule", Shapes.id(), AgreedWork::ruleId, "id of the rule");
        Field<AgreedWork, LocalDate> on =
                Field.required("agreed-on", Shapes.pastDate(), AgreedWork::agreedOn, "when it was agreed");
        Field<AgreedWork, String> who = Field.or("who", Shapes.anyText(), "", AgreedWork::who, "who agreed");
        return new Sheet<>(Block.of(
                "a work agreed",
                "visits agreed with owners, a row for each work",
                v -> new AgreedWork(
                        v.get(boat),
                        new VisitAt(v.get(month), v.get(place)),
                        new PartRef(v.get(installation), v.get(part)),
                        v.get(rule),
                        v.get(on),
                        v.get(who)),
                boat,
                month,
                place,
                installation,
                part,
                rule,
                on,
                who));
    }
}
