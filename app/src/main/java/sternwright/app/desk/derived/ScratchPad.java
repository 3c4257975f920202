package sternwright.app.desk.derived;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Bytes by name on a disk, so that they take no memory: one file of a bounded length that is written round and round. What was put
 * first is forgotten first. The file is this program's own, has no name where the system allows it, and is gone when it ends.
 * Whoever asks while another still holds the bytes gets the same, never to be changed: a hundred readers of one paper need it once.
 */
final class ScratchPad implements AutoCloseable {
    private final long length;
    private final Map<String, Place> places = new LinkedHashMap<>();

    @Nullable
    private RandomAccessFile file;

    private boolean closed;
    private long next;

    private record Place(long at, int length, WeakReference<byte[]> held) {
        boolean meets(long from, long to) {
            return at < to && at + length > from;
        }
    }

    /**
     * Ready to be written; the file is made when it is first needed.
     *
     * @param length of the file, in bytes
     */
    ScratchPad(long length) {
        this.length = length;
    }

    /** Bytes that were put; null if they were not, or are forgotten. */
    synchronized byte @Nullable [] get(String name) throws IOException {
        Place place = places.get(name);
        RandomAccessFile from = file;
        if (place == null || from == null) {
            return null;
        }
        byte[] held = place.held.get();
        if (held != null) {
            return held;
        }
        byte[] bytes = new byte[place.length];
        from.seek(place.at);
        from.readFully(bytes);
        // Put at the same name it keeps its turn of being forgotten.
        places.put(name, new Place(place.at, place.length, new WeakReference<>(bytes)));
        return bytes;
    }

    /** Puts bytes; what is longer than the whole file is not kept. */
    synchronized void put(String name, byte[] bytes) throws IOException {
        if (closed || bytes.length > length) {
            return;
        }
        long at = next + bytes.length > length ? 0 : next;
        forget(at, at + bytes.length);
        places.remove(name);
        RandomAccessFile to = open();
        to.seek(at);
        to.write(bytes);
        next = at + bytes.length;
        places.put(name, new Place(at, bytes.length, new WeakReference<>(bytes)));
    }

    private void forget(long from, long to) {
        for (Iterator<Place> all = places.values().iterator(); all.hasNext(); ) {
            if (all.next().meets(from, to)) {
                all.remove();
            }
        }
    }

    private RandomAccessFile open() throws IOException {
        RandomAccessFile there = file;
        if (there == null) {
            Path path = Files.createTempFile("sternwright", ".scratch");
            there = new RandomAccessFile(path.toFile(), "rw");
            file = there;
            try {
                Files.delete(path);
            } catch (IOException notWhileOpen) {
                path.toFile().deleteOnExit();
            }
        }
        return there;
    }

    @Override
    public synchronized void close() throws IOException {
        closed = true;
        places.clear();
        RandomAccessFile there = file;
        if (there != null) {
            there.close();
            file = null;
        }
    }
}
