package sternwright.app.files.kind;

import java.util.List;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.yard.StoreItem;

/** The list of everything the generic programme takes from the stores, with example prices, inside the program. */
public final class StoresShape {
    private static final Field<StoreItem, String> ID =
            Field.required("id", Shapes.id(), StoreItem::id, "short name, as used by rules");
    private static final Field<StoreItem, String> NAME =
            Field.required("name", Shapes.text(), StoreItem::name, "as written on estimate and pick list");
    private static final Field<StoreItem, String> UNIT =
            Field.or("unit", Shapes.text(), "pcs", StoreItem::unit, "what one is counted in: L, pcs, kg, m");
    private static final Field<StoreItem, Double> PRICE =
            Field.required("price", Numbers.notNegative(), StoreItem::price, "price of one unit without tax");

    private static final Block<StoreItem> ITEM = Block.of(
            "a thing in the stores",
            "a thing in the stores and what it sells for",
            v -> new StoreItem(v.get(ID), v.get(NAME), v.get(UNIT), v.get(PRICE)),
            ID,
            NAME,
            UNIT,
            PRICE);

    /** The stores as a file of their own. */
    public record Stores(List<StoreItem> items) {
        /** Copies the list. */
        public Stores {
            items = List.copyOf(items);
        }
    }

    private static final Field<Stores, List<StoreItem>> ITEMS = Field.required(
            "stores", Many.list(ITEM).uniqueBy(StoreItem::id), Stores::items, "what the rules take from the stores");

    /** The whole file. */
    public static final Block<Stores> STORES =
            Block.of("the stores", "what the rules take, with example prices", v -> new Stores(v.get(ITEMS)), ITEMS);

    private StoresShape() {}
}
