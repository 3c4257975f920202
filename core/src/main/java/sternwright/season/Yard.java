package sternwright.season;

import java.util.List;

/**
 * What the yard has: the lean form of its hoists, places and people.
 *
 * @param axis working time
 * @param skills names of the skills
 * @param technicians people; several may have the same skills
 * @param extraHandsByWeek most extra hands in each week, one entry per week of the axis
 * @param evenHands hands at work at once that the yard counts as an even week
 * @param hoists hoists
 * @param liftClasses which hoists take which boats
 * @param placeClasses hard standing, shortest class first
 * @param pools other things that run out
 * @param daySets days that limit starts
 */
public record Yard(
        Axis axis,
        List<String> skills,
        List<Technician> technicians,
        List<Integer> extraHandsByWeek,
        int evenHands,
        List<Hoist> hoists,
        List<LiftClass> liftClasses,
        List<PlaceClass> placeClasses,
        List<Pool> pools,
        List<Days> daySets) {
    /** Copies the lists and wants one overtime limit per week. */
    public Yard {
        skills = List.copyOf(skills);
        technicians = List.copyOf(technicians);
        extraHandsByWeek = List.copyOf(extraHandsByWeek);
        hoists = List.copyOf(hoists);
        liftClasses = List.copyOf(liftClasses);
        placeClasses = List.copyOf(placeClasses);
        pools = List.copyOf(pools);
        daySets = List.copyOf(daySets);
        if (extraHandsByWeek.size() != axis.weeks()) {
            throw new IllegalArgumentException("extra hands are given for " + extraHandsByWeek.size()
                    + " weeks, the axis has " + axis.weeks() + "; give one figure per week");
        }
    }

    /** The same yard with other people. */
    public Yard technicians(List<Technician> people) {
        return new Yard(
                axis, skills, people, extraHandsByWeek, evenHands, hoists, liftClasses, placeClasses, pools, daySets);
    }

    /** The same yard with other hoists. */
    public Yard hoists(List<Hoist> others) {
        return new Yard(
                axis,
                skills,
                technicians,
                extraHandsByWeek,
                evenHands,
                others,
                liftClasses,
                placeClasses,
                pools,
                daySets);
    }

    /** The same yard with other places. */
    public Yard places(List<PlaceClass> others) {
        return new Yard(
                axis, skills, technicians, extraHandsByWeek, evenHands, hoists, liftClasses, others, pools, daySets);
    }

    /** The same yard with another limit of overtime. */
    public Yard extraHands(List<Integer> byWeek) {
        return new Yard(
                axis, skills, technicians, byWeek, evenHands, hoists, liftClasses, placeClasses, pools, daySets);
    }
}
