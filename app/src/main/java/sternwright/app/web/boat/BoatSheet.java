package sternwright.app.web.boat;

import java.util.List;
import sternwright.app.web.page.State;

/** What the page of a boat shows, already in the words and formats of its reader. */
public final class BoatSheet {
    private BoatSheet() {}

    /**
     * The head that all pages of a boat share.
     *
     * @param id the boat
     * @param name her name
     * @param lead whose she is, where she lies, how power gets to her water
     * @param at which of her pages is open
     */
    public record Head(String id, String name, String lead, String at) {}

    /**
     * A fact.
     *
     * @param name what it is
     * @param value how it is; empty if not known
     */
    public record Fact(String name, String value) {}

    /**
     * A work that is due or to come.
     *
     * @param letter by which the drawing marks its part, empty if it does not
     * @param anchor where the mark of the drawing leads, empty but for the first work of a part
     * @param work what is to be done
     * @param part on which part
     * @param state how it stands
     * @param safety whether it is a safety item
     * @param dueOn the day
     * @param why the reason
     * @param source which figure was used and where it comes from
     * @param ifDeclined what follows if it is left
     */
    public record Work(
            String letter,
            String anchor,
            String work,
            String part,
            State state,
            boolean safety,
            String dueOn,
            String why,
            String source,
            String ifDeclined) {}

    /**
     * A part with its age.
     *
     * @param name what it is
     * @param id its short name
     * @param fitted the day it was fitted, empty if not known
     * @param age how old it is, empty if not known
     * @param hours engine hours since then, empty if not known
     * @param last what was last done to it, empty if nothing is written down
     * @param due letter of the works due on it, empty if none
     * @param figures what it holds and what its maker says of it, empty if not known
     */
    public record PartLine(
            String name, String id, String fitted, String age, String hours, String last, String due, String figures) {}

    /**
     * An installation.
     *
     * @param id its short name
     * @param name what it is called on the page
     * @param engine engine, power, arrangement and cooling in a line
     * @param caption what stands under its drawing
     * @param wide side elevation with what is due marked
     * @param narrow the same for a phone
     * @param works what is due on it
     * @param coming what is to come
     * @param parts its parts
     * @param meter what its hour meter showed last, and when; empty if never read
     */
    public record Engine(
            String id,
            String name,
            String engine,
            String caption,
            String wide,
            String narrow,
            List<Work> works,
            List<Work> coming,
            List<PartLine> parts,
            String meter) {
        /** Copies the lists. */
        public Engine {
            works = List.copyOf(works);
            coming = List.copyOf(coming);
            parts = List.copyOf(parts);
        }
    }

    /**
     * The whole page.
     *
     * @param head its head
     * @param facts what is known of her
     * @param remarks what a person should look at in her files
     * @param engines her installations
     * @param writes whether the reader writes things down
     * @param edits whether the reader changes her file
     */
    public record View(
            Head head, List<Fact> facts, List<String> remarks, List<Engine> engines, boolean writes, boolean edits) {
        /** Copies the lists. */
        public View {
            facts = List.copyOf(facts);
            remarks = List.copyOf(remarks);
            engines = List.copyOf(engines);
        }
    }
}
