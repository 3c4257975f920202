package sternwright.season.dated.event;

import java.time.LocalDate;
import sternwright.season.dated.OperationName;
import sternwright.yard.resource.Absence;

/** Something that has happened. */
public sealed interface SeasonEvent {
    /** What happened, in words. */
    String words();

    /**
     * One of the crew is not there.
     *
     * @param person id of the person
     * @param days the days
     */
    record PersonAway(String person, Absence days) implements SeasonEvent {
        @Override
        public String words() {
            return person + " is away from " + days.from() + " to " + days.to();
        }
    }

    /**
     * A hoist does not work.
     *
     * @param hoist id of the hoist
     * @param days the days
     */
    record HoistDown(String hoist, Absence days) implements SeasonEvent {
        @Override
        public String words() {
            return hoist + " is down from " + days.from() + " to " + days.to();
        }
    }

    /**
     * A part comes late.
     *
     * @param boat id of the boat
     * @param work id of the rule that waits for it
     * @param here the day the part is here
     */
    record PartLate(String boat, String work, LocalDate here) implements SeasonEvent {
        @Override
        public String words() {
            return "the part for " + work + " on " + boat + " is here on " + here;
        }
    }

    /**
     * Something is wrong with a boat: she must come out at once, or be seen to where she stands.
     *
     * @param boat id of the boat
     * @param from first day
     */
    record Emergency(String boat, LocalDate from) implements SeasonEvent {
        @Override
        public String words() {
            return boat + " is an emergency from " + from;
        }
    }

    /**
     * An owner wants to be afloat on another day.
     *
     * @param boat id of the boat
     * @param by the day
     */
    record OwnerWants(String boat, LocalDate by) implements SeasonEvent {
        @Override
        public String words() {
            return "the owner of " + boat + " wants to be afloat by " + by;
        }
    }

    /**
     * An operation is set on a day by hand: from now on it is promised for that day and not moved.
     *
     * @param name the operation
     * @param to the day
     */
    record Moved(OperationName name, LocalDate to) implements SeasonEvent {
        @Override
        public String words() {
            return name.operation() + " of " + name.boatId() + " (" + name.visit() + ") is set on " + to;
        }
    }
}
