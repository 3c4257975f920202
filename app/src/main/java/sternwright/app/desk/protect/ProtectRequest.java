package sternwright.app.desk.protect;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What is asked of a boat's protection.
 *
 * @param today the day
 * @param shoreLead whether the shore lead is plugged in, where the berth has one
 * @param coatingYears age of the paint below the water, years
 * @param figures the yard's own figures by key
 * @param wantedYears how long an anode should last to half gone, years
 * @param readings readings to diagnose from; may be empty
 */
public record ProtectRequest(
        LocalDate today,
        boolean shoreLead,
        double coatingYears,
        Map<String, Double> figures,
        double wantedYears,
        List<EnteredReading> readings) {
    /** Copies the collections. */
    public ProtectRequest {
        figures = Map.copyOf(figures);
        readings = List.copyOf(readings);
    }

    /** The boat as she lies, nothing measured. */
    public static ProtectRequest on(LocalDate today) {
        return new ProtectRequest(today, true, 1, Map.of(), 1, List.of());
    }

    /**
     * The same with the shore lead plugged in or not.
     *
     * @param in whether it is plugged in, where the berth has one
     * @return the request
     */
    public ProtectRequest withShoreLead(boolean in) {
        return new ProtectRequest(today, in, coatingYears, figures, wantedYears, readings);
    }
}
