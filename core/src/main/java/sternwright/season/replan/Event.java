package sternwright.season.replan;

import java.util.List;
import sternwright.season.Due;

/** Something that has happened to a season. Days are working days of the axis, quarters count from its beginning. */
public sealed interface Event {
    /**
     * A technician is not there.
     *
     * @param technician index in the yard
     * @param fromDay first working day away
     * @param toDay last working day away
     */
    record PersonAway(int technician, int fromDay, int toDay) implements Event {}

    /**
     * A part comes late, so an operation can't start before.
     *
     * @param operation index of the operation
     * @param notBeforeQ first quarter at which it can start
     */
    record PartLate(int operation, int notBeforeQ) implements Event {}

    /**
     * A hoist is out of order.
     *
     * @param hoist index in the yard
     * @param fromDay first working day
     * @param toDay last working day
     */
    record HoistDown(int hoist, int fromDay, int toDay) implements Event {}

    /**
     * A boat must come out at once.
     *
     * @param boat name of the boat
     * @param liftClass which hoists can take it
     * @param placeClass where it can stand
     * @param work what is done ashore, one after the other
     * @param fromQ first quarter at which it can be lifted
     * @param due date for the launch
     */
    record EmergencyLift(String boat, int liftClass, int placeClass, List<Work> work, int fromQ, Due due)
            implements Event {
        /** Copies the list. */
        public EmergencyLift {
            work = List.copyOf(work);
        }
    }

    /**
     * Work of an emergency.
     *
     * @param name what is done
     * @param skill index of the skill
     * @param lengthQ length in quarters
     */
    record Work(String name, int skill, int lengthQ) {}

    /**
     * An owner wants the boat on another date.
     *
     * @param operation index of the operation with the date
     * @param byQ quarter by whose beginning it should have ended
     */
    record OwnersDate(int operation, int byQ) implements Event {}
}
