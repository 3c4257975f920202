package sternwright.yard.resource;

import java.time.LocalTime;
import java.util.Set;

/**
 * How long the yard's own steps take and how far apart they may lie.
 *
 * @param begins when the working day begins
 * @param hoursADay hours of a working day, above 0
 * @param washMinutes wash and inspect after the lift, minutes
 * @param washSkills what that needs
 * @param washWithinDays working days after the lift by which the hull is washed: growth dries on
 * @param beforeLaunchDays most working days between recommission and launch
 * @param shortStayDays most working days ashore in a visit that is not a winter
 * @param launchEarlyDays most working days before the owner's date on which the boat is launched
 * @param settlingDays working days afloat before coupling alignment, at least 1
 * @param trialWithinDays working days after the launch by which alignment and sea trial are done
 */
public record StayTimes(
        LocalTime begins,
        double hoursADay,
        double washMinutes,
        Set<String> washSkills,
        int washWithinDays,
        int beforeLaunchDays,
        int shortStayDays,
        int launchEarlyDays,
        int settlingDays,
        int trialWithinDays) {
    /** Copies the set. */
    public StayTimes {
        washSkills = Set.copyOf(washSkills);
    }

    /** Common practice; settling of a day or more likewise. No source. */
    public static final StayTimes USUAL = new StayTimes(LocalTime.of(8, 0), 8, 90, Set.of("yard"), 1, 15, 10, 10, 1, 5);
}
