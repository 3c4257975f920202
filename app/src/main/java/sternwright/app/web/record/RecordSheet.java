package sternwright.app.web.record;

import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.web.boat.BoatSheet;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.State;

/** What the pages that record work show. */
public final class RecordSheet {
    private RecordSheet() {}

    /**
     * A work that can be chosen.
     *
     * @param key part and rule, as sent
     * @param id of the box
     * @param work what is to be done
     * @param part on which part
     * @param state how it stands
     */
    public record Choice(String key, String id, String work, String part, State state) {}

    /**
     * The page on which works are chosen.
     *
     * @param head head of the boat's pages
     * @param now works due
     * @param rest all others
     * @param happening the field of what happened to her
     * @param wrong what is wrong, empty if nothing is
     */
    public record Choices(BoatSheet.Head head, List<Choice> now, List<Choice> rest, Field happening, String wrong) {}

    /**
     * What is said of a reading that was typed.
     *
     * @param verdict how it is judged, null if it is not
     * @param why with limit and source, or what is wrong with it
     */
    public record Said(@Nullable State verdict, String why) {
        static final Said NOTHING = new Said(null, "");
    }

    /**
     * A reading asked for.
     *
     * @param field its field
     * @param limit what it should be
     * @param said what is said of what was typed
     * @param judge where it is judged as typed
     */
    public record Asked(Field field, String limit, Said said, String judge) {}

    /**
     * A work with its fields.
     *
     * @param key part and rule
     * @param title what is done
     * @param part on which part
     * @param outcome how it ended
     * @param readings what is measured
     * @param note free text
     * @param cautions what to beware of
     */
    public record Work(
            String key,
            String title,
            String part,
            Field outcome,
            List<Asked> readings,
            Field note,
            List<String> cautions) {
        /** Copies the lists. */
        public Work {
            readings = List.copyOf(readings);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * The page on which works are recorded.
     *
     * @param head head of the boat's pages
     * @param works the works chosen
     * @param day when
     * @param who by whom
     * @param hours a field for each engine worked on
     * @param asRead whether a meter reading out of line may be kept, as typed; null while none is out of line
     * @param wrongs all that must be put right
     * @param checked whether readings were only looked at
     */
    public record View(
            BoatSheet.Head head,
            List<Work> works,
            Field day,
            Field who,
            List<Field> hours,
            @Nullable Field asRead,
            List<Form.Wrong> wrongs,
            boolean checked) {}
}
