package sternwright.due;

import java.time.LocalDate;
import java.util.List;
import sternwright.yard.SeasonDates;

/** The due lists of many boats, worked out side by side. */
public final class YardDueList {
    private YardDueList() {}

    /**
     * What is due on each boat.
     *
     * @param boats the boats
     * @param season lay-up and recommission of the yard
     * @param rules rules in force; asked from several threads
     * @param today the day asked for
     * @return one due list for each boat, in the order given
     */
    public static List<List<Due>> of(List<BoatCase> boats, SeasonDates season, DueList.RulesOf rules, LocalDate today) {
        return boats.parallelStream()
                .map(b -> DueList.of(b.boat(), b.berth(), b.use(), season, rules, b.history(), b.wear(), today))
                .toList();
    }
}
