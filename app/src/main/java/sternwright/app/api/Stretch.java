package sternwright.app.api;

import java.util.List;
import java.util.function.Function;
import sternwright.app.files.problem.BadInput;

/**
 * A stretch of a long list.
 *
 * @param items what it holds
 * @param page which stretch, from 1
 * @param size how long a stretch is
 * @param total how long the list is
 * @param <T> what it is a list of
 */
public record Stretch<T>(List<T> items, int page, int size, int total) {
    private static final int LONGEST = 1000;

    /** Copies the list. */
    public Stretch {
        items = List.copyOf(items);
    }

    /** Cuts a stretch out and words only what it holds. */
    static <S, T> Stretch<T> of(List<S> all, int page, int size, Function<? super S, T> words) {
        check(page, size);
        long from = Math.min((page - 1L) * size, all.size());
        long to = Math.min(from + size, all.size());
        List<T> items = all.subList((int) from, (int) to).stream().map(words).toList();
        return new Stretch<>(items, page, size, all.size());
    }

    /** How many come before a stretch; more than any list holds is as good as the most. */
    static int before(int page, int size) {
        return (int) Math.min((page - 1L) * size, Integer.MAX_VALUE);
    }

    /** Refuses a stretch that cannot be. */
    static void check(int page, int size) {
        if (page < 1) {
            throw BadInput.of("page", "found " + page, "1 or more", "");
        }
        if (size < 1 || size > LONGEST) {
            throw BadInput.of("size", "found " + size, "1 to " + LONGEST, "");
        }
    }
}
