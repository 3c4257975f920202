package sternwright.app.desk.find;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sternwright.app.desk.derived.OfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.due.Due;

/** The boats of an open yard ready to be found, and the works that can be asked for, kept while the yard stays as it is. */
public final class BoatsOfYard {
    private final OfYard<BoatIndex> index;
    private final OfYard<List<Work>> works;

    /**
     * A work that some boat has.
     *
     * @param rule id of its rule
     * @param words what is to be done
     */
    public record Work(String rule, String words) {}

    /**
     * Ready to be asked; nothing is worked out yet.
     *
     * @param yard the yard
     */
    public BoatsOfYard(OpenYard yard) {
        index = new OfYard<>(yard, y -> BoatIndex.of(y.files(), y.dues()));
        works = new OfYard<>(yard, y -> works(y.dues()));
    }

    /**
     * The boats.
     *
     * @return an index of them
     */
    public BoatIndex index() {
        return index.get();
    }

    /**
     * The works of the due list.
     *
     * @return each rule once, in order of its words
     */
    public List<Work> works() {
        return works.get();
    }

    private static List<Work> works(List<Due> dues) {
        Map<String, String> works = new HashMap<>();
        dues.forEach(d -> works.putIfAbsent(d.rule().id(), d.rule().work()));
        return works.entrySet().stream()
                .map(w -> new Work(w.getKey(), w.getValue()))
                .sorted(Comparator.comparing(Work::words).thenComparing(Work::rule))
                .toList();
    }
}
