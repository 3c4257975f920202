package sternwright.visit.problem;

/**
 * One step of a work's path: from one doing to the next, and what that step costs, in the smallest unit of the currency.
 *
 * @param work index of the work
 * @param phase phase done at the end of the step (on the last step, the phase that would be next)
 * @param from month last done, -1 for before the horizon
 * @param to month done, or the number of months in the horizon for the end
 * @param workCents labour and supplies
 * @param unusedCents life thrown away by doing it early
 * @param riskCents risk of the months late
 * @param endCents share of life used up at the end of the horizon, so that nothing rides past it free
 */
public record Doing(
        int work, int phase, int from, int to, long workCents, long unusedCents, long riskCents, long endCents) {
    /** All of it. */
    public long totalCents() {
        return workCents + unusedCents + riskCents + endCents;
    }
}
