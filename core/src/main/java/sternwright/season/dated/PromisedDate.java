package sternwright.season.dated;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A date given to an owner.
 *
 * @param name what was promised
 * @param date the day
 * @param quarter part of the working day from 0 to 3
 * @param promisedOn when it was promised
 * @param firm never moved, whatever it costs
 * @param movedPrice what it costs to move it to another day, in the yard's currency, null for the yard's usual price
 */
public record PromisedDate(
        OperationName name,
        LocalDate date,
        int quarter,
        LocalDate promisedOn,
        boolean firm,
        @Nullable Double movedPrice) {
    /** A date at the yard's usual price of moving it. */
    public PromisedDate(OperationName name, LocalDate date, int quarter, LocalDate promisedOn, boolean firm) {
        this(name, date, quarter, promisedOn, firm, null);
    }

    /** The same without a price: whose owner has asked for another day is moved freely, and the move is still listed. */
    public PromisedDate released() {
        return new PromisedDate(name, date, quarter, promisedOn, firm, 0.0);
    }
}
