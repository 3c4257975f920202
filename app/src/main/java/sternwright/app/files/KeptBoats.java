package sternwright.app.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.packed.Packing;
import sternwright.app.files.packed.ProgramMark;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.WorkedOut;
import sternwright.boat.Boat;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;

/**
 * What was read of boats, kept by their store from one start to the next: reading it costs a tenth of reading their texts.
 *
 * <p>What is kept of a boat is used only by the very build of the program that kept it, on a day not before the one on which she
 * was read, as long as her texts are the same, by the store's chain of hashes, and what she was checked against is. Everything else is
 * read from the texts, as if nothing were kept.
 */
final class KeptBoats {
    private static final String KIND = "boat";

    /** Day, length of the first part. */
    private static final int HEAD = Long.BYTES + Integer.BYTES;

    private final WorkedOut store;
    private final LocalDate latest;
    private final Map<String, String> madeFrom;
    private final String waters;

    private KeptBoats(WorkedOut store, LocalDate latest, Map<String, String> madeFrom, String waters) {
        this.store = store;
        this.latest = latest;
        this.madeFrom = madeFrom;
        this.waters = waters;
    }

    /** What a boat's file says beside her history. */
    record Read(Boat boat, List<Problem> remarks) {}

    private static final class Words {
        static final Packing PACKING = new Packing(
                Shipped.catalogue().kinds().stream().map(PartKind::id).toList(), List.of(PartRef.class));
    }

    /**
     * Opens what a shelf's keeper has kept.
     *
     * @param still the shelf as it is read
     * @param ids the boats
     * @param latest the last day on which anything can have happened
     * @param grounds what boats are checked against
     * @return empty where the keeper keeps nothing but texts
     */
    static Optional<KeptBoats> of(Shelf still, List<String> ids, LocalDate latest, BoatCheck.Grounds grounds)
            throws IOException {
        WorkedOut store = still.workedOut().orElse(null);
        if (store == null) {
            return Optional.empty();
        }
        Map<String, String> seals = store.seals();
        String common = ProgramMark.sha256(ProgramMark.text() + ' ' + grounds);
        Map<String, String> madeFrom = new HashMap<>();
        for (String id : ids) {
            String own =
                    sealed(seals, List.of(FolderLayout.boat(id), FolderLayout.history(id), FolderLayout.hours(id)));
            if (!own.isEmpty()) {
                madeFrom.put(id, ProgramMark.sha256(common + id + own));
            }
        }
        String waters = sealed(seals, List.of(FolderLayout.YARD, FolderLayout.BERTHS, FolderLayout.CATALOGUE));
        return Optional.of(new KeptBoats(store, latest, madeFrom, waters));
    }

    /** Stands for some texts; empty if one is being changed. */
    private static String sealed(Map<String, String> seals, List<String> names) {
        List<String> own =
                names.stream().map(n -> seals.getOrDefault(n, "none")).toList();
        return own.contains(WorkedOut.MOVING) ? "" : own.toString();
    }

    /** What stands for all that each boat's wear was worked out from; boats of which that is not known are left out. */
    Map<String, String> wearFrom() {
        Map<String, String> from = new HashMap<>();
        if (!waters.isEmpty()) {
            madeFrom.forEach((id, made) -> from.put(id, made + waters));
        }
        return from;
    }

    /** The boats that can be used as they were kept. */
    Map<String, BoatFile> there() throws IOException {
        Map<String, BoatFile> there = new HashMap<>();
        Map<Object, Object> pool = new HashMap<>();
        store.read(KIND, (id, from, content) -> {
            if (from.equals(madeFrom.get(id))) {
                BoatFile file = unpacked(id, content, pool);
                if (file != null) {
                    there.put(id, file);
                }
            }
        });
        return there;
    }

    private @Nullable BoatFile unpacked(String id, byte[] content, Map<Object, Object> pool) {
        ByteBuffer head = ByteBuffer.wrap(content);
        if (content.length < HEAD || head.getLong() > latest.toEpochDay()) {
            return null;
        }
        int middle = HEAD + head.getInt();
        if (middle < HEAD || middle > content.length) {
            return null;
        }
        byte[] first = Arrays.copyOfRange(content, HEAD, middle);
        byte[] second = Arrays.copyOfRange(content, middle, content.length);
        if (!Packing.sound(first) || !Packing.sound(second)) {
            return null;
        }
        Read read = Words.PACKING.unpack(Read.class, first, pool);
        return new BoatFile(id, Optional.of(read.boat()), new Histories.Packed(second), List.of(), read.remarks());
    }

    /** The same boat with equal words and figures of all boats in memory once, as if she had been kept. */
    static BoatFile slim(BoatFile file, Map<Object, Object> pool) {
        Boat boat = file.boat().orElse(null);
        if (boat == null || !file.problems().isEmpty()) {
            return file;
        }
        byte[] packed = Words.PACKING.pack(Read.class, new Read(boat, file.remarks()));
        Read read = Words.PACKING.unpack(Read.class, packed, pool);
        return new BoatFile(file.id(), Optional.of(read.boat()), file.packed(), file.problems(), read.remarks());
    }

    /** The rows that keep boats which were read from their texts; those with mistakes are read again the next time. */
    Map<String, WorkedOut.Row> rows(Collection<BoatFile> read) {
        Map<String, WorkedOut.Row> rows = new LinkedHashMap<>();
        for (BoatFile file : read) {
            String from = madeFrom.get(file.id());
            Boat boat = file.boat().orElse(null);
            if (from != null && boat != null && file.problems().isEmpty()) {
                rows.put(file.id(), new WorkedOut.Row(from, content(boat, file)));
            }
        }
        return rows;
    }

    private byte[] content(Boat boat, BoatFile file) {
        byte[] first = Words.PACKING.pack(Read.class, new Read(boat, file.remarks()));
        byte[] second = file.packed().bytes();
        return ByteBuffer.allocate(HEAD + first.length + second.length)
                .putLong(latest.toEpochDay())
                .putInt(first.length)
                .put(first)
                .put(second)
                .array();
    }

    /** Keeps rows for the next start. */
    void keep(Map<String, WorkedOut.Row> rows) throws IOException {
        store.keep(KIND, rows);
    }
}
