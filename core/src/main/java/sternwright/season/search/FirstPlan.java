package sternwright.season.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/** The plan at once: halves in the order of their dates, each where it costs least. */
public final class FirstPlan {
    private FirstPlan() {}

    /**
     * Places every half that is not placed yet.
     *
     * @return whether all could be placed; otherwise some operations are still out
     */
    public static boolean fill(Timetable t, long seed) {
        SeasonArrays a = t.a;
        Insertion insertion = new Insertion(t, new SplittableRandom(seed));
        Integer[] halves = IntStream.range(0, a.halfOperations.length).boxed().toArray(Integer[]::new);
        Arrays.sort(halves, Comparator.comparingInt(h -> date(a, h)));
        boolean whole = true;
        for (int h : halves) {
            whole &= insertion.half(h);
        }
        return whole;
    }

    /** The earliest date by which something of half {@code h} should be done. */
    private static int date(SeasonArrays a, int h) {
        int date = Integer.MAX_VALUE;
        for (int i : a.halfOperations[h]) {
            int own = a.latePerQ[i] > 0 ? a.due[i] : a.latest[i] + a.length[i];
            date = Math.min(date, own);
        }
        return date;
    }
}
