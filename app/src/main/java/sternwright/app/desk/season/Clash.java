package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why a season cannot be as it should, and what would help.
 *
 * @param why what clashes, in one sentence
 * @param boats the boats that clash, as painted on the stern; without any one of them the others can be served
 * @param from first day on which the first of them may begin
 * @param until last day by which the last of them must end
 * @param proved whether an exact solver has proved that they clash; otherwise a search found no plan
 * @param advice what to do, a sentence
 * @param reliefs what was tried: what is enough first, of that what has a price by its price, turning boats away last
 */
public record Clash(
        String why,
        List<String> boats,
        LocalDate from,
        LocalDate until,
        boolean proved,
        String advice,
        List<Relief> reliefs) {
    /** Copies the lists. */
    public Clash {
        boats = List.copyOf(boats);
        reliefs = List.copyOf(reliefs);
    }

    /**
     * Something that was tried.
     *
     * @param what what would be done
     * @param enough whether the whole season can be planned with it
     * @param from first day of the weeks in which it would be done, null if it is not a matter of weeks
     * @param until last day of those weeks
     * @param costs what it costs at most in the yard's currency, null where the yard's files have no price for it
     * @param workLost work without tax that is then not done, in the yard's currency; null where none is lost
     * @param words all of it as a phrase
     */
    public record Relief(
            String what,
            boolean enough,
            @Nullable LocalDate from,
            @Nullable LocalDate until,
            @Nullable Double costs,
            @Nullable Double workLost,
            String words) {}

    /** Everything in sentences: the clash, what to do, and what is enough. */
    public List<String> sentences() {
        return java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(why + ". " + advice),
                        reliefs.stream().filter(Relief::enough).map(r -> "This is enough: " + r.words() + "."))
                .toList();
    }
}
