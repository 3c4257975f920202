package sternwright.visit.problem;

/**
 * The question "what if this is left": the work is not done before the month.
 *
 * @param work index of the work
 * @param month first month in which it may be done
 */
public record LeftUntil(int work, int month) {}
