package sternwright.app.files.kind;

import java.util.List;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.yard.StoreItem;

/** The list of everything the generic programme takes from the stores, with example prices, inside the program. */
public final class StoresShape {
    /** The stores as a file of their own. */
    public record Stores(List<StoreItem> items) {
        /** Copies the list. */
        public Stores {
            items = List.copyOf(items);
        }
    }

    private static final Field<Stores, List<StoreItem>> ITEMS = Field.required(
            "stores",
            Many.list(TariffShape.STORE_ITEM).uniqueBy(StoreItem::id),
            Stores::items,
            "what the rules take from the stores");

    /** The whole file. */
    public static final Block<Stores> STORES =
            Block.of("the stores", "what the rules take, with example prices", v -> new Stores(v.get(ITEMS)), ITEMS);

    private StoresShape() {}
}
