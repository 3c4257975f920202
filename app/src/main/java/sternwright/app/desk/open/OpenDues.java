package sternwright.app.desk.open;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardSnapshot;
import sternwright.boat.Boat;
import sternwright.due.Due;

/** What is due on the boats of an open yard, worked out again only for boats that have changed. */
final class OpenDues {
    private static final Comparator<Due> SOONEST =
            Comparator.comparing(Due::dueOn).thenComparing(Due::boatId);

    @Nullable
    private Known known;

    private record Known(YardSnapshot snapshot, LocalDate today, List<Due> all, Map<String, List<Due>> byBoat) {}

    synchronized List<Due> all(YardSnapshot snapshot, LocalDate today) {
        return known(snapshot, today).all;
    }

    synchronized List<Due> of(YardSnapshot snapshot, LocalDate today, String boatId) {
        return known(snapshot, today).byBoat.getOrDefault(boatId, List.of());
    }

    private Known known(YardSnapshot snapshot, LocalDate today) {
        Known before = known;
        if (before != null && before.snapshot == snapshot && before.today.equals(today)) {
            return before;
        }
        List<Due> all = before != null && before.today.equals(today) && sameRules(before.snapshot, snapshot)
                ? again(before, snapshot.files(), today)
                : new DueWork(snapshot.files()).all(today);
        Known now = new Known(snapshot, today, all, byBoat(all));
        known = now;
        return now;
    }

    private static boolean sameRules(YardSnapshot before, YardSnapshot now) {
        YardFiles a = before.files();
        YardFiles b = now.files();
        return a.yard() == b.yard()
                && a.catalogue() == b.catalogue()
                && a.berths().equals(b.berths())
                && a.programmes().equals(b.programmes());
    }

    /** The order of those that stay is kept, so that sorting again is one pass. */
    private static List<Due> again(Known before, YardFiles now, LocalDate today) {
        Set<String> changed = changed(before.snapshot.files(), now);
        List<Due> all = new ArrayList<>(before.all);
        all.removeIf(d -> changed.contains(d.boatId()));
        DueWork work = new DueWork(now);
        for (String id : changed) {
            Boat boat = now.boats().get(id);
            if (boat != null) {
                all.addAll(work.of(boat, now.history(id), today));
            }
        }
        all.sort(SOONEST);
        return List.copyOf(all);
    }

    /** Boats that are new, gone, or said anew since; the rest are the very same records. */
    private static Set<String> changed(YardFiles before, YardFiles now) {
        Set<String> changed = new TreeSet<>();
        before.boats().keySet().stream()
                .filter(id -> !now.boats().containsKey(id))
                .forEach(changed::add);
        now.boats().forEach((id, boat) -> {
            if (before.boats().get(id) != boat
                    || before.histories().get(id) != now.histories().get(id)) {
                changed.add(id);
            }
        });
        return changed;
    }

    private static Map<String, List<Due>> byBoat(List<Due> all) {
        Map<String, List<Due>> byBoat = new HashMap<>();
        all.forEach(
                d -> byBoat.computeIfAbsent(d.boatId(), id -> new ArrayList<>()).add(d));
        byBoat.replaceAll((id, dues) -> List.copyOf(dues));
        return byBoat;
    }
}
