package sternwright.season.project;

import java.util.List;

/**
 * A schedule of a project.
 *
 * @param starts start of every activity
 * @param makespan end of the last one
 * @param bound no schedule ends before this
 * @param schedules how many schedules were looked at
 */
public record ProjectPlan(List<Integer> starts, int makespan, int bound, long schedules) {
    /** Copies the list. */
    public ProjectPlan {
        starts = List.copyOf(starts);
    }

    /** Whether it is proved that none is shorter. */
    public boolean optimal() {
        return makespan == bound;
    }
}
