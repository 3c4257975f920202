package sternwright.season.dated.answer;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import sternwright.season.dated.OperationName;

/**
 * A date that an owner knows and that is another now.
 *
 * @param name the operation
 * @param boatName as painted on the stern
 * @param was the day before
 * @param is the day now, null if the operation is no longer in the season
 * @param promised whether it was promised to the owner, or only in the published plan
 * @param price what moving it costs, in the yard's currency; 0 if the operation is no longer in the season
 * @param reason why, one sentence
 */
public record MovedDate(
        OperationName name,
        String boatName,
        LocalDate was,
        @Nullable LocalDate is,
        boolean promised,
        double price,
        String reason) {}
