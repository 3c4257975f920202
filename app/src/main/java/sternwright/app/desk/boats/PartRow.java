package sternwright.app.desk.boats;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.due.Due;
import sternwright.due.DueState;

/**
 * One part of an installation with what falls due on it.
 *
 * @param ref the part
 * @param key its letter on the picture; empty if nothing is to say about it now
 * @param part as registered
 * @param kindName its kind as people say it
 * @param since fitted or renewed on this day; null if not known
 * @param months whole months since then; null if not known
 * @param hours engine hours since then, to the last reading of the meter; null if not known
 * @param state the worst of its works; null if no rule is in force on it
 * @param dues what falls due on it: the worst state first, then by date
 */
public record PartRow(
        PartRef ref,
        String key,
        Part part,
        String kindName,
        @Nullable LocalDate since,
        @Nullable Integer months,
        @Nullable Double hours,
        @Nullable DueState state,
        List<Due> dues) {
    /** Copies the list. */
    public PartRow {
        dues = List.copyOf(dues);
    }

    /**
     * The id of its row in a page, to which the picture's mark leads.
     *
     * @return such as {@code part-port-raw-water-pump}
     */
    public String anchor() {
        return anchor(ref);
    }

    static String anchor(PartRef ref) {
        return "part-" + ref.installationId() + "-" + ref.partId();
    }
}
