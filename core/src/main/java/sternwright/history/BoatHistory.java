package sternwright.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All that is written down of one boat, oldest first.
 *
 * @param boatId the boat
 * @param entries works, findings, refusals, happenings that hold
 * @param meter hour-meter readings of all its engines
 * @param struck entries that were struck: kept to be seen, and left out of everything that is worked out
 */
public record BoatHistory(
        String boatId, List<ServiceEntry> entries, List<MeterReading> meter, List<StruckEntry> struck) {
    /** Sorts the lists by date; entries of one day keep their order. */
    public BoatHistory {
        entries = entries.stream()
                .sorted(Comparator.comparing(ServiceEntry::date))
                .toList();
        meter = meter.stream().sorted(Comparator.comparing(MeterReading::date)).toList();
        struck = struck.stream()
                .sorted(Comparator.comparing(s -> s.entry().date()))
                .toList();
    }

    /**
     * A history of which nothing was struck.
     *
     * @param boatId the boat
     * @param entries works, findings, refusals, happenings
     * @param meter hour-meter readings of all its engines
     */
    public BoatHistory(String boatId, List<ServiceEntry> entries, List<MeterReading> meter) {
        this(boatId, entries, meter, List.of());
    }

    /**
     * A history as it was written down line by line.
     *
     * @param boatId the boat
     * @param lines in the order in which they were written; strikes that strike nothing are passed over
     * @param meter hour-meter readings of all its engines
     * @return the history
     */
    public static BoatHistory of(String boatId, List<HistoryLine> lines, List<MeterReading> meter) {
        StruckLines parted = StruckLines.of(lines);
        return new BoatHistory(boatId, parted.standing(), meter, parted.struck());
    }

    /**
     * A boat of which nothing is written down.
     *
     * @param boatId the boat
     * @return an empty history
     */
    public static BoatHistory empty(String boatId) {
        return new BoatHistory(boatId, List.of(), List.of());
    }

    /**
     * The history line by line, so that {@link #of} makes the same of it.
     *
     * @return lines by date, each strike behind the line that it strikes
     */
    public List<HistoryLine> lines() {
        List<HistoryLine> lines = new ArrayList<>();
        for (StruckEntry one : struck) {
            lines.add(HistoryLine.of(one.entry()));
            lines.add(new HistoryLine(one.entry(), one.strike()));
        }
        entries.forEach(e -> lines.add(HistoryLine.of(e)));
        lines.sort(Comparator.comparing(l -> l.entry().date()));
        return List.copyOf(lines);
    }
}
