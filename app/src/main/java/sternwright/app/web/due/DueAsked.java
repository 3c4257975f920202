package sternwright.app.web.due;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.service.Half;
import sternwright.service.Place;

/**
 * What the list is narrowed to; an empty text asks for nothing.
 *
 * @param find letters of a boat's or an owner's name
 * @param rule id of a rule
 * @param place afloat or ashore: what can be done there
 * @param half half of the year; what belongs to any half is done in each
 * @param berth id of a berth
 * @param safety whether safety items alone
 * @param state how it stands; empty for what wants doing now, {@value #ALL} for everything
 */
record DueAsked(
        @Nullable String find,
        @Nullable String rule,
        @Nullable String place,
        @Nullable String half,
        @Nullable String berth,
        @Nullable Boolean safety,
        @Nullable String state) {
    static final String ALL = "all";

    /** Whether a boat is asked for. */
    Predicate<Boat> boats() {
        String letters = text(find).strip().toLowerCase(Locale.ROOT);
        String at = text(berth);
        return b -> (at.isEmpty() || b.berthId().equals(at))
                && (letters.isEmpty()
                        || b.id().equals(letters)
                        || (b.name() + " " + b.owner().name())
                                .toLowerCase(Locale.ROOT)
                                .contains(letters));
    }

    /** Whether a work is asked for, its boat aside. */
    Predicate<Due> works() {
        String id = text(rule);
        Place where = one(Place.values(), place);
        Half when = one(Half.values(), half);
        boolean careful = Boolean.TRUE.equals(safety);
        Predicate<DueState> stands = states();
        return d -> stands.test(d.state())
                && (!careful || d.rule().safety())
                && (id.isEmpty() || d.rule().id().equals(id))
                && (where == null || canBe(d, where))
                && (when == null || d.rule().half() == when || d.rule().half() == Half.ANY);
    }

    private static boolean canBe(Due due, Place where) {
        return due.rule().place() == where || due.rule().place() == Place.EITHER;
    }

    private Predicate<DueState> states() {
        if (text(state).equals(ALL)) {
            return s -> true;
        }
        DueState one = one(DueState.values(), state);
        return one == null ? s -> s == DueState.OVERDUE || s == DueState.DUE || s == DueState.UNKNOWN : s -> s == one;
    }

    /** Keeps the dues of the boats that are asked for. */
    Predicate<Due> of(Map<String, Boat> boats) {
        Predicate<Boat> wanted = boats();
        Map<String, Boat> kept = new java.util.HashMap<>();
        boats.values().stream().filter(wanted).forEach(b -> kept.put(b.id(), b));
        Predicate<Due> works = works();
        return kept.size() == boats.size() ? works : d -> kept.containsKey(d.boatId()) && works.test(d);
    }

    static String text(@Nullable String typed) {
        return Objects.requireNonNullElse(typed, "");
    }

    private static <E extends Enum<E>> @Nullable E one(E[] all, @Nullable String typed) {
        for (E each : all) {
            if (word(each).equals(typed)) {
                return each;
            }
        }
        return null;
    }

    /** How a choice stands in an address. */
    static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
