package sternwright.app.files.packed;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Bytes being read. */
final class PackedIn {
    private final byte[] bytes;
    private final List<String> words;
    private final List<Object> said = new ArrayList<>();

    @Nullable
    private final Map<Object, Object> pool;

    private int at;

    PackedIn(byte[] bytes, List<String> words, @Nullable Map<Object, Object> pool) {
        this.bytes = bytes;
        this.words = words;
        this.pool = pool;
    }

    int octet() {
        return bytes[at++];
    }

    long number() {
        long value = 0;
        for (int shift = 0; ; shift += 7) {
            byte next = bytes[at++];
            value |= (long) (next & 0x7F) << shift;
            if (next >= 0) {
                return value;
            }
        }
    }

    long signed() {
        long value = number();
        return (value >>> 1) ^ -(value & 1);
    }

    @Nullable
    String text() {
        int place = (int) number();
        if (place != PackedOut.FIRST) {
            return (String) before(place);
        }
        int length = (int) number();
        String text = shared(new String(bytes, at, length, StandardCharsets.UTF_8));
        at += length;
        said.add(text);
        return text;
    }

    /** What was said before; null for nothing. */
    @Nullable
    Object before(int place) {
        if (place == PackedOut.NONE) {
            return null;
        }
        int counted = place - PackedOut.PLACES;
        return counted < words.size() ? words.get(counted) : said.get(counted - words.size());
    }

    void said(Object value) {
        said.add(value);
    }

    /** The one of equal things that is kept. */
    <T> T shared(T value) {
        if (pool == null) {
            return value;
        }
        Object known = pool.putIfAbsent(value, value);
        @SuppressWarnings("unchecked")
        T one = known == null ? value : (T) known;
        return one;
    }
}
