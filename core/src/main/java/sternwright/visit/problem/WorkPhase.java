package sternwright.visit.problem;

import java.time.Month;
import java.util.Set;

/**
 * One step of a work's cycle: where and when in the year it may be done, and what it costs. A plain work has one phase; a
 * work whose every n-th time differs has n.
 *
 * @param places where it may be done
 * @param season calendar months in which it may be done
 * @param costCents labour and supplies without set-up, in the smallest unit of the currency
 * @param afloatExtraCents what it costs more if done afloat (a diver, say)
 */
public record WorkPhase(Set<Place> places, Set<Month> season, long costCents, long afloatExtraCents) {
    public WorkPhase {
        places = Set.copyOf(places);
        season = Set.copyOf(season);
        if (places.isEmpty() || season.isEmpty()) {
            throw new IllegalArgumentException("a work needs at least one place and one month of the year");
        }
        if (costCents < 0 || afloatExtraCents < 0) {
            throw new IllegalArgumentException("cost " + costCents + ": expected 0 or more");
        }
    }

    /** A phase that costs the same in either place. */
    public WorkPhase(Set<Place> places, Set<Month> season, long costCents) {
        this(places, season, costCents, 0);
    }
}
