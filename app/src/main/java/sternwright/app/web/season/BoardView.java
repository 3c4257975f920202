package sternwright.app.web.season;

import java.util.List;
import sternwright.app.files.problem.Problem;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.State;

/**
 * What the page of the season shows.
 *
 * @param published whether there is a plan
 * @param lead who published it and when, or that nobody has
 * @param status whether it holds, in a sentence
 * @param judging whether it is being judged
 * @param wrong what stands against it
 * @param runs plans under way or waiting to be kept
 * @param stretches days to choose with one press
 * @param board the drawing and the table behind it
 * @param sums what it costs, what binds, what to mind
 */
public record BoardView(
        boolean published,
        String lead,
        String status,
        boolean judging,
        List<Problem> wrong,
        List<Run> runs,
        List<Stretch> stretches,
        Board board,
        Sums sums) {
    /** Copies the lists. */
    public BoardView {
        wrong = List.copyOf(wrong);
        runs = List.copyOf(runs);
        stretches = List.copyOf(stretches);
    }

    /**
     * A run in a line.
     *
     * @param id of the run
     * @param words how it stands
     */
    public record Run(String id, String words) {}

    /**
     * Fields that narrow the board.
     *
     * @param resource a hoist, a class of places, a person
     * @param boat letters of a name
     * @param from first day
     * @param to last day
     * @param open only what is not as wished
     * @param narrowed whether the board is narrowed
     */
    public record Narrow(Field resource, Field boat, Field from, Field to, Field open, boolean narrowed) {}

    /**
     * Days to choose with one press.
     *
     * @param label what they are
     * @param address where they are shown
     * @param shown whether they are
     */
    public record Stretch(String label, String address, boolean shown) {}

    /**
     * A panel of the drawing.
     *
     * @param title what it shows
     * @param names the column of names
     * @param chart the rest
     */
    public record Panel(String title, String names, String chart) {}

    /**
     * The drawing and the table behind it.
     *
     * @param narrow fields that narrow it
     * @param loads how full everything is; none before it was judged
     * @param fill the same as a table
     * @param filled which stretch of hoists, places and people
     * @param boats the boats of the stretch; none if there are none
     * @param rows the same as a table
     * @param pager which stretch of boats
     * @param movable whether marks can be set on another day
     */
    public record Board(
            Narrow narrow,
            List<Panel> loads,
            List<Fill> fill,
            Pager filled,
            List<Panel> boats,
            List<Row> rows,
            Pager pager,
            boolean movable) {
        /** Copies the lists. */
        public Board {
            loads = List.copyOf(loads);
            fill = List.copyOf(fill);
            boats = List.copyOf(boats);
            rows = List.copyOf(rows);
        }
    }

    /**
     * A hoist, places of a length or a person in a line.
     *
     * @param name which
     * @param most its fullest week and what is used of it then
     * @param full the weeks in which it is full; empty if there are none
     */
    public record Fill(String name, String most, String full) {}

    /**
     * A visit in a line.
     *
     * @param boatId the boat
     * @param boat her name
     * @param visit the visit
     * @param from first day
     * @param until last day
     * @param place where she stands
     * @param people who comes
     * @param state how it stands to its dates
     */
    public record Row(
            String boatId,
            String boat,
            String visit,
            String from,
            String until,
            String place,
            String people,
            State state) {}

    /**
     * What it costs, what binds, what to mind.
     *
     * @param mind boats that are not safe or late, the worst first
     * @param moreMind how many more there are
     * @param moved promised dates that are others now
     * @param binds what is full for how long
     * @param costs what it costs by what it is paid for
     * @param total all of it
     * @param bound how good it is proved to be
     * @param remarks what a person should know
     */
    public record Sums(
            List<Mind> mind,
            int moreMind,
            List<Moved> moved,
            List<String> binds,
            List<Cost> costs,
            String total,
            String bound,
            List<String> remarks) {
        /** Copies the lists. */
        public Sums {
            mind = List.copyOf(mind);
            moved = List.copyOf(moved);
            binds = List.copyOf(binds);
            costs = List.copyOf(costs);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * A boat that is not as wished.
     *
     * @param boatId the boat
     * @param boat her name
     * @param what the operation
     * @param day its day
     * @param state how it stands
     * @param why why on this day
     */
    public record Mind(String boatId, String boat, String what, String day, State state, String why) {}

    /**
     * A promised date that is another now.
     *
     * @param boatId the boat
     * @param boat her name
     * @param what the operation
     * @param was the old date
     * @param is the new date
     * @param costs what moving it costs
     * @param why why
     */
    public record Moved(String boatId, String boat, String what, String was, String is, String costs, String why) {}

    /**
     * A line of costs.
     *
     * @param what what it is paid for
     * @param before in the plan the yard works by; empty where nothing is compared
     * @param amount in this plan
     */
    public record Cost(String what, String before, String amount) {}
}
