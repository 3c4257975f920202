package sternwright.protection.circuit;

/**
 * One reason why a circuit cannot be solved.
 *
 * @param where the body, link, source or group of bodies
 * @param what what is wrong with it, in plain words
 * @param advice what was expected or what to do
 */
public record CircuitProblem(String where, String what, String advice) {
    @Override
    public String toString() {
        return where + ": " + what + ". " + advice + ".";
    }
}
