package sternwright.season.dated.make;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import sternwright.season.Technician;
import sternwright.season.dated.WorkingTime;
import sternwright.yard.resource.CrewMember;

/**
 * Kinds of work by the people who can do it: works that need several skills together are a kind of their own, and works that the
 * same people can do are one kind.
 */
final class SkillKinds {
    private final List<CrewMember> crew;
    private final Map<BitSet, Integer> kinds = new HashMap<>();
    private final List<BitSet> able = new ArrayList<>();
    private final List<String> names = new ArrayList<>();

    SkillKinds(List<CrewMember> crew) {
        this.crew = List.copyOf(crew);
    }

    /** Whether anyone has all these skills. */
    boolean anyone(Set<String> skills) {
        return crew.stream().anyMatch(c -> c.skills().containsAll(skills));
    }

    /** The kind of a work that needs these skills together. */
    int kind(Set<String> skills) {
        BitSet people = new BitSet();
        IntStream.range(0, crew.size())
                .filter(c -> crew.get(c).skills().containsAll(skills))
                .forEach(people::set);
        return kinds.computeIfAbsent(people, p -> {
            able.add(p);
            names.add(words(skills));
            return able.size() - 1;
        });
    }

    static String words(Set<String> skills) {
        return skills.isEmpty() ? "anyone" : String.join(" and ", new TreeSet<>(skills));
    }

    List<String> names() {
        return List.copyOf(names);
    }

    /** The people with the kinds of work they can do. */
    List<Technician> people(WorkingTime time) {
        List<Technician> people = new ArrayList<>();
        for (int c = 0; c < crew.size(); c++) {
            int person = c;
            people.add(new Technician(
                    crew.get(c).name(),
                    IntStream.range(0, able.size())
                            .filter(k -> able.get(k).get(person))
                            .boxed()
                            .toList(),
                    IntStream.range(0, time.days().size())
                            .filter(d -> !crew.get(person).there(time.days().get(d)))
                            .boxed()
                            .toList()));
        }
        return people;
    }
}
