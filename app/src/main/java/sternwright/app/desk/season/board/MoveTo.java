package sternwright.app.desk.season.board;

import java.time.LocalDate;
import sternwright.season.dated.OperationName;

/**
 * An operation and the day somebody would like to see it on.
 *
 * @param name the operation
 * @param day the day
 */
public record MoveTo(OperationName name, LocalDate day) {}
