package sternwright.season;

import java.util.List;

/**
 * One uninterrupted piece of work on one boat.
 *
 * @param name what is done, in the yard's words ("lift", "lay-up")
 * @param half index of the {@link Half} that is planned as one
 * @param lengthQ length in quarters, at least 1
 * @param earliestQ no start before this quarter (release, part not before)
 * @param latestEndQ no end after this quarter; the axis' length if nothing limits it
 * @param skill index of the skill it needs, or {@link #NONE}
 * @param hands people of that skill it needs all the time, at least 1 where there is a skill
 * @param liftClass index of the {@link LiftClass} when the hoist does it, or {@link #NONE}
 * @param days index of the {@link Days} on which it may start (tide), or {@link #NONE}
 * @param needs further things it occupies
 * @param due date it should be finished by
 */
public record Operation(
        String name,
        int half,
        int lengthQ,
        int earliestQ,
        int latestEndQ,
        int skill,
        int hands,
        int liftClass,
        int days,
        List<Need> needs,
        Due due) {
    /** Stands for "none" in an index. */
    public static final int NONE = -1;

    /** Copies the list and refuses a length below one quarter. */
    public Operation {
        needs = List.copyOf(needs);
        if (lengthQ < 0) {
            throw new IllegalArgumentException(
                    name + ": length " + lengthQ + " quarters; an operation can't be shorter than 0");
        }
    }

    /** The same operation between other dates. */
    public Operation within(int newEarliestQ, int newLatestEndQ) {
        return new Operation(
                name, half, lengthQ, newEarliestQ, newLatestEndQ, skill, hands, liftClass, days, needs, due);
    }

    /** The same operation, nailed to one start whatever the tide says: it has begun. */
    public Operation begun(int startQ) {
        return new Operation(name, half, lengthQ, startQ, startQ + lengthQ, skill, hands, liftClass, NONE, needs, due);
    }

    /** The same operation with another due date. */
    public Operation due(Due newDue) {
        return new Operation(name, half, lengthQ, earliestQ, latestEndQ, skill, hands, liftClass, days, needs, newDue);
    }
}
