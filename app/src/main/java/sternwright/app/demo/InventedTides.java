package sternwright.app.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import sternwright.yard.resource.HighWater;

/** High waters of an invented place: two a day, each 12 h 25 min after the one before, springs every 14.765 days. */
final class InventedTides {
    private static final int MINUTES_BETWEEN = 745;
    private static final double DAYS_BETWEEN_SPRINGS = 14.765;
    private static final double MEAN_HEIGHT_M = 4.4;
    private static final double SPRINGS_HIGHER_M = 0.8;
    private static final LocalDateTime SPRINGS = LocalDateTime.of(2026, 1, 3, 6, 30);

    private InventedTides() {}

    /** From one day to another. */
    static List<HighWater> between(LocalDate from, LocalDate to) {
        List<HighWater> waters = new ArrayList<>();
        long first = Math.floorDiv(ChronoUnit.MINUTES.between(SPRINGS, from.atStartOfDay()), MINUTES_BETWEEN);
        LocalDateTime at = SPRINGS.plusMinutes(first * MINUTES_BETWEEN);
        while (at.toLocalDate().isBefore(to)) {
            double days = ChronoUnit.MINUTES.between(SPRINGS, at) / 1440.0;
            double height = MEAN_HEIGHT_M + SPRINGS_HIGHER_M * Math.cos(2 * Math.PI * days / DAYS_BETWEEN_SPRINGS);
            waters.add(new HighWater(at, Math.round(height * 100) / 100.0));
            at = at.plusMinutes(MINUTES_BETWEEN);
        }
        return waters;
    }
}
