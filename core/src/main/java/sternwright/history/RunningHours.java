package sternwright.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sternwright.measure.MonthlyShare;

/**
 * The hours an engine has run, counted over meter changes; they only rise.
 *
 * @param points dates and hours, oldest first
 * @param remarks readings that were passed over or taken for a new meter, said in words
 */
public record RunningHours(List<Point> points, List<MeterRemark> remarks) {
    /**
     * Hours run by a day.
     *
     * @param date the day
     * @param hours engine hours since new, as far as the meters tell
     */
    public record Point(LocalDate date, double hours) {}

    /** Copies the lists. */
    public RunningHours {
        points = List.copyOf(points);
        remarks = List.copyOf(remarks);
    }

    /**
     * Counts the readings of one engine together.
     *
     * @param readings readings of one engine in any order, replacements among them
     * @return hours that only rise, and what was passed over
     */
    public static RunningHours of(List<MeterReading> readings) {
        List<MeterReading> sorted = new ArrayList<>(readings);
        sorted.sort(Comparator.comparing(MeterReading::date));
        List<Point> points = new ArrayList<>();
        List<MeterRemark> remarks = new ArrayList<>();
        List<MeterReading> oneMeter = new ArrayList<>();
        double reached = 0;
        double start = 0;
        for (MeterReading reading : sorted) {
            oneMeter.add(reading);
            Double fresh = reading.newMeterHours();
            if (fresh != null) {
                reached = add(points, oneMeter, reached - start, start, remarks);
                start = fresh;
                oneMeter.clear();
            }
        }
        add(points, oneMeter, reached - start, start, remarks);
        return new RunningHours(points, remarks);
    }

    /** Adds what one meter told, on top of the hours of the meters before it; returns the hours reached. */
    private static double add(
            List<Point> points, List<MeterReading> oneMeter, double offset, double start, List<MeterRemark> remarks) {
        MeterChain chain = MeterChain.of(oneMeter, offset, start);
        points.addAll(chain.points());
        remarks.addAll(chain.remarks());
        return points.isEmpty() ? 0 : points.get(points.size() - 1).hours();
    }

    /**
     * The last point.
     *
     * @return the newest, empty if the meter was never read
     */
    public Optional<Point> latest() {
        return points.isEmpty() ? Optional.empty() : Optional.of(points.get(points.size() - 1));
    }

    /**
     * The hours on a day between the first and the last reading, spread by the boat's use over the year.
     *
     * @param date the day
     * @param months how use spreads over the year
     * @return hours, empty outside the readings
     */
    public OptionalDouble on(LocalDate date, MonthlyShare months) {
        for (int i = 0; i < points.size(); i++) {
            Point b = points.get(i);
            if (b.date().equals(date)) {
                return OptionalDouble.of(b.hours());
            }
            if (b.date().isAfter(date)) {
                return i == 0 ? OptionalDouble.empty() : OptionalDouble.of(between(points.get(i - 1), b, date, months));
            }
        }
        return OptionalDouble.empty();
    }

    private static double between(Point a, Point b, LocalDate date, MonthlyShare months) {
        double whole = months.between(a.date(), b.date());
        double part = whole > 0
                ? months.between(a.date(), date) / whole
                : (double) (date.toEpochDay() - a.date().toEpochDay())
                        / (b.date().toEpochDay() - a.date().toEpochDay());
        return a.hours() + part * (b.hours() - a.hours());
    }

    /**
     * The day on which a number of hours was passed, if the readings already reach it.
     *
     * @param hours hours to pass
     * @param months how use spreads over the year
     * @return the day, empty if the engine has not run so long or had run longer at the first reading
     */
    public Optional<LocalDate> passed(double hours, MonthlyShare months) {
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if (a.hours() < hours && hours <= b.hours()) {
                double part = (hours - a.hours()) / (b.hours() - a.hours());
                LocalDate day = months.after(a.date(), part * months.between(a.date(), b.date()));
                return Optional.of(day.isAfter(b.date()) ? b.date() : day);
            }
        }
        return Optional.empty();
    }
}
