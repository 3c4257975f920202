package sternwright.app.files.packed;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Bytes being written: whole numbers seven bits a byte, what was said before by its place. */
final class PackedOut {
    /** Stands for nothing. */
    static final int NONE = 0;
    /** Stands for something said here for the first time. */
    static final int FIRST = 1;
    /** From here on places are counted. */
    static final int PLACES = 2;

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final Map<Object, Integer> words;
    private final Map<Object, Integer> said = new HashMap<>();

    PackedOut(Map<Object, Integer> words) {
        this.words = words;
    }

    byte[] bytes() {
        return bytes.toByteArray();
    }

    void octet(int value) {
        bytes.write(value);
    }

    void number(long value) {
        long rest = value;
        while ((rest & ~0x7FL) != 0) {
            bytes.write((int) (rest & 0x7F) | 0x80);
            rest >>>= 7;
        }
        bytes.write((int) rest);
    }

    /** Small numbers of either sign take few bytes. */
    void signed(long value) {
        number((value << 1) ^ (value >> 63));
    }

    void text(@Nullable String text) {
        if (repeated(text)) {
            byte[] utf8 = String.valueOf(text).getBytes(StandardCharsets.UTF_8);
            number(utf8.length);
            bytes.writeBytes(utf8);
            said(String.valueOf(text));
        }
    }

    /** Writes nothing or the place of what was said before; true if it has to be said now. */
    boolean repeated(@Nullable Object value) {
        if (value == null) {
            number(NONE);
            return false;
        }
        Integer place = words.get(value);
        Integer before = place == null ? said.get(value) : place;
        if (before != null) {
            number(PLACES + (place == null ? words.size() + before : before));
            return false;
        }
        number(FIRST);
        return true;
    }

    /** To be said after a thing was written whole. */
    void said(Object value) {
        said.put(value, said.size());
    }
}
