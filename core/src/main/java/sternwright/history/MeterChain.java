package sternwright.history;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The readings of one meter that fit together: the longest row that never falls and never rises by more than 24 hours a day.
 *
 * <p>A single slip is passed over. A fall below half after which at least two readings stay low is taken for a meter that was
 * replaced without a note. A last reading that leaps away from all before it waits for another one that bears it out: a digit
 * too many would make every work fall due. All are said.
 */
record MeterChain(List<RunningHours.Point> points, List<MeterRemark> remarks) {
    private static final double HOURS_A_DAY = 24;
    private static final double NEW_METER_SHARE = 0.5;

    /** The chain of one meter that began at {@code start} hours; what reads less than that cannot be of this meter. */
    static MeterChain of(List<MeterReading> readings, double offset, double start) {
        List<MeterReading> possible = new ArrayList<>(readings);
        possible.removeIf(r -> r.hours() < start);
        MeterChain chain = of(possible, offset);
        if (possible.size() == readings.size()) {
            return chain;
        }
        List<MeterRemark> remarks = new ArrayList<>(chain.remarks);
        readings.stream()
                .filter(r -> r.hours() < start)
                .forEach(
                        r -> remarks.add(
                                new MeterRemark(
                                        r.date(),
                                        r.hours(),
                                        "which is lower than this meter began with",
                                        "The reading of " + hours(r.hours()) + " is lower than the " + hours(start)
                                                + " at which this meter was fitted and is passed over. Correct the one or the other.")));
        return new MeterChain(chain.points, remarks);
    }

    private static MeterChain of(List<MeterReading> readings, double offset) {
        if (allFit(readings)) {
            boolean[] kept = new boolean[readings.size()];
            Arrays.fill(kept, true);
            return gather(readings, kept, offset);
        }
        int fresh = silentReplacement(readings);
        if (fresh < 0) {
            return longest(readings, offset);
        }
        MeterChain old = longest(readings.subList(0, fresh), offset);
        double reached = old.points.get(old.points.size() - 1).hours();
        MeterChain young = of(readings.subList(fresh, readings.size()), reached);
        List<RunningHours.Point> points = new ArrayList<>(old.points);
        points.addAll(young.points);
        List<MeterRemark> remarks = new ArrayList<>(old.remarks);
        MeterReading first = readings.get(fresh);
        remarks.add(new MeterRemark(
                first.date(),
                first.hours(),
                "which is far lower than this meter showed before",
                "The meter fell to " + hours(first.hours())
                        + " and stayed low, so it is taken for a new meter that began"
                        + " at 0 h. If so, enter the change with the old meter's last figure."));
        remarks.addAll(young.remarks);
        return new MeterChain(points, remarks);
    }

    /** Index of the first reading of a meter that was replaced without a note, or −1. */
    private static int silentReplacement(List<MeterReading> readings) {
        double highest = 0;
        for (int i = 0; i < readings.size(); i++) {
            double here = readings.get(i).hours();
            boolean fell = here < NEW_METER_SHARE * highest && readings.size() - i >= 2;
            if (fell
                    && higherBefore(readings, i) >= 2
                    && staysLow(readings, i, highest)
                    && reached(readings.subList(0, i)) > here) {
                return i;
            }
            highest = Math.max(highest, here);
        }
        return -1;
    }

    /** What the readings that fit together had reached: high ones that fit no others are slips, not the old meter. */
    private static double reached(List<MeterReading> readings) {
        List<RunningHours.Point> points = longest(readings, 0).points;
        return points.get(points.size() - 1).hours();
    }

    /** One higher reading before may be a slip; two are not. */
    private static long higherBefore(List<MeterReading> readings, int at) {
        double here = readings.get(at).hours();
        return readings.subList(0, at).stream().filter(r -> r.hours() > here).count();
    }

    private static boolean staysLow(List<MeterReading> readings, int from, double highest) {
        for (int i = from + 1; i < readings.size(); i++) {
            MeterReading a = readings.get(i - 1);
            if (readings.get(i).hours() >= highest || readings.get(i).hours() < a.hours()) {
                return false;
            }
        }
        return true;
    }

    /** Longest consistent row; of two equally long ones the one that ends later. */
    private static MeterChain longest(List<MeterReading> readings, double offset) {
        int n = readings.size();
        int[] length = new int[n];
        int[] before = new int[n];
        int best = -1;
        for (int i = 0; i < n; i++) {
            length[i] = 1;
            before[i] = -1;
            for (int j = 0; j < i; j++) {
                if (length[j] + 1 >= length[i] && fits(readings.get(j), readings.get(i))) {
                    length[i] = length[j] + 1;
                    before[i] = j;
                }
            }
            if (best < 0 || length[i] >= length[best]) {
                best = i;
            }
        }
        boolean[] kept = new boolean[n];
        for (int i = best; i >= 0; i = before[i]) {
            kept[i] = true;
        }
        return gather(readings, kept, offset);
    }

    private static MeterChain gather(List<MeterReading> readings, boolean[] kept, double offset) {
        List<RunningHours.Point> points = new ArrayList<>();
        List<MeterRemark> remarks = new ArrayList<>();
        MeterRemark leap = leap(readings, kept);
        for (int i = 0; i < kept.length; i++) {
            MeterReading r = readings.get(i);
            if (kept[i]) {
                points.add(new RunningHours.Point(r.date(), offset + r.hours()));
            } else if (leap != null && leap.isOf(r)) {
                remarks.add(leap);
            } else {
                remarks.add(new MeterRemark(
                        r.date(),
                        r.hours(),
                        "which does not fit the other readings of this meter",
                        "The reading of " + hours(r.hours())
                                + " does not fit the others and is passed over. Correct it, or"
                                + " if the meter was replaced enter the change with the old meter's last figure."));
            }
        }
        return new MeterChain(points, remarks);
    }

    /** Takes a last reading that leaps away out of those that are kept, and says so; the last figure of a replaced meter stands. */
    private static @Nullable MeterRemark leap(List<MeterReading> readings, boolean[] kept) {
        int end = keptBelow(kept, kept.length);
        int beforeEnd = keptBelow(kept, Math.max(0, end));
        if (beforeEnd < 0 || readings.get(end).newMeterHours() != null) {
            return null;
        }
        int begin = 0;
        while (!kept[begin]) {
            begin++;
        }
        MeterRemark leap = MeterLeap.of(readings.get(begin), readings.get(beforeEnd), readings.get(end));
        kept[end] = leap == null;
        return leap;
    }

    private static int keptBelow(boolean[] kept, int end) {
        int i = end - 1;
        while (i >= 0 && !kept[i]) {
            i--;
        }
        return i;
    }

    /** Most meters are read without a slip: then nothing has to be looked for. */
    private static boolean allFit(List<MeterReading> readings) {
        for (int i = 1; i < readings.size(); i++) {
            if (!fits(readings.get(i - 1), readings.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean fits(MeterReading a, MeterReading b) {
        double rise = b.hours() - a.hours();
        long days = ChronoUnit.DAYS.between(a.date(), b.date());
        return rise >= 0 && rise <= HOURS_A_DAY * Math.max(1, days);
    }

    static String hours(double value) {
        return (value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value)) + " h";
    }
}
