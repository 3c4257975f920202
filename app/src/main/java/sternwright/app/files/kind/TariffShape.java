package sternwright.app.files.kind;

import java.util.List;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.yard.LengthBand;
import sternwright.yard.StoreItem;
import sternwright.yard.Tariff;

/** What being ashore, being called out and things from the stores cost, as the yard's file says it. */
final class TariffShape {
    private static final Field<LengthBand, Double> UP_TO = Field.required(
            "up-to-length-m", Numbers.positive(), LengthBand::upToLengthM, "longest boat of this band, m");
    private static final Field<LengthBand, Double> LIFT_PRICE =
            Field.required("price", Numbers.notNegative(), LengthBand::price, "lift out, wash and launch together");
    private static final Block<LengthBand> BAND = Block.of(
            "a band",
            "one band of lifts by boat length",
            v -> new LengthBand(v.get(UP_TO), v.get(LIFT_PRICE)),
            UP_TO,
            LIFT_PRICE);

    private static final Field<Tariff, List<LengthBand>> LIFTS = Field.required(
            "lifts",
            Many.list(BAND)
                    .between(1, 100)
                    .uniqueBy(b -> String.valueOf(Numbers.any().write(b.upToLengthM()))),
            Tariff::lifts,
            "price of lift, wash and launch by length");
    private static final Field<Tariff, Double> STANDING = Field.required(
            "hard-standing-per-metre-week",
            Numbers.notNegative(),
            Tariff::hardStandingPerMetreWeek,
            "hard standing, per metre of boat and started week");
    private static final Field<Tariff, Double> CALL_OUT = Field.required(
            "call-out-afloat", Numbers.notNegative(), Tariff::callOutAfloat, "one call-out to a boat in the water");
    private static final Field<Tariff, Double> ASHORE = Field.required(
            "work-visit-ashore", Numbers.notNegative(), Tariff::workVisitAshore, "going to a boat that stands ashore");
    private static final Field<Tariff, Double> LOSS = Field.or(
            "loss-of-use-per-week",
            Numbers.notNegative(),
            0.0,
            Tariff::lossOfUsePerWeek,
            "what a week ashore in the boating months is worth to an owner; for planning only, never billed");
    private static final Field<Tariff, Double> DIVER = Field.or(
            "diver-hour",
            Numbers.notNegative(),
            0.0,
            Tariff::diverHour,
            "a diver's hour where work under water is done afloat");

    static final Block<Tariff> TARIFF = Block.of(
            "a tariff",
            "what being ashore and being called out costs",
            v -> new Tariff(v.get(LIFTS), v.get(STANDING), v.get(CALL_OUT), v.get(ASHORE), v.get(LOSS), v.get(DIVER)),
            LIFTS,
            STANDING,
            CALL_OUT,
            ASHORE,
            LOSS,
            DIVER);

    private static final Field<StoreItem, String> ID =
            Field.required("id", Shapes.id(), StoreItem::id, "short name, as used by rules");
    private static final Field<StoreItem, String> NAME =
            Field.required("name", Shapes.text(), StoreItem::name, "as written on estimate and pick list");
    private static final Field<StoreItem, String> UNIT =
            Field.or("unit", Shapes.text(), "pcs", StoreItem::unit, "what one is counted in: L, pcs, kg, m");
    private static final Field<StoreItem, Double> PRICE =
            Field.required("price", Numbers.notNegative(), StoreItem::price, "price of one unit without tax");

    static final Block<StoreItem> STORE_ITEM = Block.of(
            "a thing in the stores",
            "a thing in the stores and what it sells for",
            v -> new StoreItem(v.get(ID), v.get(NAME), v.get(UNIT), v.get(PRICE)),
            ID,
            NAME,
            UNIT,
            PRICE);

    private TariffShape() {}
}
