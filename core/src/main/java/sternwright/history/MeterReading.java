package sternwright.history;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What an engine's hour meter said on a day.
 *
 * @param date the day
 * @param installationId the engine
 * @param hours what the meter showed, at least 0; for a replacement the last figure of the old meter
 * @param newMeterHours for a replacement the first figure of the new meter; null for a plain reading
 * @param who who read it, may be empty
 */
public record MeterReading(
        LocalDate date,
        String installationId,
        double hours,
        @Nullable Double newMeterHours,
        String who) {
    /**
     * A plain reading.
     *
     * @param date the day
     * @param installationId the engine
     * @param hours what the meter showed
     * @return the reading
     */
    public static MeterReading of(LocalDate date, String installationId, double hours) {
        return new MeterReading(date, installationId, hours, null, "");
    }
}
