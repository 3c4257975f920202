package sternwright.season.dated.answer;

import java.time.LocalDateTime;
import java.util.List;
import sternwright.season.dated.Meaning;

/**
 * One operation with its date.
 *
 * @param meaning what it is
 * @param from day and hour it begins
 * @param until day and hour it ends
 * @param quarter part of the working day from 0 to 3 in which it begins
 * @param people who does it, in the order they take over; empty for the hoist's own work
 * @param hoist name of the hoist, empty if none is needed
 * @param state how it stands to its date
 * @param daysLate working days after its date, 0 if in time
 * @param reason why on this date, one sentence
 */
public record DatedOperation(
        Meaning meaning,
        LocalDateTime from,
        LocalDateTime until,
        int quarter,
        List<String> people,
        String hoist,
        State state,
        int daysLate,
        String reason) {
    /** How an operation stands to its date. */
    public enum State {
        /** Nothing to say. */
        IN_TIME("in time"),
        /** A promised date, kept. */
        PROMISED("as promised"),
        /** Later than the date that was wanted. */
        LATE("late"),
        /** Promised for another day. */
        MOVED("promise moved"),
        /** Not safe against frost in time. */
        UNSAFE("unsafe: frost");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** The state in plain words. */
        public String words() {
            return words;
        }
    }

    /** Copies the list. */
    public DatedOperation {
        people = List.copyOf(people);
    }
}
