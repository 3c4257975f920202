package sternwright.app.web.cards;

import java.util.List;
import sternwright.app.files.problem.Problem;
import sternwright.app.web.boat.DocumentsPage;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.State;

/** What the pages of job cards show. */
public final class CardView {
    private CardView() {}

    /**
     * A card.
     *
     * @param id its name in addresses
     * @param boatId the boat
     * @param boat her name
     * @param lead whose she is, where she lies
     * @param visit when, where, how long
     * @param issued by whom and when
     * @param recorded by whom and when, empty as long as it is open
     * @param writes whether the reader may write on it
     * @param facts what to know of boat and engines
     * @param settle what is still to settle
     * @param cautions what to mind before starting
     * @param engines the meters to read
     * @param openings openings below water
     * @param supplies what to take along
     * @param points the works by service point
     * @param leaving what to look at before leaving
     * @param close the fields at the end
     * @param wrong what keeps it from being recorded
     * @param problems what the history cannot take
     * @param papers photos and documents
     */
    public record Card(
            String id,
            String boatId,
            String boat,
            String lead,
            String visit,
            String issued,
            String recorded,
            boolean writes,
            List<String> facts,
            List<String> settle,
            List<Caution> cautions,
            List<Entry> engines,
            List<Opening> openings,
            List<Tick> supplies,
            List<Point> points,
            List<Tick> leaving,
            Close close,
            List<Wrong> wrong,
            List<Problem> problems,
            Papers papers) {
        /** Copies the lists. */
        public Card {
            facts = List.copyOf(facts);
            settle = List.copyOf(settle);
            cautions = List.copyOf(cautions);
            engines = List.copyOf(engines);
            openings = List.copyOf(openings);
            supplies = List.copyOf(supplies);
            points = List.copyOf(points);
            leaving = List.copyOf(leaving);
            wrong = List.copyOf(wrong);
            problems = List.copyOf(problems);
        }
    }

    /**
     * Photos and documents put on a card.
     *
     * @param lines the newest first
     * @param problems what is wrong with the file that was sent
     * @param puts whether the reader puts some on
     */
    public record Papers(List<DocumentsPage.Line> lines, List<Problem> problems, boolean puts) {
        /** Copies the lists. */
        public Papers {
            lines = List.copyOf(lines);
            problems = List.copyOf(problems);
        }
    }

    /**
     * A caution.
     *
     * @param key its letter
     * @param title a few words
     * @param text what to mind
     */
    public record Caution(String key, String title, String text) {}

    /**
     * A field to type into.
     *
     * @param field its name
     * @param label what to write
     * @param hint how, or what it was last time; may be empty
     * @param unit the unit, may be empty
     * @param typed what stands in it
     */
    public record Entry(String field, String label, String hint, String unit, String typed) {}

    /**
     * Something to tick.
     *
     * @param field its name
     * @param text what
     * @param note more, may be empty
     * @param ticked whether it is ticked
     */
    public record Tick(String field, String text, String note, boolean ticked) {}

    /**
     * An opening below water.
     *
     * @param name the opening
     * @param one one way it can stand, as kept
     * @param other the other way
     * @param arrival name of the field on arrival
     * @param arrived what stands in it
     * @param leaving name of the field on leaving
     * @param left what stands in it
     */
    public record Opening(
            String name, String one, String other, String arrival, String arrived, String leaving, String left) {}

    /**
     * Works at one place.
     *
     * @param name the place
     * @param cautions cautions that belong to it alone
     * @param works the works
     */
    public record Point(String name, List<Caution> cautions, List<Work> works) {
        /** Copies the lists. */
        public Point {
            cautions = List.copyOf(cautions);
            works = List.copyOf(works);
        }
    }

    /**
     * A work.
     *
     * @param number its number on the card
     * @param order what is done
     * @param part on what
     * @param time minutes
     * @param safety whether it is a safety item
     * @param mind which cautions apply, may be empty
     * @param reason why, in a sentence
     * @param source where the interval comes from
     * @param takes what it takes, may be empty
     * @param steps the steps
     * @param readings the readings asked
     * @param answer how it came out: done, not-done, refused or empty
     * @param remark the field for a remark
     * @param signed the field for who signed a refusal
     */
    public record Work(
            int number,
            String order,
            String part,
            String time,
            boolean safety,
            String mind,
            String reason,
            String source,
            String takes,
            List<Tick> steps,
            List<Reading> readings,
            String answer,
            Entry remark,
            Entry signed) {
        /** Copies the lists. */
        public Work {
            steps = List.copyOf(steps);
            readings = List.copyOf(readings);
        }
    }

    /**
     * A reading.
     *
     * @param entry the field, its hint the limit and the value last time
     * @param yesNo whether it is answered with yes or no
     * @param verdict what it means
     */
    public record Reading(Entry entry, boolean yesNo, Verdict verdict) {}

    /**
     * What a reading means.
     *
     * @param shown whether there is anything to say
     * @param state fine, watch, act or unsafe
     * @param why why
     * @param source where the limit comes from
     */
    public record Verdict(boolean shown, State state, String why, String source) {}

    /**
     * The fields at the end.
     *
     * @param day when it was done
     * @param who who did it
     * @param spent time spent
     * @param seen what was seen besides
     * @param asRead whether meters out of line are right as read
     */
    public record Close(Entry day, Entry who, Entry spent, Entry seen, boolean asRead) {}

    /**
     * One thing to put right.
     *
     * @param field id of the field
     * @param says what
     */
    public record Wrong(String field, String says) {}

    /**
     * A card in the list.
     *
     * @param id its name in addresses
     * @param boat the boat
     * @param dates when
     * @param issued by whom
     * @param state how it stands
     */
    public record Line(String id, String boat, String dates, String issued, State state) {}

    /**
     * The list.
     *
     * @param lines the open ones first
     * @param pager which stretch
     */
    public record Lines(List<Line> lines, Pager pager) {
        /** Copies the list. */
        public Lines {
            lines = List.copyOf(lines);
        }
    }
}
