package sternwright.protection.circuit;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A protection circuit: bodies, links, sources, shared water paths.
 *
 * @param bodies the metal
 * @param links what joins it
 * @param sources forced currents
 * @param mutualResistances shared water paths; a pair not listed shares none
 */
public record Circuit(
        List<Body> bodies, List<Link> links, List<CurrentSource> sources, List<MutualResistance> mutualResistances) {
    public Circuit {
        bodies = List.copyOf(bodies);
        links = List.copyOf(links);
        sources = List.copyOf(sources);
        mutualResistances = List.copyOf(mutualResistances);
    }

    /** A circuit without forced currents and shared water paths. */
    public Circuit(List<Body> bodies, List<Link> links) {
        this(bodies, links, List.of(), List.of());
    }

    /** The body of a name; fails when there is none. */
    public Body body(String id) {
        return bodies.stream()
                .filter(b -> b.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no body \"" + id + "\" in this circuit"));
    }

    /** The link of a name; fails when there is none. */
    public Link link(String id) {
        return links.stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no link \"" + id + "\" in this circuit"));
    }

    /** The same circuit with one body changed. */
    public Circuit withBody(String id, UnaryOperator<Body> change) {
        body(id);
        return withBodies(b -> b.id().equals(id) ? change.apply(b) : b);
    }

    /** The same circuit with every body passed through a change. */
    public Circuit withBodies(UnaryOperator<Body> change) {
        return new Circuit(bodies.stream().map(change).toList(), links, sources, mutualResistances);
    }

    /** The same circuit with the link of the same name replaced, or added where there is none. */
    public Circuit withLink(Link link) {
        boolean known = links.stream().anyMatch(l -> l.id().equals(link.id()));
        if (known) {
            List<Link> changed =
                    links.stream().map(l -> l.id().equals(link.id()) ? link : l).toList();
            return new Circuit(bodies, changed, sources, mutualResistances);
        }
        return new Circuit(bodies, plus(links, link), sources, mutualResistances);
    }

    /** The same circuit with one more body. */
    public Circuit plusBody(Body body) {
        return new Circuit(plus(bodies, body), links, sources, mutualResistances);
    }

    /** The same circuit with one more forced current. */
    public Circuit plusSource(CurrentSource source) {
        return new Circuit(bodies, links, plus(sources, source), mutualResistances);
    }

    private static <T> List<T> plus(List<T> list, T more) {
        return Stream.concat(list.stream(), Stream.of(more)).toList();
    }
}
