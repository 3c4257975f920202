package sternwright.app.desk.open;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardSnapshot;
import sternwright.app.files.shelf.Shelf;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.history.BoatHistory;

/** What is due on the boats of an open yard, worked out again only for boats that have changed. */
final class OpenDues {
    private static final Comparator<Due> SOONEST =
            Comparator.comparing(Due::dueOn).thenComparing(Due::boatId);

    private final KnownWear wear = new KnownWear();

    @Nullable
    private Known known;

    private record Known(YardSnapshot snapshot, LocalDate today, List<Due> all, Map<String, List<Due>> byBoat) {}

    /** Wear that was worked out before the program was started. */
    synchronized void recall(Shelf shelf, YardSnapshot snapshot, LocalDate today) throws IOException {
        if (known == null) {
            wear.recall(shelf, snapshot, today);
        }
    }

    /** Keeps wear for the next start. */
    void keep(Shelf shelf) throws IOException {
        wear.keep(shelf);
    }

    synchronized List<Due> all(YardSnapshot snapshot, LocalDate today) {
        return known(snapshot, today).all;
    }

    synchronized List<Due> of(YardSnapshot snapshot, LocalDate today, String boatId) {
        return known(snapshot, today).byBoat.getOrDefault(boatId, List.of());
    }

    /** What would be due if the yard had other programmes; nothing of it is kept. */
    List<Due> ifSo(YardSnapshot snapshot, YardFiles then, LocalDate today) {
        DueWork work = new DueWork(then);
        return work.all(today, wear.ifSo(snapshot, then, work));
    }

    private Known known(YardSnapshot snapshot, LocalDate today) {
        Known before = known;
        if (before != null && before.snapshot == snapshot && before.today.equals(today)) {
            return before;
        }
        List<Due> all = before != null && mostHolds(before, snapshot, today)
                ? again(before, snapshot, today)
                : anew(snapshot, today);
        Known now = new Known(snapshot, today, all, byBoat(all));
        known = now;
        return now;
    }

    /** Works out what would be much to wait for; a few changed boats are left to whoever asks. */
    synchronized void ahead(YardSnapshot snapshot, LocalDate today) {
        Known before = known;
        if (before == null || !mostHolds(before, snapshot, today)) {
            known(snapshot, today);
        }
    }

    /** Whether only boats that have changed must be worked out again. */
    private static boolean mostHolds(Known before, YardSnapshot snapshot, LocalDate today) {
        return before.today.equals(today) && sameRules(before.snapshot, snapshot);
    }

    private static boolean sameRules(YardSnapshot before, YardSnapshot now) {
        YardFiles a = before.files();
        YardFiles b = now.files();
        return a.yard() == b.yard()
                && a.catalogue() == b.catalogue()
                && a.berths().equals(b.berths())
                && a.programmes().equals(b.programmes());
    }

    private List<Due> anew(YardSnapshot snapshot, LocalDate today) {
        DueWork work = new DueWork(snapshot.files());
        return new SlimDues().of(work.all(today, wear.of(snapshot, work)));
    }

    /** The order of those that stay is kept, so that sorting again is one pass. */
    private List<Due> again(Known before, YardSnapshot snapshot, LocalDate today) {
        YardFiles now = snapshot.files();
        Set<String> changed = snapshot.since(before.snapshot);
        List<Due> all = new ArrayList<>(before.all);
        all.removeIf(d -> changed.contains(d.boatId()));
        DueWork work = new DueWork(now);
        SlimDues slim = new SlimDues();
        for (String id : changed) {
            Boat boat = now.boats().get(id);
            if (boat != null) {
                BoatHistory history = now.history(id);
                all.addAll(slim.of(
                        work.of(boat, history, today, wear.of(snapshot, work).of(boat, history, today))));
            }
        }
        all.sort(SOONEST);
        return List.copyOf(all);
    }

    private static Map<String, List<Due>> byBoat(List<Due> all) {
        Map<String, List<Due>> byBoat = new HashMap<>();
        all.forEach(
                d -> byBoat.computeIfAbsent(d.boatId(), id -> new ArrayList<>()).add(d));
        byBoat.replaceAll((id, dues) -> List.copyOf(dues));
        return byBoat;
    }
}
