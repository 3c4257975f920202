package sternwright.app.desk.recording;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.MeterRemark;
import sternwright.history.RunningHours;

/**
 * Whether what meters are said to show can be, seen beside what they showed before, afterwards, and in the same table. An hour
 * meter never falls, gains no more than 24 hours a day and does not leap away from what was usual; a replaced meter is said.
 */
public final class MeterSense {
    private static final double HOURS_A_DAY = 24;
    private static final String KEEP =
            "If it is right as read, say --as-read; if the meter was replaced, say so with the old one's last figure.";

    private final Boat boat;
    private final List<MeterReading> known;
    private final String source;
    private final List<Problem> wrong = new ArrayList<>();

    private MeterSense(Boat boat, BoatHistory history, String source) {
        this.boat = boat;
        this.known = history.meter();
        this.source = source;
    }

    /**
     * What is wrong with readings.
     *
     * @param boat the boat
     * @param history what is written down of her
     * @param source where the readings were said: a file, or the command line
     * @param rows the readings
     * @param asRead true if those out of line are to be kept as read
     * @return problems in the order of the rows
     */
    public static List<Problem> check(
            Boat boat, BoatHistory history, String source, List<Sheet.Row<MeterReading>> rows, boolean asRead) {
        MeterSense sense = new MeterSense(boat, history, source);
        List<Sheet.Row<MeterReading>> possible =
                rows.stream().filter(sense::possible).toList();
        if (!asRead) {
            List<Sheet.Row<MeterReading>> beside = possible.stream()
                    .filter(r -> sense.besideWhatIsKnown(r, possible))
                    .toList();
            sense.amongThemselves(beside);
        }
        return sense.wrong;
    }

    /** An engine of hers and a figure that can be. */
    private boolean possible(Sheet.Row<MeterReading> row) {
        MeterReading r = row.value();
        List<String> engines =
                boat.installations().stream().map(Installation::id).toList();
        Double fresh = r.newMeterHours();
        if (!engines.contains(r.installationId())) {
            wrong.add(new Problem(
                    source,
                    row.line(),
                    "installation",
                    "boat " + boat.id() + " has no installation \"" + r.installationId() + "\"",
                    "",
                    KnownNames.advice(r.installationId(), engines)));
            return false;
        }
        if (!figure(r.hours()) || fresh != null && !figure(fresh)) {
            String found = "found " + plain(figure(r.hours()) && fresh != null ? fresh : r.hours());
            wrong.add(new Problem(source, row.line(), "hours", found, "hours of at least 0", ""));
            return false;
        }
        return true;
    }

    private static boolean figure(double hours) {
        return Double.isFinite(hours) && hours >= 0;
    }

    /** Beside the readings before and after it that are known already; a meter change in the same table counts too. */
    private boolean besideWhatIsKnown(Sheet.Row<MeterReading> row, List<Sheet.Row<MeterReading>> rows) {
        MeterReading r = row.value();
        List<MeterReading> line = Stream.concat(
                        known.stream(),
                        rows.stream().map(Sheet.Row::value).filter(v -> v != r && v.newMeterHours() != null))
                .filter(v -> v.installationId().equals(r.installationId()))
                .sorted(Comparator.comparing(MeterReading::date))
                .toList();
        Optional<MeterReading> before =
                line.stream().filter(v -> !v.date().isAfter(r.date())).reduce((a, b) -> b);
        Optional<MeterReading> after =
                line.stream().filter(v -> v.date().isAfter(r.date())).findFirst();
        Optional<String> odd = before.flatMap(b -> against(b, r, b)).or(() -> after.flatMap(a -> against(r, a, a)));
        odd.ifPresent(why -> wrong.add(odd(row, why)));
        return odd.isEmpty();
    }

    /** Why two readings of one meter cannot both be; said of the one that is not {@code other}. */
    private static Optional<String> against(MeterReading early, MeterReading late, MeterReading other) {
        Double fresh = early.newMeterHours();
        double last = fresh == null ? early.hours() : fresh;
        long days = Math.max(1, ChronoUnit.DAYS.between(early.date(), late.date()));
        double rise = late.hours() - last;
        if (rise < 0) {
            return Optional.of(
                    other == early
                            ? "less than the " + plain(last) + " h read on " + early.date()
                            : "more than the " + plain(late.hours()) + " h read later, on " + late.date());
        }
        if (rise > HOURS_A_DAY * days) {
            String much = plain(rise) + " h " + (other == early ? "more" : "less") + " than on " + other.date();
            return Optional.of(much + ", and " + (days == 1 ? "a day has" : days + " days have") + " no more than "
                    + plain(HOURS_A_DAY * days) + " h");
        }
        return Optional.empty();
    }

    /** What does not fit the longest row of readings that fit together; that keeps one slip from spoiling the rest. */
    private void amongThemselves(List<Sheet.Row<MeterReading>> rows) {
        for (Installation engine : boat.installations()) {
            List<Sheet.Row<MeterReading>> of = rows.stream()
                    .filter(r -> r.value().installationId().equals(engine.id()))
                    .toList();
            if (of.isEmpty()) {
                continue;
            }
            List<MeterReading> old = known.stream()
                    .filter(r -> r.installationId().equals(engine.id()))
                    .toList();
            List<MeterReading> all = new ArrayList<>(old);
            of.forEach(r -> all.add(r.value()));
            Set<MeterRemark> remarks = new HashSet<>(RunningHours.of(all).remarks());
            RunningHours.of(old).remarks().forEach(remarks::remove);
            for (Sheet.Row<MeterReading> row : of) {
                remarks.stream()
                        .filter(m -> m.isOf(row.value()))
                        .findFirst()
                        .ifPresent(m -> wrong.add(odd(row, m.why())));
            }
        }
    }

    private Problem odd(Sheet.Row<MeterReading> row, String why) {
        MeterReading r = row.value();
        return new Problem(
                source,
                row.line(),
                "hours",
                "found " + plain(r.hours()) + " h for " + r.installationId() + ", " + why,
                "",
                KEEP);
    }

    static String plain(@Nullable Double hours) {
        return hours == null
                ? ""
                : java.math.BigDecimal.valueOf(hours).stripTrailingZeros().toPlainString();
    }
}
