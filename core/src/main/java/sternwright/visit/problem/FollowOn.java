package sternwright.visit.problem;

import java.util.Set;

/**
 * One work that must follow another: whenever the trigger is done, the follower is done within the lag. If it
 * is possible in none of those months, by place and season, the lag runs on to the first month in which it is (alignment waits
 * for the launch). A lag that reaches past the horizon asks for nothing.
 *
 * @param trigger index of the work that leads to the other
 * @param follower index of the work that must follow; its earliest fraction is 0
 * @param minLagMonths fewest months between the two, 0 for the same month
 * @param maxLagMonths most months between the two
 * @param phases phases of the trigger's cycle that ask for the follower; empty for all
 */
public record FollowOn(int trigger, int follower, int minLagMonths, int maxLagMonths, Set<Integer> phases) {
    public FollowOn {
        phases = Set.copyOf(phases);
        if (trigger == follower || minLagMonths < 0 || maxLagMonths < minLagMonths) {
            throw new IllegalArgumentException("follow-on " + trigger + " to " + follower + " within " + minLagMonths
                    + " to " + maxLagMonths + " months: expected two works and an ordered lag");
        }
    }

    /** One that every phase of the trigger asks for. */
    public FollowOn(int trigger, int follower, int minLagMonths, int maxLagMonths) {
        this(trigger, follower, minLagMonths, maxLagMonths, Set.of());
    }

    /** Whether a phase of the trigger asks for the follower. */
    public boolean calledBy(int phase) {
        return phases.isEmpty() || phases.contains(phase);
    }

    /** Whether every doing of the trigger asks for the follower. */
    public boolean always() {
        return phases.isEmpty();
    }
}
