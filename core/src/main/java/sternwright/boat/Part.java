package sternwright.boat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One part of an installation. Null means not known, which is a legal answer.
 *
 * @param id short name, unique in its installation
 * @param kind id of its kind in the catalogue
 * @param parentId the part it sits on, null for the installation itself
 * @param fittedOn date of fitting
 * @param hoursAtFitting engine hours at fitting, counted over meter changes
 * @param capacityL what it holds, litres
 * @param access 1 good, 1.5 cramped, 2.5 needs dismantling: multiplies minutes
 * @param metal id of its metal or alloy, null if it does not conduct
 * @param wettedAreaM2 area in the water, m²
 * @param massKg mass when new, kg (anodes)
 * @param coatedShare share of the wetted area under paint, 0 to 1
 * @param conditions facts that change lives, such as {@code contaminated}
 * @param makerFigures figures from the maker's manual by name
 */
public record Part(
        String id,
        String kind,
        @Nullable String parentId,
        @Nullable LocalDate fittedOn,
        @Nullable Double hoursAtFitting,
        @Nullable Double capacityL,
        double access,
        @Nullable String metal,
        @Nullable Double wettedAreaM2,
        @Nullable Double massKg,
        @Nullable Double coatedShare,
        Set<String> conditions,
        Map<String, Double> makerFigures) {
    /** Copies the collections. */
    public Part {
        conditions = Set.copyOf(conditions);
        makerFigures = Map.copyOf(makerFigures);
    }

    /**
     * A part of which nothing is known but that it is there.
     *
     * @param id short name
     * @param kind id of its kind
     * @return the part with fair access
     */
    public static Part of(String id, String kind) {
        return new Part(id, kind, null, null, null, null, 1, null, null, null, null, Set.of(), Map.of());
    }

    /**
     * The same part with its date of fitting.
     *
     * @param date date of fitting
     * @param hours engine hours then, null if not known
     * @return a new part
     */
    public Part fitted(LocalDate date, @Nullable Double hours) {
        return new Part(
                id,
                kind,
                parentId,
                date,
                hours,
                capacityL,
                access,
                metal,
                wettedAreaM2,
                massKg,
                coatedShare,
                conditions,
                makerFigures);
    }
}
