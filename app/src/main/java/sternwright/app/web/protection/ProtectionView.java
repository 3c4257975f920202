package sternwright.app.web.protection;

import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.Problem;
import sternwright.app.paper.drawing.Drawing;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.State;

/**
 * What the page of a boat's protection shows, worded and formatted.
 *
 * @param boatId the boat
 * @param boatName her name
 * @param lead berth and water
 * @param problems what is wrong with readings, or why nothing can be worked out
 * @param shore whether the shore lead is taken as plugged in
 * @param report null if nothing can be worked out
 */
public record ProtectionView(
        String boatId,
        String boatName,
        String lead,
        List<Problem> problems,
        Field shore,
        @Nullable Report report) {
    /** Copies the list. */
    public ProtectionView {
        problems = List.copyOf(problems);
    }

    /**
     * One thing to do.
     *
     * @param state how pressing
     * @param found what was found
     * @param act what to do
     * @param caution what can hurt; empty for nothing
     */
    public record Todo(State state, String found, String act, String caution) {}

    /**
     * One line of a table of two columns.
     *
     * @param what its head
     * @param says what it says
     */
    public record Pair(String what, String says) {}

    /**
     * What readings say.
     *
     * @param summary in one sentence
     * @param verdicts what would be wrong, by probability
     */
    public record Findings(String summary, List<Pair> verdicts) {
        /** Copies the list. */
        public Findings {
            verdicts = List.copyOf(verdicts);
        }
    }

    /**
     * One anode.
     *
     * @param name the anode
     * @param left what is left now
     * @param half when half of it is gone
     * @param range the 80 % range of that day
     * @param fresh how long a new one lasts
     */
    public record Anode(String name, String left, String half, String range, String fresh) {}

    /**
     * What was worked out.
     *
     * @param owner plain words
     * @param todo what to do
     * @param drawings circuit, potentials, one of each anode
     * @param anodes anode life
     * @param alloy which alloy suits the water, and why
     * @param faults what each fault would do, the most harmful first
     * @param findings null without readings
     * @param next measurements that tell most
     * @param rows rows of the form
     * @param electrode the field of the reference electrode
     * @param howTo how readings are taken
     * @param limits what the model cannot see
     * @param cautions what can hurt
     */
    public record Report(
            List<String> owner,
            List<Todo> todo,
            List<Drawing> drawings,
            List<Anode> anodes,
            String alloy,
            List<Pair> faults,
            @Nullable Findings findings,
            List<Pair> next,
            List<TypedReadings.Row> rows,
            Field electrode,
            List<String> howTo,
            List<String> limits,
            List<String> cautions) {
        /** Copies the lists. */
        public Report {
            owner = List.copyOf(owner);
            todo = List.copyOf(todo);
            drawings = List.copyOf(drawings);
            anodes = List.copyOf(anodes);
            faults = List.copyOf(faults);
            next = List.copyOf(next);
            rows = List.copyOf(rows);
            howTo = List.copyOf(howTo);
            limits = List.copyOf(limits);
            cautions = List.copyOf(cautions);
        }
    }
}
