package sternwright.season.relief;

import java.util.List;

/**
 * Why a season can't be planned, and what would help.
 *
 * @param clash visits that can't all be served; leaving out any one of them, the others can
 * @param sentence the clash in one sentence, without its dates
 * @param fromQ quarter from which the first of them may begin
 * @param endQ quarter by which the last of them must end
 * @param proved whether an exact solver has proved that these visits clash; otherwise a search found no plan
 * @param reliefs what was tried: what is enough first, of that what has a price by its price, turning boats away last
 */
public record NoSeason(
        List<Integer> clash, String sentence, int fromQ, int endQ, boolean proved, List<Relief> reliefs) {
    /** Copies the lists. */
    public NoSeason {
        clash = List.copyOf(clash);
        reliefs = List.copyOf(reliefs);
    }

    /**
     * Something that might help.
     *
     * @param kind what kind of thing
     * @param sentence what would be done, for people
     * @param firstWeek first week of the season in which it would be done, counted from 0; {@link #ALWAYS} if it is not a matter of weeks
     * @param lastWeek last week
     * @param enough whether the whole season can be planned with it
     * @param points what it costs at most in the yard's points, 0 where the yard has no price for it
     * @param visits visits that are not taken, empty if it is something else
     */
    public record Relief(
            Kind kind,
            String sentence,
            int firstWeek,
            int lastWeek,
            boolean enough,
            long points,
            List<Integer> visits) {
        /** Stands for a relief that is not tied to weeks. */
        public static final int ALWAYS = -1;

        /** Copies the list. */
        public Relief {
            visits = List.copyOf(visits);
        }

        static Relief always(Kind kind, String sentence, boolean enough) {
            return new Relief(kind, sentence, ALWAYS, ALWAYS, enough, 0, List.of());
        }

        /** Kinds, in the order in which a yard would try them. */
        public enum Kind {
            /** More overtime in the weeks of the clash. */
            OVERTIME,
            /** Later last dates, a longer season, boats given up sooner. */
            ANOTHER_WEEK,
            /** One more hoist, place or technician. */
            ONE_MORE,
            /** Boats not taken. */
            TURN_AWAY
        }
    }
}
