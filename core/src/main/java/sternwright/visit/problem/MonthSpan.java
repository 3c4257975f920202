package sternwright.visit.problem;

/**
 * A run of months of the horizon, both ends included.
 *
 * @param first first month, 0 or more
 * @param last last month, not before the first
 */
public record MonthSpan(int first, int last) {
    public MonthSpan {
        if (first < 0 || last < first) {
            throw new IllegalArgumentException(
                    "months " + first + " to " + last + ": expected a first month of 0 or more, not after the last");
        }
    }
}
