package sternwright.app.desk.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import sternwright.app.files.packed.Packing;
import sternwright.app.files.packed.ProgramMark;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.WorkedOut;
import sternwright.boat.PartRef;
import sternwright.season.dated.PublishedWork;

/**
 * The visits of boats as they were planned last for a season, published or not, kept where the keeper can do that: a run, those who
 * look its plan through and the next run rest on the same visits, and to plan those of thousands of boats takes minutes.
 */
final class KeptVisits {
    private static final Logger LOG = LoggerFactory.getLogger(KeptVisits.class);
    private static final String KIND = "season-visits";
    private static final int AT_ONCE = 500;
    private static final Packing PACKING = new Packing(List.of(), List.of(PartRef.class));

    private KeptVisits() {}

    /** All works of a boat. */
    record Works(List<PublishedWork> works) {}

    /** Every work that was kept by this program; those of a boat hold only while her print is the same. */
    static List<PublishedWork> read(Shelf shelf) {
        List<PublishedWork> all = new ArrayList<>();
        try {
            WorkedOut store = shelf.workedOut().orElse(null);
            if (store != null) {
                Map<Object, Object> pool = new HashMap<>();
                store.read(KIND, (id, from, content) -> {
                    if (from.equals(ProgramMark.text()) && Packing.sound(content)) {
                        all.addAll(PACKING.unpack(Works.class, content, pool).works());
                    }
                });
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + shelf.place(), e);
        }
        return all;
    }

    /** Keeps works in place of those of the same boats. Where that is refused nothing is lost but time. */
    static void keep(Shelf shelf, List<PublishedWork> works) {
        try {
            WorkedOut store = shelf.workedOut().orElse(null);
            if (store == null || works.isEmpty()) {
                return;
            }
            Map<String, WorkedOut.Row> some = new LinkedHashMap<>();
            for (List<PublishedWork> boat : byBoat(works)) {
                byte[] content = PACKING.pack(Works.class, new Works(boat));
                some.put(boat.get(0).boatId(), new WorkedOut.Row(ProgramMark.text(), content));
                if (some.size() == AT_ONCE) {
                    store.keep(KIND, some);
                    some.clear();
                }
            }
            store.keep(KIND, some);
        } catch (IOException e) {
            LOG.warn("planned visits could not be kept; they are planned again the next time", e);
        }
    }

    private static Iterable<List<PublishedWork>> byBoat(List<PublishedWork> works) {
        return works.stream()
                .collect(Collectors.groupingBy(PublishedWork::boatId, LinkedHashMap::new, Collectors.toList()))
                .values();
    }
}
