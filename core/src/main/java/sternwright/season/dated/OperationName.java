package sternwright.season.dated;

/**
 * By what an operation is called in promises and published plans.
 *
 * @param boatId the boat
 * @param visit name of the visit
 * @param operation name of the operation in it
 */
public record OperationName(String boatId, String visit, String operation) implements Comparable<OperationName> {
    @Override
    public int compareTo(OperationName other) {
        int boat = boatId.compareTo(other.boatId);
        int visits = boat == 0 ? visit.compareTo(other.visit) : boat;
        return visits == 0 ? operation.compareTo(other.operation) : visits;
    }

    @Override
    public String toString() {
        return boatId + ", " + visit + ", " + operation;
    }
}
