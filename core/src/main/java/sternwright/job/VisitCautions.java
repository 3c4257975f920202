package sternwright.job;

import java.util.ArrayList;
import java.util.List;
import sternwright.boat.Arrangement;
import sternwright.boat.ShorePower;
import sternwright.finding.Caution;
import sternwright.service.Place;
import sternwright.visit.planned.PlannedVisit;

/**
 * Cautions that belong to a visit as a whole, whatever the works. A caution of the same id in the programme leads over the
 * text given here. Standing: common practice, no source.
 */
final class VisitCautions {
    static final Caution WHO_DECIDES = new Caution(
            "who-decides",
            "The makers' manuals, the local codes and the licensed person on site decide; this card advises. If what you find is"
                    + " not what the card says, stop and ask.");
    static final Caution LIFTING = new Caution(
            "lifting",
            "Hoist, slings and rigging are for the yard's licensed operators. Nobody under the load. Check the boat's mass and the"
                    + " sling marks before the lift, and the shoring before anyone goes on board.");
    static final Caution AFLOAT = new Caution(
            "afloat",
            "The boat is afloat: whatever opens the raw-water side or the hull below water can sink her. Note every seacock before"
                    + " work, keep bungs at hand, and do not leave the boat until each opening is proved tight.");
    static final Caution SHORE_POWER = new Caution(
            "shore-power",
            "People in the water near boats on shore power have been killed. Nobody in the water while shore power is on. Unplug"
                    + " before work under water. Measurements on AC earthing are for a qualified electrician.");
    static final Caution NO_SEACOCK = new Caution(
            "no-seacock",
            "A sterndrive takes its raw water up through the leg: there is no seacock, and the raw-water pump is the only stop. With"
                    + " the pump or a hose open, clamp or plug the line from the leg first.");

    private VisitCautions() {}

    /** The cautions that this visit to this boat calls for. */
    static List<Caution> of(PlannedVisit visit, CardFacts facts) {
        List<Caution> found = new ArrayList<>();
        found.add(WHO_DECIDES);
        if (visit.lifts()) {
            found.add(LIFTING);
        }
        if (visit.place() == Place.AFLOAT) {
            found.add(AFLOAT);
            if (facts.boat().installations().stream().anyMatch(i -> i.arrangement() == Arrangement.STERNDRIVE)) {
                found.add(NO_SEACOCK);
            }
            if (facts.berth().shorePower() != ShorePower.NONE) {
                found.add(SHORE_POWER);
            }
        }
        return List.copyOf(found);
    }
}
