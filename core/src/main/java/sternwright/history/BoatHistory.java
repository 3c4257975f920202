package sternwright.history;

import java.util.Comparator;
import java.util.List;

/**
 * All that is written down of one boat, oldest first.
 *
 * @param boatId the boat
 * @param entries works, findings, refusals, happenings
 * @param meter hour-meter readings of all its engines
 */
public record BoatHistory(String boatId, List<ServiceEntry> entries, List<MeterReading> meter) {
    /** Sorts both lists by date; entries of one day keep their order. */
    public BoatHistory {
        entries = entries.stream()
                .sorted(Comparator.comparing(ServiceEntry::date))
                .toList();
        meter = meter.stream().sorted(Comparator.comparing(MeterReading::date)).toList();
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
}
