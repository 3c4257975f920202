package sternwright.app.web.visits;

import java.util.List;
import sternwright.app.web.page.Field;

/**
 * What the page of a plan changed by hand shows.
 *
 * @param boatId the boat
 * @param boat her name
 * @param lead what the plan begins from
 * @param months how far it is planned
 * @param agreed whether it begins from what was agreed
 * @param looked mark of the plan it begins from
 * @param changes the changes as they stand in the address
 * @param back the address without the last change, empty if there is none
 * @param costs what the change costs, in a sentence
 * @param kinds cost by kind beside the plan before
 * @param broken rules it breaks
 * @param said what was done besides
 * @param wrong why a change cannot be made, may be empty
 * @param works the works that can be moved
 * @param places the visits and months they can be moved to
 * @param visits the visits that can be moved
 * @param visitPlaces where they can be moved to
 * @param plan the changed plan
 * @param may whether it can be accepted
 * @param fixed whether this is exactly what is agreed, so that papers can be made from it
 */
public record HandView(
        String boatId,
        String boat,
        String lead,
        String months,
        boolean agreed,
        String looked,
        List<String> changes,
        String back,
        String costs,
        List<Kind> kinds,
        List<Broken> broken,
        List<String> said,
        String wrong,
        Field works,
        Field places,
        Field visits,
        Field visitPlaces,
        List<PlanView.Visit> plan,
        boolean may,
        boolean fixed) {
    /** Copies the lists. */
    public HandView {
        changes = List.copyOf(changes);
        kinds = List.copyOf(kinds);
        broken = List.copyOf(broken);
        said = List.copyOf(said);
        plan = List.copyOf(plan);
    }

    /**
     * One kind of cost.
     *
     * @param what the kind
     * @param before in the plan it begins from
     * @param after in the changed plan
     * @param more the difference
     */
    public record Kind(String what, String before, String after, String more) {}

    /**
     * A rule that is broken.
     *
     * @param words what is wrong
     * @param advice what to do
     * @param refused whether the plan cannot be taken with it
     */
    public record Broken(String words, String advice, boolean refused) {}
}
