package sternwright.app.files;

import java.lang.ref.WeakReference;
import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.packed.Packing;
import sternwright.boat.PartRef;
import sternwright.history.BoatHistory;
import sternwright.service.Rule;

/**
 * The histories of a yard by boat. They are the largest part of what a yard says and seldom looked at: each stays packed and is
 * unpacked when it is asked for, and forgotten again by the next collection of garbage.
 */
final class Histories extends AbstractMap<String, BoatHistory> {
    private final Map<String, Supplier<BoatHistory>> byBoat;

    private Histories(Map<String, Supplier<BoatHistory>> byBoat) {
        this.byBoat = Collections.unmodifiableMap(byBoat);
    }

    static Histories of(Map<String, Supplier<BoatHistory>> byBoat) {
        return new Histories(new LinkedHashMap<>(byBoat));
    }

    /** The packing of histories: works and readings of the shipped programme need not be spelt. */
    private static final class Words {
        static final Packing PACKING = new Packing(
                Shipped.genericProgramme().rules().stream().map(Rule::id).toList(), List.of(PartRef.class));
    }

    static Packing packing() {
        return Words.PACKING;
    }

    /** One history, packed. */
    static final class Packed implements Supplier<BoatHistory> {
        private final byte[] bytes;

        @Nullable
        private volatile WeakReference<BoatHistory> unpacked;

        Packed(byte[] bytes) {
            this.bytes = bytes;
        }

        byte[] bytes() {
            return bytes;
        }

        @Override
        public BoatHistory get() {
            WeakReference<BoatHistory> before = unpacked;
            BoatHistory history = before == null ? null : before.get();
            if (history == null) {
                history = packing().unpack(BoatHistory.class, bytes, null);
                unpacked = new WeakReference<>(history);
            }
            return history;
        }
    }

    @Override
    public boolean containsKey(@Nullable Object boatId) {
        return byBoat.containsKey(boatId);
    }

    @Override
    public @Nullable BoatHistory get(@Nullable Object boatId) {
        Supplier<BoatHistory> found = byBoat.get(boatId);
        return found == null ? null : found.get();
    }

    @Override
    public Set<String> keySet() {
        return byBoat.keySet();
    }

    @Override
    public Set<Entry<String, BoatHistory>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Entry<String, BoatHistory>> iterator() {
                Iterator<Entry<String, Supplier<BoatHistory>>> all =
                        byBoat.entrySet().iterator();
                return new Iterator<>() {
                    @Override
                    public boolean hasNext() {
                        return all.hasNext();
                    }

                    @Override
                    public Entry<String, BoatHistory> next() {
                        Entry<String, Supplier<BoatHistory>> one = all.next();
                        return Map.entry(one.getKey(), one.getValue().get());
                    }
                };
            }

            @Override
            public int size() {
                return byBoat.size();
            }
        };
    }
}
