package sternwright.app.files.packed;

import java.time.LocalDate;
import java.util.concurrent.atomic.AtomicReferenceArray;

/** Days, each kept once: a yard names the same few thousand days a million times. */
public final class Days {
    private static final int MOST = 1 << 16;
    private static final AtomicReferenceArray<LocalDate> KNOWN = new AtomicReferenceArray<>(MOST);

    private Days() {}

    /**
     * The day.
     *
     * @param epochDay days since 1970-01-01
     * @return the same record for the same day, from 1970 for some 180 years
     */
    public static LocalDate of(long epochDay) {
        if (epochDay < 0 || epochDay >= MOST) {
            return LocalDate.ofEpochDay(epochDay);
        }
        LocalDate known = KNOWN.get((int) epochDay);
        if (known == null) {
            known = LocalDate.ofEpochDay(epochDay);
            KNOWN.set((int) epochDay, known);
        }
        return known;
    }

    /**
     * The one of equal days that is kept.
     *
     * @param day a day
     * @return the same day
     */
    public static LocalDate shared(LocalDate day) {
        return of(day.toEpochDay());
    }
}
