package sternwright.visit.problem;

/**
 * A place in the boat that must be opened up before work there can begin; opened once, it serves every work of the visit.
 *
 * @param name as the engineer calls it
 * @param setUpCents cost of opening and closing it once, in the smallest unit of the currency
 */
public record ServicePoint(String name, long setUpCents) {
    public ServicePoint {
        if (setUpCents < 0) {
            throw new IllegalArgumentException(name + ": set-up " + setUpCents + ", expected 0 or more");
        }
    }
}
