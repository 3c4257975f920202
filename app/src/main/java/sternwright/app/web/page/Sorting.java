package sternwright.app.web.page;

import java.util.Comparator;
import java.util.Map;

/**
 * By which column a list is sorted.
 *
 * @param column the column's name
 * @param down whether the largest comes first
 */
public record Sorting(String column, boolean down) {
    /** Name in an address; a minus before the column turns the order round. */
    public static final String NAME = "sort";

    /**
     * The sorting asked for.
     *
     * @param asked as it stands in the address; empty or unknown gives the first choice
     * @param first the column to sort by if nothing else is asked
     * @param columns the columns that can be sorted by
     * @return the sorting
     */
    public static Sorting of(String asked, String first, java.util.Set<String> columns) {
        boolean down = asked.startsWith("-");
        String column = down ? asked.substring(1) : asked;
        return columns.contains(column) ? new Sorting(column, down) : new Sorting(first, false);
    }

    /**
     * The order of the column.
     *
     * @param orders an order for each column
     * @param <T> the lines
     * @return the order, turned round if asked
     */
    public <T> Comparator<T> order(Map<String, Comparator<T>> orders) {
        Comparator<T> order = orders.get(column);
        if (order == null) {
            throw new IllegalArgumentException("no order for " + column);
        }
        return down ? order.reversed() : order;
    }

    /**
     * What the address says when the head of a column is pressed.
     *
     * @param pressed the column
     * @return the column, turned round if it leads already
     */
    public String press(String pressed) {
        return pressed.equals(column) && !down ? "-" + pressed : pressed;
    }

    /**
     * What screen readers are told of a column.
     *
     * @param asked the column
     * @return ascending, descending or none
     */
    public String aria(String asked) {
        return asked.equals(column) ? (down ? "descending" : "ascending") : "none";
    }
}
