package sternwright.due;

import java.time.LocalDate;
import java.util.List;
import sternwright.yard.SeasonDates;

/**
 * The due lists of any number of boats on one day; what is the same for all of them is worked out once.
 *
 * <p>May be asked from many threads.
 */
public final class YardDueList {
    private final AskedDay day;
    private final RulePlans rules;

    private YardDueList(AskedDay day, RulePlans rules) {
        this.day = day;
        this.rules = rules;
    }

    /**
     * Gets ready to be asked.
     *
     * @param season lay-up and recommission of the yard
     * @param rules rules in force; quickest if it gives the same list for parts that have the same rules, as the rule book does
     * @param today the day asked for
     * @return the due lists of that day
     */
    public static YardDueList on(SeasonDates season, DueList.RulesOf rules, LocalDate today) {
        return new YardDueList(new AskedDay(today, new HalfYears(season, today)), new RulePlans(rules));
    }

    /**
     * What is due on one boat.
     *
     * @param boat the boat with all it is made from
     * @return one entry for every part and rule that has a date, earliest first, safety items first on equal days
     */
    public List<Due> of(BoatCase boat) {
        return DueList.of(boat, day, rules);
    }

    /**
     * What is due on each boat, worked out side by side.
     *
     * @param boats the boats
     * @param season lay-up and recommission of the yard
     * @param rules rules in force; asked from several threads
     * @param today the day asked for
     * @return one due list for each boat, in the order given
     */
    public static List<List<Due>> of(List<BoatCase> boats, SeasonDates season, DueList.RulesOf rules, LocalDate today) {
        YardDueList yard = on(season, rules, today);
        return boats.parallelStream().map(yard::of).toList();
    }
}
