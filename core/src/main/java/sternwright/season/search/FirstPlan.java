package sternwright.season.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/** The plan at once: halves in the order of their dates, each where it costs least. */
public final class FirstPlan {
    private static final int ATTEMPTS = 8;

    private FirstPlan() {}

    /**
     * Places every half that is not placed yet. If one finds no room, all is tried again with that one earlier; at last room is made
     * for the ones that are left.
     *
     * @return operations that could not be placed, empty if all could
     */
    public static List<Integer> fill(Timetable t, long seed) {
        return fill(t, seed, ATTEMPTS, true);
    }

    /** The same with another number of attempts, at least 1, and without making room. */
    public static List<Integer> fill(Timetable t, long seed, int attempts) {
        return fill(t, seed, attempts, false);
    }

    private static List<Integer> fill(Timetable t, long seed, int attempts, boolean makeRoom) {
        SeasonArrays a = t.a;
        int[] fixed = t.start.clone();
        SplittableRandom random = new SplittableRandom(seed);
        Insertion insertion = new Insertion(t, random);
        List<Integer> halves = inOrderOfDates(a);
        List<Integer> failed = List.of();
        for (int attempt = 0; attempt < attempts; attempt++) {
            if (attempt > 0) {
                clear(t, fixed);
                halves.removeAll(failed);
                halves.addAll(0, failed);
            }
            failed = halves.stream().filter(h -> !insertion.half(h)).toList();
            if (failed.isEmpty()) {
                return List.of();
            }
        }
        if (makeRoom) {
            new MakingRoom(t, insertion, fixed, random).settle(failed);
        }
        return IntStream.range(0, a.n)
                .filter(i -> t.start[i] == Timetable.OUT)
                .boxed()
                .toList();
    }

    private static List<Integer> inOrderOfDates(SeasonArrays a) {
        int[] dates = new int[a.halfOperations.length];
        Arrays.setAll(dates, h -> date(a, h));
        List<Integer> halves =
                new ArrayList<>(IntStream.range(0, dates.length).boxed().toList());
        halves.sort(Comparator.comparingInt(h -> dates[h]));
        return halves;
    }

    private static void clear(Timetable t, int[] fixed) {
        for (int i = 0; i < fixed.length; i++) {
            if (t.start[i] != fixed[i] && t.start[i] != Timetable.OUT) {
                t.remove(i);
            }
        }
    }

    /** The earliest date by which something of half {@code h} should be done. */
    private static int date(SeasonArrays a, int h) {
        return Arrays.stream(a.halfOperations[h])
                .map(i -> a.latePerQ[i] > 0 ? a.due[i] : a.latest[i] + a.length[i])
                .min()
                .orElse(Integer.MAX_VALUE);
    }
}
