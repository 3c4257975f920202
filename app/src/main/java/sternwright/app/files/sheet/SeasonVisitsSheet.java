package sternwright.app.files.sheet;

import java.time.LocalDate;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.PartRef;
import sternwright.due.ClauseKind;
import sternwright.season.dated.PublishedWork;
import sternwright.service.Place;

/** Which works are in which visit of the published season: {@code season-visits.csv}. */
public final class SeasonVisitsSheet {
    private static final Field<PublishedWork, String> BOAT =
            Field.required("boat", Shapes.id(), PublishedWork::boatId, "id of the boat");
    private static final Field<PublishedWork, LocalDate> FROM =
            Field.required("from", Shapes.date(), PublishedWork::from, "first day on which the visit can be");
    private static final Field<PublishedWork, LocalDate> TO =
            Field.required("to", Shapes.date(), PublishedWork::to, "last day on which it should be");
    private static final Field<PublishedWork, Place> PLACE =
            Field.required("place", Shapes.oneOf(Place.class), PublishedWork::place, "afloat or ashore");
    private static final Field<PublishedWork, Boolean> LIFTS =
            Field.or("lifts", Shapes.yesNo(), false, PublishedWork::lifts, "true: she is lifted for the visit");
    private static final Field<PublishedWork, Double> VISIT_MINUTES = Field.required(
            "visit-minutes", Numbers.notNegative(), PublishedWork::visitMinutes, "minutes of the whole visit");
    private static final Field<PublishedWork, String> INSTALLATION =
            Field.required("installation", Shapes.id(), w -> w.part().installationId(), "id of the installation");
    private static final Field<PublishedWork, String> PART =
            Field.required("part", Shapes.id(), w -> w.part().partId(), "id of the part");
    private static final Field<PublishedWork, String> PART_NAME =
            Field.required("part-name", Shapes.text(), PublishedWork::partName, "the part as people say it");
    private static final Field<PublishedWork, String> RULE =
            Field.required("rule", Shapes.id(), PublishedWork::ruleId, "id of the rule");
    private static final Field<PublishedWork, LocalDate> DUE =
            Field.required("due-on", Shapes.date(), PublishedWork::dueOn, "the day it falls due");
    private static final Field<PublishedWork, ClauseKind> CLAUSE = Field.required(
            "clause", Shapes.oneOf(ClauseKind.class), PublishedWork::clause, "the clause that came first");
    private static final Field<PublishedWork, Double> MINUTES =
            Field.required("minutes", Numbers.notNegative(), PublishedWork::minutes, "working minutes");
    private static final Field<PublishedWork, Double> PRICE = Field.or(
            "price",
            Numbers.any(),
            0.0,
            PublishedWork::price,
            "labour and supplies without tax, in the yard's currency");
    private static final Field<PublishedWork, String> RESTS_ON = Field.required(
            "rests-on",
            Shapes.text(),
            PublishedWork::restsOn,
            "a print of all that the boat's visits were planned from, and of her lines here; where it does not fit any"
                    + " more her visits are planned again");

    /** The table, a row for each work of each visit. */
    public static final Sheet<PublishedWork> VISITS = new Sheet<>(Block.of(
            "a work",
            "which works are in which visit of the published season",
            v -> new PublishedWork(
                    v.get(BOAT),
                    v.get(FROM),
                    v.get(TO),
                    v.get(PLACE),
                    v.get(LIFTS),
                    v.get(VISIT_MINUTES),
                    new PartRef(v.get(INSTALLATION), v.get(PART)),
                    v.get(PART_NAME),
                    v.get(RULE),
                    v.get(DUE),
                    v.get(CLAUSE),
                    v.get(MINUTES),
                    v.get(PRICE),
                    v.get(RESTS_ON)),
            BOAT,
            FROM,
            TO,
            PLACE,
            LIFTS,
            VISIT_MINUTES,
            INSTALLATION,
            PART,
            PART_NAME,
            RULE,
            DUE,
            CLAUSE,
            MINUTES,
            PRICE,
            RESTS_ON));

    private SeasonVisitsSheet() {}
}
