package sternwright.service;

import java.util.Set;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;

/**
 * Which parts a rule is for. A part is meant if its kind is named or carries one of the tags, and the installation fits
 * every set that is not empty.
 *
 * @param kinds ids of kinds of part
 * @param tags tags of kinds of part
 * @param arrangements arrangements; empty for all
 * @param coolings cooling systems; empty for all
 * @param conditions conditions the part must carry; empty for none
 */
public record AppliesTo(
        Set<String> kinds,
        Set<String> tags,
        Set<Arrangement> arrangements,
        Set<Cooling> coolings,
        Set<String> conditions) {
    /** Copies the sets. */
    public AppliesTo {
        kinds = Set.copyOf(kinds);
        tags = Set.copyOf(tags);
        arrangements = Set.copyOf(arrangements);
        coolings = Set.copyOf(coolings);
        conditions = Set.copyOf(conditions);
    }
}
