package sternwright.job;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import sternwright.history.TakenReading;
import sternwright.service.ReadingAsked;

/**
 * A reading asked on board, with what it was last time.
 *
 * @param asked name, unit, limits and their source
 * @param last the newest one on record in the same unit, null if there is none
 * @param lastOn when that was, null if there is none
 */
public record CardReading(
        ReadingAsked asked,
        @Nullable TakenReading last,
        @Nullable LocalDate lastOn) {}
