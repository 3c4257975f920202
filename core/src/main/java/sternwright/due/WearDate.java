package sternwright.due;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When measured or predicted wear brings a part to the point of renewal.
 *
 * @param date median
 * @param early80 lower end of the 80 % range
 * @param late80 upper end of the 80 % range
 * @param newLastsMonths how long a new part of the same kind lasts to the same point from then on, months; null where not known
 * @param how in words: measured or predicted, and from what
 */
public record WearDate(
        LocalDate date,
        LocalDate early80,
        LocalDate late80,
        @Nullable Double newLastsMonths,
        String how) {}
