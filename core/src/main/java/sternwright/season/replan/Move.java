package sternwright.season.replan;

/**
 * A promised date that lands on another day.
 *
 * @param operation index of the operation
 * @param oldStartQ what was promised, in quarters
 * @param newStartQ what is planned now
 * @param reason why, in one sentence
 */
public record Move(int operation, int oldStartQ, int newStartQ, String reason) {}
