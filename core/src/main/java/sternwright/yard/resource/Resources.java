package sternwright.yard.resource;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All that a season is planned with.
 *
 * @param hoists hoists
 * @param standing places on hard standing, shortest class first
 * @param crew people
 * @param times the yard's own steps
 * @param prices what the season's wishes are worth
 */
public record Resources(
        List<Hoist> hoists, List<StandingClass> standing, List<CrewMember> crew, StayTimes times, SeasonPrices prices) {
    /** Copies the lists; sorts the places by length. */
    public Resources {
        hoists = List.copyOf(hoists);
        standing = standing.stream()
                .sorted(Comparator.comparingDouble(StandingClass::upToLengthM))
                .toList();
        crew = List.copyOf(crew);
    }

    /**
     * The shortest class of places that takes a boat.
     *
     * @param lengthM length of the boat, m
     * @return its position in {@link #standing}, empty if no place is long enough
     */
    public Optional<Integer> classFor(double lengthM) {
        for (int c = 0; c < standing.size(); c++) {
            if (lengthM <= standing.get(c).upToLengthM()) {
                return Optional.of(c);
            }
        }
        return Optional.empty();
    }

    /**
     * The same with other people.
     *
     * @param others all people
     * @return a new record
     */
    public Resources crew(List<CrewMember> others) {
        return new Resources(hoists, standing, others, times, prices);
    }
}
