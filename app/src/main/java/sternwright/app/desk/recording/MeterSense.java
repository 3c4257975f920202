package sternwright.app.desk.recording;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.RunningHours;
import sternwright.history.ServiceEntry;

/** Whether what a meter is said to show can be, seen beside what it showed before. */
final class MeterSense {
    private static final double HOURS_A_DAY = 24;
    private static final String KEEP =
            "If it is right as read, say --as-read; if the meter was replaced, give --new-meter.";

    private MeterSense() {}

    /** What is wrong with readings; out of line is passed over if they are to be kept as read. */
    static List<Problem> check(Boat boat, BoatHistory history, List<MeterReading> readings, boolean asRead) {
        List<Problem> wrong = new ArrayList<>();
        List<String> engines =
                boat.installations().stream().map(Installation::id).toList();
        for (MeterReading r : readings) {
            if (!engines.contains(r.installationId())) {
                wrong.add(new Problem(
                        "installation",
                        0,
                        "",
                        "boat " + boat.id() + " has no installation \"" + r.installationId() + "\"",
                        "",
                        KnownNames.advice(r.installationId(), engines)));
            } else if (!(r.hours() >= 0) || !Double.isFinite(r.hours())) {
                wrong.add(new Problem("hours", 0, "", "found " + r.hours(), "hours of at least 0", ""));
            } else if (!asRead) {
                outOfLine(history, r).ifPresent(wrong::add);
            }
        }
        return wrong;
    }

    private static Optional<Problem> outOfLine(BoatHistory history, MeterReading r) {
        MeterReading before = null;
        for (MeterReading old : history.meter()) {
            boolean same = old.installationId().equals(r.installationId());
            if (same && !old.date().isAfter(r.date())) {
                before = old;
            }
            if (same && old.date().isAfter(r.date()) && old.hours() < r.hours() && before == null) {
                return Optional.of(odd(r, "more than the " + old.hours() + " h read later, on " + old.date()));
            }
        }
        return before == null ? Optional.empty() : beside(before, r);
    }

    private static Optional<Problem> beside(MeterReading before, MeterReading r) {
        Double fresh = before.newMeterHours();
        double last = fresh == null ? before.hours() : fresh;
        long days = Math.max(1, ChronoUnit.DAYS.between(before.date(), r.date()));
        if (r.hours() < last) {
            return Optional.of(odd(r, "less than the " + last + " h read on " + before.date()));
        }
        if (r.hours() - last > HOURS_A_DAY * days) {
            return Optional.of(odd(
                    r,
                    (r.hours() - last) + " h more than on " + before.date() + ", and " + days
                            + " days have no more than " + HOURS_A_DAY * days + " h"));
        }
        return Optional.empty();
    }

    private static Problem odd(MeterReading r, String why) {
        return new Problem("hours", 0, r.installationId(), "found " + r.hours() + " h, " + why, "", KEEP);
    }

    /** An entry with the hours its engine had run, counted over meter changes, if the meter was read that day. */
    static ServiceEntry withHours(ServiceEntry e, BoatHistory history, List<MeterReading> read) {
        String engine = e.part().installationId();
        boolean meterRead = read.stream()
                .anyMatch(r -> r.installationId().equals(engine) && r.date().equals(e.date()));
        if (!meterRead || e.hours() != null) {
            return e;
        }
        List<MeterReading> all = new ArrayList<>(history.meter());
        all.addAll(read);
        all.removeIf(r -> !r.installationId().equals(engine) || r.date().isAfter(e.date()));
        @Nullable
        Double hours = RunningHours.of(all)
                .latest()
                .filter(p -> p.date().equals(e.date()))
                .map(RunningHours.Point::hours)
                .orElse(null);
        return new ServiceEntry(e.date(), e.part(), e.ruleId(), e.outcome(), hours, e.who(), e.readings(), e.note());
    }
}
