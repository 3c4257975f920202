package sternwright.app.desk;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueList;
import sternwright.history.BoatHistory;
import sternwright.service.RuleBook;
import sternwright.yard.Use;

/** Works out what is due on the boats of a yard. */
public final class DueWork {
    private final YardFiles files;
    private final RuleBook book;

    /**
     * Opens the rule book of a yard.
     *
     * @param files what the yard's folder says
     */
    public DueWork(YardFiles files) {
        this.files = files;
        this.book = RuleBook.of(files.generic(), files.programmes(), files.catalogue());
    }

    /**
     * What is due on every boat that was read.
     *
     * @param today the day asked for
     * @return every work on every part, the soonest first
     */
    public List<Due> all(LocalDate today) {
        return files.boats().values().parallelStream()
                .map(b -> of(b, history(b), today))
                .flatMap(Collection::stream)
                .sorted(Comparator.comparing(Due::dueOn).thenComparing(Due::boatId))
                .toList();
    }

    /**
     * What is due on one boat if its history were as given.
     *
     * @param boat the boat
     * @param history what is written down of it
     * @param today the day asked for
     * @return every work on every part, the soonest first
     */
    public List<Due> of(Boat boat, BoatHistory history, LocalDate today) {
        Berth berth = there(Optional.ofNullable(files.berths().get(boat.berthId())), boat.berthId());
        Use use = there(files.yard().use(boat.use()), boat.use());
        return DueList.of(boat, berth, use, files.yard().season(), book::forPart, history, Map.of(), today);
    }

    /**
     * What is written down of a boat.
     *
     * @param boat the boat
     * @return its history, empty if there is none
     */
    public BoatHistory history(Boat boat) {
        return Optional.ofNullable(files.histories().get(boat.id())).orElseGet(() -> BoatHistory.empty(boat.id()));
    }

    /**
     * Makes sure a rule is known.
     *
     * @param ruleId id of a rule; empty asks for nothing
     * @throws BadInput if no programme has it, with the nearest name
     */
    public void requireRule(String ruleId) {
        if (ruleId.isEmpty() || book.rule(ruleId).isPresent()) {
            return;
        }
        List<String> known = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(files.generic()), files.programmes().stream())
                .flatMap(p -> p.rules().stream())
                .map(r -> r.id())
                .toList();
        throw new BadInput(List.of(new Problem(
                "--rule", 0, "", "no programme has the rule " + ruleId, "", KnownNames.advice(ruleId, known))));
    }

    private static <T> T there(Optional<T> found, String id) {
        return found.orElseThrow(() -> new IllegalStateException(id + " was checked and is not there"));
    }
}
