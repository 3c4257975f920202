package sternwright.app.web.page;

import java.util.List;

/**
 * One stretch of a long list.
 *
 * @param number which stretch, counted from 1
 * @param size lines a stretch
 * @param total lines in all
 */
public record Pager(int number, int size, long total) {
    /** Name of the stretch in an address. */
    public static final String NAME = "page";

    /** Keeps the stretch inside the list. */
    public Pager {
        number = Math.max(1, Math.min(number, (int) Math.max(1, (total + size - 1) / size)));
    }

    /**
     * How many stretches there are.
     *
     * @return at least 1
     */
    public int count() {
        return (int) Math.max(1, (total + size - 1) / size);
    }

    /**
     * Lines before this stretch.
     *
     * @return at least 0
     */
    public int before() {
        return (number - 1) * size;
    }

    /**
     * The first line of the stretch, counted from 1.
     *
     * @return 0 if the list is empty
     */
    public long first() {
        return total == 0 ? 0 : before() + 1L;
    }

    /**
     * The last line of the stretch.
     *
     * @return at most the total
     */
    public long last() {
        return Math.min(total, (long) number * size);
    }

    /**
     * Cuts the stretch out of the whole list.
     *
     * @param all the list
     * @param <T> its lines
     * @return the lines of the stretch
     */
    public <T> List<T> cut(List<T> all) {
        return all.subList(Math.min(before(), all.size()), Math.min(before() + size, all.size()));
    }
}
