package sternwright.app.desk.recording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.Sheet;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.RunningHours;
import sternwright.history.ServiceEntry;

/**
 * Between what a meter shows and the hours an engine has run, counted over meter changes. History keeps the hours run; the hour
 * tables keep what the meters showed.
 */
public final class CountedHours {
    private CountedHours() {}

    /**
     * An entry with the hours its engine had run, if its meter was read that day.
     *
     * @param e the entry; left as it is if it says its hours itself
     * @param history what is written down of the boat
     * @param read meters read now
     * @return the entry
     */
    public static ServiceEntry withHours(ServiceEntry e, BoatHistory history, List<MeterReading> read) {
        String engine = e.part().installationId();
        boolean meterRead = read.stream()
                .anyMatch(r -> r.installationId().equals(engine) && r.date().equals(e.date()));
        if (!meterRead || e.hours() != null) {
            return e;
        }
        List<MeterReading> all = new ArrayList<>(history.meter());
        all.addAll(read);
        all.removeIf(r -> !r.installationId().equals(engine) || r.date().isAfter(e.date()));
        return e.withHours(RunningHours.of(all)
                .latest()
                .filter(p -> p.date().equals(e.date()))
                .map(RunningHours.Point::hours)
                .orElse(null));
    }

    /**
     * What the meters showed according to a table of history: one reading for each engine, day and figure that is not in the
     * hour tables yet.
     *
     * @param rows lines of history, with hours run where they were noted
     * @param history what is written down of the boat
     * @param source the table
     * @param problems takes hours that no meter can have shown
     * @return readings, each with the line that says it
     */
    public static List<Sheet.Row<MeterReading>> shown(
            List<Sheet.Row<ServiceEntry>> rows, BoatHistory history, String source, List<Problem> problems) {
        Map<String, Sheet.Row<MeterReading>> shown = new LinkedHashMap<>();
        for (Sheet.Row<ServiceEntry> row : rows) {
            ServiceEntry e = row.value();
            if (e.hours() == null) {
                continue;
            }
            Change last = lastChange(history, e);
            double figure = last.first + e.hours() - last.run;
            if (figure < last.first) {
                problems.add(new Problem(
                        source,
                        row.line(),
                        "hours",
                        "found " + MeterSense.plain(e.hours()) + " h, fewer than the " + MeterSense.plain(last.run)
                                + " h run when the meter was last replaced",
                        "hours counted over meter changes",
                        ""));
                continue;
            }
            MeterReading reading = new MeterReading(
                    e.date(), e.part().installationId(), figure, null, e.outcome() == Outcome.REFUSED ? "" : e.who());
            if (!known(history, reading)) {
                shown.putIfAbsent(
                        reading.date() + " " + reading.installationId() + " " + figure,
                        new Sheet.Row<>(row.line(), reading));
            }
        }
        return List.copyOf(shown.values());
    }

    /**
     * Whether a reading is written down already, whoever read it.
     *
     * @param history what is written down of the boat
     * @param reading the reading
     * @return true if the same meter showed the same on the same day
     */
    static boolean known(BoatHistory history, MeterReading reading) {
        return history.meter().stream()
                .anyMatch(r -> r.date().equals(reading.date())
                        && r.installationId().equals(reading.installationId())
                        && r.hours() == reading.hours());
    }

    /** The meter an engine has: hours run when it was fitted, and what it showed then. */
    private record Change(double run, double first) {}

    private static Change lastChange(BoatHistory history, ServiceEntry e) {
        List<MeterReading> before = history.meter().stream()
                .filter(r -> r.installationId().equals(e.part().installationId())
                        && !r.date().isAfter(e.date()))
                .toList();
        int at = before.size() - 1;
        while (at >= 0 && before.get(at).newMeterHours() == null) {
            at--;
        }
        if (at < 0) {
            return new Change(0, 0);
        }
        Double first = before.get(at).newMeterHours();
        Optional<RunningHours.Point> run =
                RunningHours.of(before.subList(0, at + 1)).latest();
        return new Change(run.map(RunningHours.Point::hours).orElse(0.0), first == null ? 0 : first);
    }
}
