package sternwright.season.dated;

import java.time.LocalDate;

/**
 * A date given to an owner.
 *
 * @param name what was promised
 * @param date the day
 * @param quarter part of the working day from 0 to 3
 * @param promisedOn when it was promised
 * @param firm never moved, whatever it costs
 */
public record PromisedDate(OperationName name, LocalDate date, int quarter, LocalDate promisedOn, boolean firm) {}
