package sternwright.app.web.season;

import java.util.List;
import java.util.Optional;
import sternwright.app.files.problem.Problem;
import sternwright.app.web.page.State;

/**
 * What the page of a run shows.
 *
 * @param id of the run
 * @param lead who asked for it, when and for how long
 * @param events what has happened before it, in words
 * @param again where what has happened can be changed
 * @param state how far it is
 * @param live whether it goes on
 * @param doing what it does now, a sentence while it goes on
 * @param percent spent share of the time, 0 to 100
 * @param figures cost, bound and gap of the best plan so far; empty before the first plan
 * @param course how they went, as a drawing; empty before the first plan
 * @param points the same as a table
 * @param refused why there is no plan
 * @param unsafe why boats are not safe against frost in time in the plan there is
 * @param fault a fault of the program, empty if there is none
 * @param looking whether the plan it ended with is being looked through against the yard as it is now
 * @param plan the plan it ended with; empty while that goes on
 */
public record RunView(
        String id,
        String lead,
        List<String> events,
        String again,
        State state,
        boolean live,
        String doing,
        int percent,
        List<Figure> figures,
        String course,
        List<Point> points,
        List<Problem> refused,
        List<Problem> unsafe,
        String fault,
        boolean looking,
        Optional<Plan> plan) {
    /** Copies the lists. */
    public RunView {
        events = List.copyOf(events);
        figures = List.copyOf(figures);
        points = List.copyOf(points);
        refused = List.copyOf(refused);
        unsafe = List.copyOf(unsafe);
    }

    /**
     * A figure with its word.
     *
     * @param word what it is
     * @param value how much
     */
    public record Figure(String word, String value) {}

    /**
     * Cost and bound at one time.
     *
     * @param at after how much search
     * @param cost of the best plan
     * @param bound no plan can cost less
     */
    public record Point(String at, String cost, String bound) {}

    /**
     * A plan beside the one the yard works by.
     *
     * @param sums what it costs beside the other, what binds, what to mind, which promises move
     * @param before what the other costs in all, empty if there is none
     * @param moves what else stands on another day
     * @param moreMoves how many more there are
     * @param kept what has become of it: this plan is published, another was, or it can be published
     * @param open whether it can be published
     */
    public record Plan(BoardView.Sums sums, String before, List<Move> moves, int moreMoves, String kept, boolean open) {
        /** Copies the list. */
        public Plan {
            moves = List.copyOf(moves);
        }
    }

    /**
     * An operation that stands on another day.
     *
     * @param boatId the boat
     * @param boat her name
     * @param what the operation
     * @param was the old day
     * @param is the new day
     * @param promised whether an owner knows the old day
     * @param why why it is on its new day
     */
    public record Move(String boatId, String boat, String what, String was, String is, boolean promised, String why) {}
}
