package sternwright.season.project;

import java.util.List;

/**
 * Activities, what each must wait for, and resources they share.
 *
 * @param activities activities in an order in which none stands before one it waits for
 * @param capacities units of each resource, at most {@link #MOST_RESOURCES} resources of at most {@link #MOST_UNITS} units
 */
public record Project(List<Activity> activities, List<Integer> capacities) {
    /** Most resources. */
    public static final int MOST_RESOURCES = 4;

    /** Most units of a resource. */
    public static final int MOST_UNITS = 32_767;

    /**
     * One activity.
     *
     * @param duration time it takes, at least 0
     * @param demands units of each resource it holds all the time
     * @param after indices of the activities that must end first, all smaller than its own
     */
    public record Activity(int duration, List<Integer> demands, List<Integer> after) {
        /** Copies the lists. */
        public Activity {
            demands = List.copyOf(demands);
            after = List.copyOf(after);
        }
    }

    /** Copies the lists and refuses what can never be scheduled. */
    public Project {
        activities = List.copyOf(activities);
        capacities = List.copyOf(capacities);
        if (capacities.size() > MOST_RESOURCES || capacities.stream().anyMatch(c -> c > MOST_UNITS)) {
            throw new IllegalArgumentException("a project takes at most " + MOST_RESOURCES + " resources of "
                    + MOST_UNITS + " units, got " + capacities);
        }
        for (int i = 0; i < activities.size(); i++) {
            Activity activity = activities.get(i);
            for (int r = 0; r < capacities.size(); r++) {
                if (activity.demands().get(r) > capacities.get(r)) {
                    throw new IllegalArgumentException("activity " + i + " needs "
                            + activity.demands().get(r) + " of resource " + r + ", there are " + capacities.get(r));
                }
            }
            for (int before : activity.after()) {
                if (before >= i) {
                    throw new IllegalArgumentException("activity " + i + " waits for " + before
                            + ", which does not stand before it; sort them first");
                }
            }
        }
    }
}
