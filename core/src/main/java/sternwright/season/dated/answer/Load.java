package sternwright.season.dated.answer;

import java.util.List;

/**
 * How full one of the yard's resources is, week by week.
 *
 * @param kind what it is
 * @param name the yard's name for it
 * @param weeks one entry for each week of the season
 */
public record Load(Kind kind, String name, List<Week> weeks) {
    /** Kinds of resources, in the order they are shown. */
    public enum Kind {
        /** A hoist; used and there in lifts and launches. */
        HOIST,
        /** Places of one length or longer; used and there in boats at the week's fullest hour. */
        PLACES,
        /** One of the crew; used and there in quarters of a day. */
        PERSON,
        /** Overtime; used and there in extra people. */
        OVERTIME
    }

    /**
     * One week.
     *
     * @param used what is used
     * @param there what there is
     */
    public record Week(int used, int there) {
        /** Used share, 0 to 1; 0 where there is nothing. */
        public double share() {
            return there <= 0 ? 0 : (double) used / there;
        }
    }

    /** Copies the list. */
    public Load {
        weeks = List.copyOf(weeks);
    }

    /** Share from which a week counts as full. */
    public double fullFrom() {
        return kind == Kind.PERSON || kind == Kind.HOIST ? 0.9 : 1;
    }

    /** Whether the resource is full in a week. */
    public boolean full(int week) {
        Week w = weeks.get(week);
        return w.there() > 0 && w.share() >= fullFrom();
    }
}
