package sternwright.app.web.due;

import java.util.List;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Sorting;
import sternwright.app.web.page.State;

/**
 * What the page of the due list shows.
 *
 * @param lines the works of the stretch
 * @param pager which stretch
 * @param sorting by which column
 * @param filters the fields that narrow the list
 * @param more the fields that are asked less often
 * @param open whether one of those is in use
 * @param overdue how many of the whole list are overdue
 */
public record DueView(
        List<Line> lines,
        Pager pager,
        Sorting sorting,
        List<Field> filters,
        List<Field> more,
        boolean open,
        long overdue) {
    /** Copies the lists. */
    public DueView {
        lines = List.copyOf(lines);
        filters = List.copyOf(filters);
        more = List.copyOf(more);
    }

    /**
     * One work on one part.
     *
     * @param on the day it falls due; words where there is none
     * @param range the 80 % range where it is forecast, may be empty
     * @param work the work
     * @param rule id of its rule
     * @param safety whether it is a safety item
     * @param part the part as people say it
     * @param boatId the boat
     * @param boat her name
     * @param berth where she lies
     * @param where where and in which half it is done
     * @param state how it stands
     * @param reason why, in one sentence
     * @param last the last sensible day
     * @param done when it was last done
     * @param figure how far the figure reaches and where it comes from
     * @param left what happens if it is left, may be empty
     */
    public record Line(
            String on,
            String range,
            String work,
            String rule,
            boolean safety,
            String part,
            String boatId,
            String boat,
            String berth,
            String where,
            State state,
            String reason,
            String last,
            String done,
            String figure,
            String left) {}
}
