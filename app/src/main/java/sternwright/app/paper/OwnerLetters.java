package sternwright.app.paper;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sternwright.finding.Caution;
import sternwright.yard.Yard;

/**
 * Letters to owners about one matter, a sheet for each.
 *
 * @param yard who writes
 * @param writtenOn the day
 * @param answerBy day by which the yard would like to hear
 * @param about the matter, in a few words
 * @param letters one an owner
 */
public record OwnerLetters(Yard yard, LocalDate writtenOn, LocalDate answerBy, String about, List<Letter> letters) {
    /** Copies the list. */
    public OwnerLetters {
        letters = List.copyOf(letters);
    }

    /**
     * One letter.
     *
     * @param owner to whom
     * @param contact telephone or e-mail; may be empty
     * @param items what it is about
     * @param cautions what to mind, for owners who work on board themselves
     */
    public record Letter(String owner, String contact, List<Item> items, List<Caution> cautions) {
        /** Copies the lists. */
        public Letter {
            items = List.copyOf(items);
            cautions = List.copyOf(cautions);
        }

        /** Whether one of its works is a safety item. */
        public boolean safety() {
            return items.stream().anyMatch(Item::safety);
        }

        /** Whether more than one boat is meant. */
        public boolean manyBoats() {
            return items.stream().map(Item::boat).distinct().count() > 1;
        }

        /** The boats, each once. */
        public String boats() {
            return String.join(", ", items.stream().map(Item::boat).distinct().toList());
        }
    }

    /**
     * One work on one part.
     *
     * @param boat as painted on the stern
     * @param berth where she lies
     * @param part the part, with its side where there are two
     * @param work what is to be done
     * @param age how old it is, in words
     * @param reason why now, one sentence
     * @param why what it is good for; may be empty
     * @param ifLeft what happens if it is left; may be empty
     * @param overdue past its last sensible day
     * @param safety a safety item
     */
    public record Item(
            String boat,
            String berth,
            String part,
            String work,
            String age,
            String reason,
            String why,
            String ifLeft,
            boolean overdue,
            boolean safety) {}

    /**
     * The letters as one document.
     *
     * @param figures formats of the reader
     * @return the paper
     */
    public Paper paper(Figures figures) {
        String title = "Letters to owners: " + about;
        String foot = yard.name() + (yard.invented() ? " \u00b7 invented" : "");
        Map<String, Object> facts = new HashMap<>();
        facts.put("p", this);
        facts.put("f", figures);
        return new Paper(
                "letters-" + writtenOn,
                title,
                Paper.page("letters", title, Style.lettersScreen(foot, figures), facts),
                Paper.page("letters", title, Style.lettersPrint(foot, figures), facts));
    }
}
