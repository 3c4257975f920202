package sternwright.app.desk.working;

import java.util.LinkedHashSet;
import java.util.Set;
import sternwright.job.CardWork;
import sternwright.job.JobCard;

/** The fields of a card by their names, so that nothing else can be written on it. */
public final class CardFields {
    /** When the work was done. */
    public static final String DAY = "day";
    /** Who did it. */
    public static final String WHO = "who";
    /** Time spent, hours. */
    public static final String SPENT = "spent";
    /** What was seen besides. */
    public static final String SEEN = "seen";
    /** That a meter out of line is right as read. */
    public static final String AS_READ = "as-read";

    /** Points to look at before leaving. */
    public static final int LEAVING = 4;

    private CardFields() {}

    /** A step of a work, ticked by {@code true}. */
    public static String step(int work, int step) {
        return "w" + work + ".step" + step;
    }

    /** A reading of a work. */
    public static String reading(int work, int reading) {
        return "w" + work + ".r" + reading;
    }

    /** How a work came out: {@code done}, {@code not-done} or {@code refused}. */
    public static String answer(int work) {
        return "w" + work + ".answer";
    }

    /** What there is to say of a work. */
    public static String remark(int work) {
        return "w" + work + ".remark";
    }

    /** Who signed that a work is not to be done. */
    public static String signed(int work) {
        return "w" + work + ".signed";
    }

    /** What a meter shows. */
    public static String meter(int engine) {
        return "e" + engine + ".meter";
    }

    /** How an opening stood on arrival. */
    public static String arrival(int opening) {
        return "o" + opening + ".arrival";
    }

    /** How an opening stood on leaving. */
    public static String leaving(int opening) {
        return "o" + opening + ".leaving";
    }

    /** Something taken from the stores, ticked by {@code true}. */
    public static String taken(int supply) {
        return "s" + supply + ".taken";
    }

    /** A point before leaving, ticked by {@code true}. */
    public static String before(int point) {
        return "b" + point + ".looked";
    }

    /**
     * Every field of a card.
     *
     * @param card the card
     * @return their names
     */
    public static Set<String> of(JobCard card) {
        Set<String> all = new LinkedHashSet<>(Set.of(DAY, WHO, SPENT, SEEN, AS_READ));
        for (int i = 0; i < card.engines().size(); i++) {
            all.add(meter(i));
        }
        for (int i = 0; i < card.openings().size(); i++) {
            all.add(arrival(i));
            all.add(leaving(i));
        }
        for (int i = 0; i < card.supplies().size(); i++) {
            all.add(taken(i));
        }
        for (int i = 0; i < LEAVING; i++) {
            all.add(before(i));
        }
        for (CardWork w : card.works()) {
            for (int i = 0; i < w.steps().size(); i++) {
                all.add(step(w.number(), i));
            }
            for (int i = 0; i < w.readings().size(); i++) {
                all.add(reading(w.number(), i));
            }
            all.add(answer(w.number()));
            all.add(remark(w.number()));
            all.add(signed(w.number()));
        }
        return all;
    }
}
