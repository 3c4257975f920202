package sternwright.app.desk.today;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One day at the yard.
 *
 * @param day the day
 * @param works whether the yard works on it
 * @param plannedOn the day on which the published plan's visits were planned; null if no plan is published
 * @param people everyone of the crew with the day's jobs, and jobs for whom nobody is named
 * @param hoist lifts and launches in their order
 * @param ashore boats on hard standing, the longest there first
 * @param standing how full the hard standing is, by class of places
 * @param parts parts that are not here yet, the first needed first
 * @param promises promised dates at risk, the worst first
 * @param dues works past their last sensible day, safety items first, then the longest past; one line a boat
 * @param tides high waters of the day, if a hoist waits for the tide
 */
public record DayAtYard(
        LocalDate day,
        boolean works,
        @Nullable LocalDate plannedOn,
        List<PersonDay> people,
        List<HoistJob> hoist,
        List<StandsAshore> ashore,
        List<StandingLoad> standing,
        List<PartAwaited> parts,
        List<PromiseAtRisk> promises,
        List<DueAtRisk> dues,
        List<Tide> tides) {
    /** Copies the lists. */
    public DayAtYard {
        people = List.copyOf(people);
        hoist = List.copyOf(hoist);
        ashore = List.copyOf(ashore);
        standing = List.copyOf(standing);
        parts = List.copyOf(parts);
        promises = List.copyOf(promises);
        dues = List.copyOf(dues);
        tides = List.copyOf(tides);
    }

    /**
     * One person's day.
     *
     * @param person the name; empty for jobs for whom nobody is named
     * @param there whether the person works on this day
     * @param why why not; empty if there, or on a usual day off
     * @param jobs in order of time
     */
    public record PersonDay(String person, boolean there, String why, List<Job> jobs) {
        /** Copies the list. */
        public PersonDay {
            jobs = List.copyOf(jobs);
        }
    }

    /**
     * One operation on one boat.
     *
     * @param boatId the boat
     * @param boat as painted on the stern
     * @param berth where she lies
     * @param visit name of the visit
     * @param operation name of the operation
     * @param from the day it begins
     * @param quarter part of the working day from 0 to 3 in which it begins on that day
     * @param until the day it ends
     * @param reason why on this date
     */
    public record Job(
            String boatId,
            String boat,
            String berth,
            String visit,
            String operation,
            LocalDate from,
            int quarter,
            LocalDate until,
            String reason) {}

    /**
     * A lift or launch.
     *
     * @param job the operation
     * @param hoist name of the hoist
     * @param lengthM length of the boat, m
     * @param massKg mass as lifted, kg
     * @param highWaterNeededM height of high water above chart datum that she needs in the dock, m; null if the hoist waits for no
     *     tide
     */
    public record HoistJob(
            Job job,
            String hoist,
            double lengthM,
            double massKg,
            @Nullable Double highWaterNeededM) {}

    /**
     * A boat on hard standing.
     *
     * @param boatId the boat
     * @param boat as painted on the stern
     * @param since the day she was lifted; null if only that she stands ashore is known
     * @param launch the day her launch is planned; null if none is
     * @param place smallest class of places that takes her; empty if none does
     */
    public record StandsAshore(
            String boatId,
            String boat,
            @Nullable LocalDate since,
            @Nullable LocalDate launch,
            String place) {}

    /**
     * A class of hard standing.
     *
     * @param place its name
     * @param boats how many boats of this class stand there; a shorter boat may stand on a longer place
     * @param places how many there are
     */
    public record StandingLoad(String place, int boats, int places) {}

    /**
     * A part that is not here yet.
     *
     * @param boatId the boat
     * @param boat as painted on the stern
     * @param ruleId the rule that waits for it
     * @param work what waits for it; the rule's id if no programme has it
     * @param here the day it is expected
     * @param neededBy the day the work on her begins, or should be done, whichever is first; null if neither is known
     * @param late whether it comes after that day
     * @param note as written beside the date
     */
    public record PartAwaited(
            String boatId,
            String boat,
            String ruleId,
            String work,
            LocalDate here,
            @Nullable LocalDate neededBy,
            boolean late,
            String note) {}

    /**
     * A promised date that may not be kept.
     *
     * @param boatId the boat
     * @param boat as painted on the stern
     * @param visit name of the visit
     * @param operation name of the operation
     * @param promised the day promised
     * @param planned the day the plan has; null if the plan does not have the operation
     * @param daysLate days the plan is later; 0 if it is not
     * @param firm never moved, whatever it costs
     * @param why what puts it at risk
     */
    public record PromiseAtRisk(
            String boatId,
            String boat,
            String visit,
            String operation,
            LocalDate promised,
            @Nullable LocalDate planned,
            long daysLate,
            boolean firm,
            Risk why) {}

    /** What puts a promise at risk. */
    public enum Risk {
        /** The plan has another day, later than promised. */
        PLANNED_LATER,
        /** The plan does not have it at all. */
        NOT_PLANNED,
        /** A part for the visit comes after the day promised. */
        PART_LATE,
        /** A safety item of the boat is past its life by the day promised and nobody refused it. */
        SAFETY_OVERDUE
    }

    /**
     * The works of one boat past their last sensible day.
     *
     * @param boatId the boat
     * @param boat as painted on the stern
     * @param work the one that matters most
     * @param partId on which part, {@code installation/part}
     * @param lastSensible its last sensible day
     * @param safety a safety item
     * @param more how many others on her are past theirs
     * @param nextOnBoard the day the plan has somebody on board next; null if it has nobody
     */
    public record DueAtRisk(
            String boatId,
            String boat,
            String work,
            String partId,
            LocalDate lastSensible,
            boolean safety,
            int more,
            @Nullable LocalDate nextOnBoard) {}

    /**
     * A high water.
     *
     * @param at day and hour
     * @param heightM above chart datum, m
     * @param hoist the hoist that waits for it
     * @param draughtM deepest boat that gets into its dock at this height, m
     */
    public record Tide(java.time.LocalDateTime at, double heightM, String hoist, double draughtM) {}
}
