package sternwright.visit.planned;

import org.jspecify.annotations.Nullable;
import sternwright.measure.Money;

/**
 * Something taken from the stores.
 *
 * @param item id in the stores
 * @param name as printed
 * @param quantity how many units
 * @param unit the unit
 * @param price price of the whole line without tax, null if the stores have no price for it
 * @param note what to mind, such as an allowance where the capacity is not known; may be empty
 */
public record SupplyLine(
        String item,
        String name,
        double quantity,
        String unit,
        @Nullable Money price,
        String note) {}
