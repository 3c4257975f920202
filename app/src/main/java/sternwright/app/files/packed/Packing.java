package sternwright.app.files.packed;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/** Packs records and unpacks them. May be used from many threads. */
public final class Packing {
    private final List<String> words;
    private final Map<Object, Integer> places = new HashMap<>();
    private final Forms forms;

    /**
     * Gets ready.
     *
     * @param words texts that occur often; they take a byte or two each. The same when packing and unpacking
     * @param repeated kinds of small records that occur many times in one tree and are packed and shared as one
     */
    public Packing(List<String> words, List<Class<? extends Record>> repeated) {
        this.words = words.stream().distinct().toList();
        for (String word : this.words) {
            places.put(word, places.size());
        }
        this.forms = new Forms(repeated);
    }

    /**
     * Packs.
     *
     * @param type what it is
     * @param value the tree of records
     * @param <T> what it is
     * @return the bytes
     */
    public <T extends Record> byte[] pack(Class<T> type, T value) {
        PackedOut out = new PackedOut(places);
        forms.of(type).write(value, out);
        byte[] tree = out.bytes();
        byte[] bytes = Arrays.copyOf(tree, tree.length + Integer.BYTES);
        ByteBuffer.wrap(bytes).putInt(tree.length, checksum(bytes, tree.length));
        return bytes;
    }

    /**
     * Whether bytes are as they were packed.
     *
     * @param bytes from a disk, say
     * @return false if they were cut or altered
     */
    public static boolean sound(byte[] bytes) {
        int length = bytes.length - Integer.BYTES;
        return length > 0 && ByteBuffer.wrap(bytes).getInt(length) == checksum(bytes, length);
    }

    private static int checksum(byte[] bytes, int length) {
        CRC32 sum = new CRC32();
        sum.update(bytes, 0, length);
        return (int) sum.getValue();
    }

    /**
     * Unpacks.
     *
     * @param type what it is
     * @param bytes as they were packed
     * @param pool shares equal texts and numbers of many trees; null for none
     * @param <T> what it is
     * @return the tree of records
     */
    public <T extends Record> T unpack(Class<T> type, byte[] bytes, @Nullable Map<Object, Object> pool) {
        return type.cast(Objects.requireNonNull(forms.of(type).read(new PackedIn(bytes, words, pool))));
    }
}
