package sternwright.visit.problem;

import java.util.List;

/**
 * There is no plan that meets every demand.
 *
 * @param clash the demands that cannot hold together, in words; leave any one of them out and the rest can be met
 *     (unless {@code minimal} is false)
 * @param minimal whether the list was proven to be as short as that
 */
public record VisitRefusal(List<String> clash, boolean minimal) implements VisitAnswer {
    public VisitRefusal {
        clash = List.copyOf(clash);
    }
}
