package sternwright.app.web.due;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import sternwright.app.desk.InventedDesk;
import sternwright.app.web.page.Sorting;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;

/** Sorting by numbers worked out once gives the order that comparing the words themselves gives. */
class DueOrdersTest {
    private static final DueAsked ALL = new DueAsked(null, null, null, null, null, null, DueAsked.ALL);

    private final List<Due> dues = InventedDesk.dues();
    private final DueOrders orders = new DueOrders(InventedDesk.yard(), dues);

    private final Map<String, Comparator<Due>> words = Map.of(
            "on", Comparator.comparing(Due::dueOn),
            "work", Comparator.comparing(d -> d.rule().work()),
            "boat", Comparator.comparing(d -> boat(d).name()),
            "berth", Comparator.comparing(d -> boat(d).berthId()),
            "state", Comparator.comparing(Due::state));

    private static Boat boat(Due due) {
        return Objects.requireNonNull(InventedDesk.yard().boats().get(due.boatId()));
    }

    @Test
    void everyColumnUpAndDown() {
        assertEquals(words.keySet(), orders.columns());
        for (String column : orders.columns()) {
            for (boolean down : new boolean[] {false, true}) {
                Sorting sorting = new Sorting(column, down);
                List<Due> expected = dues.stream().sorted(sorting.order(words)).toList();
                assertEquals(expected, orders.find(ALL, sorting).works(), column + " " + down);
            }
        }
    }

    @Test
    void aNarrowedListIsCountedAndKept() {
        DueAsked now = new DueAsked(null, null, null, null, null, null, null);
        Sorting soonest = new Sorting(DueOrders.SOONEST, false);
        DueOrders.Found found = orders.find(now, soonest);
        assertFalse(found.works().isEmpty());
        assertEquals(dues.stream().filter(d -> d.state() == DueState.OVERDUE).count(), found.overdue());
        assertSame(found, orders.find(new DueAsked(null, null, null, null, null, null, null), soonest));
    }
}
