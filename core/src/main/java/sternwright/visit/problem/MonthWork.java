package sternwright.visit.problem;

/**
 * A work done in a visit.
 *
 * @param work index of the work
 * @param phase phase of its cycle
 */
public record MonthWork(int work, int phase) {}
