package sternwright.app.files;

import java.io.IOException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.Shelf;

/** A yard as it was read, from which it can be read again for the price of what has changed since. */
public final class YardSnapshot {
    /** Rows kept in one go: people who write wait no longer than for so many. */
    private static final int AT_ONCE = 100;

    private final String state;
    private final LocalDate latest;
    private final Map<String, String> marks;
    private final YardFolder.Common common;
    private final Map<String, BoatFile> boats;
    private final YardFiles files;
    private final Set<String> changed;

    private final Map<String, String> wearFrom;

    /** Null where nothing is kept from one start to the next. */
    @Nullable
    private final KeptBoats kept;

    private final List<BoatFile> parsed;

    private YardSnapshot(
            String state,
            LocalDate latest,
            Map<String, String> marks,
            YardFolder.Common common,
            Map<String, BoatFile> boats,
            YardFiles files,
            Set<String> changed,
            Map<String, String> wearFrom,
            @Nullable KeptBoats kept,
            List<BoatFile> parsed) {
        this.state = state;
        this.latest = latest;
        this.marks = marks;
        this.common = common;
        this.boats = boats;
        this.files = files;
        this.changed = changed;
        this.wearFrom = wearFrom;
        this.kept = kept;
        this.parsed = parsed;
    }

    /**
     * Reads everything.
     *
     * @param shelf where the yard's texts are kept
     * @param latest the last day on which anything can have happened
     * @return all that it says
     * @throws BadInput with every problem of every text
     * @throws IOException if the keeper cannot be read
     */
    public static YardSnapshot of(Shelf shelf, LocalDate latest) throws IOException {
        return read(shelf, latest, null);
    }

    /**
     * Reads what has changed.
     *
     * @param shelf the same shelf
     * @param latest the last day on which anything can have happened
     * @return all that it says now; this very snapshot if nothing has changed
     * @throws BadInput with every problem of every text
     * @throws IOException if the keeper cannot be read
     */
    public YardSnapshot next(Shelf shelf, LocalDate latest) throws IOException {
        return latest.equals(this.latest) && shelf.state().equals(state) ? this : read(shelf, latest, this);
    }

    /** Marks are looked at before texts: a text written in between is read once more the next time, never missed. */
    private static YardSnapshot read(Shelf shelf, LocalDate latest, @Nullable YardSnapshot before) throws IOException {
        String state = shelf.state();
        Map<String, String> marks = new TreeMap<>(shelf.marks());
        YardFolder folder = YardFolder.piecewise(shelf, latest);
        boolean same = before != null && shared(marks).equals(shared(before.marks));
        YardFolder.Common common = before != null && same ? before.common : folder.common();
        BoatCheck check = common.check();
        List<String> ids = folder.layout().boatIds();
        boolean held = before != null
                && (same || check.grounds().equals(before.common.check().grounds()));
        Set<String> changed = changed(ids, held ? before : null, marks);
        KeptBoats kept = before == null
                ? KeptBoats.of(folder.layout().shelf(), ids, latest, check.grounds())
                        .orElse(null)
                : null;
        Map<String, BoatFile> fresh = kept == null ? new HashMap<>() : kept.there();
        List<BoatFile> parsed =
                parsed(folder.layout(), changed.stream().filter(id -> !fresh.containsKey(id)), latest, check);
        parsed.forEach(f -> fresh.put(f.id(), f));
        Map<String, BoatFile> boats = new LinkedHashMap<>();
        for (String id : ids) {
            BoatFile read = fresh.get(id);
            boats.put(id, read != null ? read : Objects.requireNonNull(before == null ? null : before.boats.get(id)));
        }
        YardFiles files = folder.together(common, List.copyOf(boats.values()));
        return new YardSnapshot(
                state,
                latest,
                marks,
                common,
                boats,
                files,
                Set.copyOf(changed),
                wearFrom(kept, same ? before : null, changed),
                kept,
                kept == null ? List.of() : parsed);
    }

    /** Boats from their texts; equal words of several are in memory once. */
    private static List<BoatFile> parsed(FolderLayout layout, Stream<String> ids, LocalDate latest, BoatCheck check) {
        Map<Object, Object> pool = new HashMap<>();
        List<BoatFile> read = side(ids)
                .map(id -> BoatFile.read(layout, id, latest, check).pack())
                .toList();
        return read.stream().map(f -> KeptBoats.slim(f, pool)).toList();
    }

