package sternwright.app.files;

import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.Shelf;

/** A yard as it was read, from which it can be read again for the price of what has changed since. */
public final class YardSnapshot {
    private final String state;
    private final LocalDate latest;
    private final Map<String, String> marks;
    private final YardFolder.Common common;
    private final Map<String, BoatFile> boats;
    private final YardFiles files;
    private final Set<String> changed;

    private YardSnapshot(
            String state,
            LocalDate latest,
            Map<String, String> marks,
            YardFolder.Common common,
            Map<String, BoatFile> boats,
            YardFiles files,
            Set<String> changed) {
        this.state = state;
        this.latest = latest;
        this.marks = marks;
        this.common = common;
        this.boats = boats;
        this.files = files;
        this.changed = changed;
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
        Set<String> changed = new LinkedHashSet<>();
        for (String id : ids) {
            if (before == null || !same || !before.holds(id, marks)) {
                changed.add(id);
            }
        }
        Map<String, BoatFile> fresh = new LinkedHashMap<>();
        changed.parallelStream()
                .map(id -> BoatFile.read(folder.layout(), id, latest, check))
                .toList()
                .forEach(f -> fresh.put(f.history().boatId(), f));
        Map<String, BoatFile> boats = new LinkedHashMap<>();
        for (String id : ids) {
            BoatFile read = fresh.get(id);
            boats.put(id, read != null ? read : Objects.requireNonNull(before == null ? null : before.boats.get(id)));
        }
        YardFiles files = folder.together(common, List.copyOf(boats.values()));
        return new YardSnapshot(state, latest, marks, common, boats, files, Set.copyOf(changed));
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
