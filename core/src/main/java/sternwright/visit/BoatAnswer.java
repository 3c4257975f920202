package sternwright.visit;

import java.util.List;

/** What is said about the visits of a boat: a plan, or which demands clash. */
public sealed interface BoatAnswer permits BoatPlan, BoatAnswer.NoPlan {
    /**
     * No plan keeps every demand.
     *
     * @param boatId the boat
     * @param clash the demands that cannot hold together, in words; empty if the search ended before it knew
     * @param minimal whether leaving any one of them out is known to help
     */
    record NoPlan(String boatId, List<String> clash, boolean minimal) implements BoatAnswer {
        /** Copies the list. */
        public NoPlan {
            clash = List.copyOf(clash);
        }
    }
}
