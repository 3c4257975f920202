package sternwright.app.desk.answers;

import sternwright.job.estimate.OwnerAnswer;

/**
 * What an owner says to one line.
 *
 * @param lineId the line
 * @param answer accepted or declined
 * @param name who says it, as a signature
 * @param statementRead for a safety item that is declined: the statement was shown and confirmed
 */
public record LineAnswer(String lineId, OwnerAnswer answer, String name, boolean statementRead) {}
