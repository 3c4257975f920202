package sternwright.app.web.due;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import sternwright.app.desk.derived.LastFew;
import sternwright.app.files.YardFiles;
import sternwright.app.web.page.Sorting;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;

/**
 * The due list of a yard in every order that can be asked for. A list of many boats is sorted by numbers: the place of each boat and
 * each work in its order is worked out once, and the last few lists that were asked for are kept.
 */
final class DueOrders {
    static final String SOONEST = "on";
    private static final int KEPT = 12;
    private static final int LOW = 32;

    private final YardFiles files;
    private final List<Due> all;
    private final Map<String, ToIntFunction<Due>> orders;
    private final LastFew<Question, Found> known = new LastFew<>(KEPT);

    private record Question(DueAsked asked, Sorting sorting) {}

    /**
     * A list that was asked for.
     *
     * @param works in the order asked for
     * @param overdue how many of them are overdue
     */
    record Found(List<Due> works, long overdue) {}

    DueOrders(YardFiles files, List<Due> all) {
        this.files = files;
        this.all = all;
        Collection<Boat> boats = files.boats().values();
        Map<String, Integer> names = byBoat(boats, places(boats, Boat::name), Boat::name);
        Map<String, Integer> berths = byBoat(boats, places(boats, Boat::berthId), Boat::berthId);
        Map<String, Integer> works = places(all, d -> d.rule().work());
        orders = Map.of(
                SOONEST,
                d -> (int) d.dueOn().toEpochDay(),
                "work",
                d -> place(works, d.rule().work()),
                "boat",
                d -> place(names, d.boatId()),
                "berth",
                d -> place(berths, d.boatId()),
                "state",
                d -> d.state().ordinal());
    }

    private static <T> Map<String, Integer> places(Collection<T> all, java.util.function.Function<T, String> word) {
        List<String> sorted = all.stream()
                .map(word)
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
        Map<String, Integer> places = new HashMap<>();
        sorted.forEach(w -> places.put(w, places.size()));
        return places;
    }

    private static Map<String, Integer> byBoat(
            Collection<Boat> boats, Map<String, Integer> places, java.util.function.Function<Boat, String> word) {
        Map<String, Integer> byBoat = new HashMap<>();
        boats.forEach(b -> byBoat.put(b.id(), place(places, word.apply(b))));
        return byBoat;
    }

    private static int place(Map<String, Integer> places, String word) {
        return Objects.requireNonNull(places.get(word));
    }

    /** The columns that can be sorted by. */
    Set<String> columns() {
        return orders.keySet();
    }

    /** The list that is asked for. */
    Found find(DueAsked asked, Sorting sorting) {
        return known.of(new Question(asked, sorting), () -> found(asked, sorting));
    }

    private Found found(DueAsked asked, Sorting sorting) {
        List<Due> found = all.stream().filter(asked.of(files.boats())).toList();
        boolean asItCame = sorting.column().equals(SOONEST) && !sorting.down();
        return new Found(
                asItCame ? found : sorted(found, sorting),
                found.stream().filter(d -> d.state() == DueState.OVERDUE).count());
    }

    /** By the place in the order above, by the place in the list below: works that are equal stay as they came. */
    private List<Due> sorted(List<Due> found, Sorting sorting) {
        ToIntFunction<Due> order = Objects.requireNonNull(orders.get(sorting.column()));
        return IntStream.range(0, found.size())
                .mapToLong(i -> {
                    long place = order.applyAsInt(found.get(i));
                    return (sorting.down() ? -place : place) << LOW | i;
                })
                .sorted()
                .mapToObj(key -> found.get((int) key))
                .toList();
    }
}
