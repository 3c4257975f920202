package sternwright.yard.resource;

import org.jspecify.annotations.Nullable;
import sternwright.boat.Hull;

/**
 * A hoist, crane or slip that takes boats out of the water and puts them back.
 *
 * @param id short name
 * @param name as people say it
 * @param maxMassKg heaviest boat, kg
 * @param maxBeamM widest boat, m
 * @param liftsADay lifts and launches in one working day, at least 1
 * @param tidal the dock where it needs the tide, null where there is always water enough
 */
public record Hoist(
        String id,
        String name,
        double maxMassKg,
        double maxBeamM,
        int liftsADay,
        @Nullable TidalDock tidal) {
    /**
     * Whether it takes a hull by mass and beam; the tide is another matter.
     *
     * @param hull the hull
     * @return true if neither limit is passed
     */
    public boolean takes(Hull hull) {
        return hull.massKg() <= maxMassKg && hull.beamM() <= maxBeamM;
    }
}
