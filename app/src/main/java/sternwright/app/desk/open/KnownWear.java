package sternwright.app.desk.open;

import java.io.IOException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardSnapshot;
import sternwright.app.files.packed.Packing;
import sternwright.app.files.packed.ProgramMark;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.WorkedOut;
import sternwright.boat.Berth;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartRef;
import sternwright.due.WearDate;
import sternwright.yard.SeasonDates;
import sternwright.yard.Use;

/**
 * When anodes are half gone, by far the most work of a due list. It is the same on all days of a month as long as a boat and what
 * it rests on are the same, so it is remembered that long, and kept from one start to the next where the keeper can do that.
 */
final class KnownWear {
    private static final String KIND = "wear";
    private static final int AT_ONCE = 500;
    private static final Packing PACKING = new Packing(List.of(), List.of(PartRef.class));

    private final AtomicReference<@Nullable Waters> last = new AtomicReference<>();
    private final Map<String, Known> byBoat = new ConcurrentHashMap<>();
    private final Map<String, WorkedOut.Row> unkept = new ConcurrentHashMap<>();

    /** What the wear of all boats rests on beside each boat herself. */
    private record Waters(PartCatalogue catalogue, Map<String, Berth> berths, List<Use> uses, SeasonDates season) {
        static Waters of(YardFiles files) {
            return new Waters(
                    files.catalogue(),
                    files.berths(),
                    files.yard().uses(),
                    files.yard().season());
        }
    }

    private record Known(Object read, Waters waters, YearMonth month, Map<PartRef, WearDate> dates) {}

    /** One anode. */
    record Line(PartRef part, WearDate date) {}

    /** All anodes of a boat. */
    record Lines(List<Line> lines) {
        static Lines of(Map<PartRef, WearDate> dates) {
            List<Line> lines = new ArrayList<>();
            dates.forEach((part, date) -> lines.add(new Line(part, date)));
            return new Lines(lines);
        }

        Map<PartRef, WearDate> dates() {
            Map<PartRef, WearDate> dates = new HashMap<>();
            lines.forEach(l -> dates.put(l.part, l.date));
            return dates;
        }
    }

    /** Answers from what is known; works out the rest. */
    DueWork.WearOf of(YardSnapshot snapshot, DueWork work) {
        Waters waters = waters(snapshot.files());
        return (boat, history, today) -> {
            Object read = Objects.requireNonNull(snapshot.reading(boat.id()));
            YearMonth month = YearMonth.from(today);
            Known known = byBoat.get(boat.id());
            if (known != null && known.read == read && known.waters == waters && known.month.equals(month)) {
                return known.dates;
            }
            Map<PartRef, WearDate> dates = work.wear(boat, history, today);
            byBoat.put(boat.id(), new Known(read, waters, month, dates));
            snapshot.wearFrom(boat.id())
                    .ifPresent(from -> unkept.put(
                            boat.id(),
                            new WorkedOut.Row(key(from, month), PACKING.pack(Lines.class, Lines.of(dates)))));
            return dates;
        };
    }

    /** Answers for a yard with other programmes; where wear would be another, it is worked out and not remembered. */
    DueWork.WearOf ifSo(YardSnapshot snapshot, YardFiles then, DueWork work) {
        DueWork.WearOf now = of(snapshot, work);
        boolean sameWaters = Waters.of(then).equals(waters(snapshot.files()));
        return (boat, history, today) ->
                sameWaters && boat == snapshot.files().boats().get(boat.id())
                        ? now.of(boat, history, today)
                        : work.wear(boat, history, today);
    }

    /** The same object as before while it says the same, so that each boat compares by identity. */
    private Waters waters(YardFiles files) {
        Waters now = Waters.of(files);
        Waters before = last.get();
        if (before != null && before.equals(now)) {
            return before;
        }
        last.set(now);
        return now;
    }

    private static String key(String madeFrom, YearMonth month) {
        return ProgramMark.sha256(madeFrom + ' ' + month);
    }

    /** Takes what was kept at an earlier start and still holds. */
    void recall(Shelf shelf, YardSnapshot snapshot, LocalDate today) throws IOException {
        WorkedOut store = shelf.workedOut().orElse(null);
        if (store == null) {
            return;
        }
        YearMonth month = YearMonth.from(today);
        Waters waters = waters(snapshot.files());
        Map<Object, Object> pool = new HashMap<>();
        store.read(KIND, (id, from, content) -> {
            boolean same = snapshot.wearFrom(id)
                    .filter(m -> key(m, month).equals(from))
                    .isPresent();
            if (same && Packing.sound(content)) {
                Map<PartRef, WearDate> dates =
                        PACKING.unpack(Lines.class, content, pool).dates();
                byBoat.put(id, new Known(Objects.requireNonNull(snapshot.reading(id)), waters, month, dates));
            }
        });
    }

    /** Keeps what was worked out for the next start. */
    void keep(Shelf shelf) throws IOException {
        WorkedOut store = shelf.workedOut().orElse(null);
        if (store == null) {
            unkept.clear();
            return;
        }
        Map<String, WorkedOut.Row> some = new LinkedHashMap<>();
        for (Map.Entry<String, WorkedOut.Row> row : Map.copyOf(unkept).entrySet()) {
            some.put(row.getKey(), row.getValue());
            unkept.remove(row.getKey(), row.getValue());
            if (some.size() == AT_ONCE) {
                store.keep(KIND, some);
                some.clear();
            }
        }
        if (!some.isEmpty()) {
            store.keep(KIND, some);
        }
    }
}