    /** The boats that have to be read: all of them where nothing is held to be as before. */
    private static Set<String> changed(List<String> ids, @Nullable YardSnapshot before, Map<String, String> marks) {
        Set<String> changed = new LinkedHashSet<>();
        for (String id : ids) {
            if (before == null || !before.holds(id, marks)) {
                changed.add(id);
            }
        }
        return changed;
    }

    /** Not known any more once a text that holds for all boats has changed. */
    private static Map<String, String> wearFrom(
            @Nullable KeptBoats kept, @Nullable YardSnapshot before, Set<String> changed) {
        if (kept != null) {
            return kept.wearFrom();
        }
        Map<String, String> from = before == null ? new HashMap<>() : new HashMap<>(before.wearFrom);
        from.keySet().removeAll(changed);
        return from;
    }

    /** Side by side where there are processors for it. */
    private static <T> Stream<T> side(Stream<T> all) {
        return Runtime.getRuntime().availableProcessors() > 1 ? all.toList().parallelStream() : all;
    }

    /**
     * Keeps what was read from texts for the next start, where the keeper can do that.
     *
     * @throws IOException if the keeper cannot be written; nothing is lost but time
     */
    public void keep() throws IOException {
        if (kept != null && !parsed.isEmpty()) {
            for (int i = 0; i < parsed.size(); i += AT_ONCE) {
                kept.keep(kept.rows(parsed.subList(i, Math.min(parsed.size(), i + AT_ONCE))));
            }
        }
    }

    /**
     * Stands for a boat as she was read: the same object as long as neither her texts nor what she is checked against changes.
     *
     * @param boatId the boat
     * @return what to compare by identity; null if there is no such boat
     */
    public @Nullable Object reading(String boatId) {
        return boats.get(boatId);
    }

    /**
     * Stands for all that a boat's wear rests on, from one start to the next: this program, her texts, and those of yard, berths and
     * kinds of part.
     *
     * @param boatId the boat
     * @return empty where that is not known, as of boats that have changed since the start
     */
    public Optional<String> wearFrom(String boatId) {
        return Optional.ofNullable(wearFrom.get(boatId));
    }

    /**
     * The boats that are not as they were.
     *
     * @param before an earlier snapshot of the same yard
     * @return those that are new, gone, or were read anew since
     */
    public Set<String> since(YardSnapshot before) {
        Set<String> since = new TreeSet<>();
        boats.forEach((id, file) -> {
            if (before.boats.get(id) != file) {
                since.add(id);
            }
        });
        before.boats.keySet().stream().filter(id -> !boats.containsKey(id)).forEach(since::add);
        return since;
    }

    /** Whether a boat is there as she was: the same boat, history and hours. */
    private boolean holds(String id, Map<String, String> now) {
        return boats.containsKey(id)
                && sameMark(FolderLayout.boat(id), now)
                && sameMark(FolderLayout.history(id), now)
                && sameMark(FolderLayout.hours(id), now);
    }

    private boolean sameMark(String name, Map<String, String> now) {
        return Objects.equals(marks.get(name), now.get(name));
    }

    /** The marks of the texts that hold for all boats. */
    private static Map<String, String> shared(Map<String, String> marks) {
        Map<String, String> shared = new TreeMap<>();
        for (String name : List.of(FolderLayout.YARD, FolderLayout.BERTHS, FolderLayout.CATALOGUE)) {
            shared.put(name, marks.getOrDefault(name, ""));
        }
        marks.forEach((name, mark) -> {
            if (name.startsWith(FolderLayout.PROGRAMMES + "/")) {
                shared.put(name, mark);
            }
        });
        return shared;
    }

    /**
     * What the yard says.
     *
     * @return all of it
     */
    public YardFiles files() {
        return files;
    }

    /**
     * What the keeper's state was.
     *
     * @return a word to compare
     */
    public String state() {
        return state;
    }

    /**
     * The boats that were read anew for this snapshot.
     *
     * @return their ids
     */
    public Set<String> changed() {
        return changed;
    }
}
