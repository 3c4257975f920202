package sternwright.app.desk.due;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sternwright.app.desk.protect.ProtectBoat;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.due.BoatCase;
import sternwright.due.Due;
import sternwright.due.WearDate;
import sternwright.due.YardDueList;
import sternwright.history.BoatHistory;
import sternwright.measure.unit.YardUnits;
import sternwright.service.Rule;
import sternwright.service.RuleBook;
import sternwright.service.RuleInForce;
import sternwright.yard.Use;

/** Works out what is due on the boats of a yard. */
public final class DueWork {
    private final YardFiles files;
    private final RuleBook book;
    private final ProtectBoat protection;

    /**
     * Opens the rule book of a yard.
     *
     * @param files what the yard's folder says
     */
    public DueWork(YardFiles files) {
        this.files = files;
        this.protection = new ProtectBoat(files);
        this.book = RuleBook.of(files.generic(), files.programmes(), files.catalogue());
    }

    /**
     * What is due on every boat that was read.
     *
     * @param today the day asked for
     * @return every work on every part, the soonest first
     */
    public List<Due> all(LocalDate today) {
        return all(today, protection::wear);
    }

    /** Tells when a boat's anodes are half gone. */
    @FunctionalInterface
    public interface WearOf {
        /**
         * The days on which her anodes are half gone.
         *
         * @param boat the boat
         * @param history what is written down of it
         * @param today the day asked for
         * @return by part; empty where they cannot be computed
         */
        Map<PartRef, WearDate> of(Boat boat, BoatHistory history, LocalDate today);
    }

    /**
     * What is due on every boat that was read, where wear is known from elsewhere.
     *
     * @param today the day asked for
     * @param wear as {@link #wear} would say; asked from many threads
     * @return every work on every part, the soonest first
     */
    public List<Due> all(LocalDate today, WearOf wear) {
        YardDueList day = on(today);
        // A map's values are handed out a thousand at a time; a list is shared out evenly.
        return soonestFirst(
                files.boats().values().stream().sorted(Comparator.comparing(Boat::id)).toList().parallelStream()
                        .map(b -> {
                            BoatHistory history = files.history(b.id());
                            return day.of(asked(b, history, byNow(wear.of(b, history, today), today)));
                        })
                        .flatMap(Collection::stream)
                        .toList());
    }

    /** Works of one day stay as they came. Numbers are sorted in a tenth of the time in which days are. */
    private static List<Due> soonestFirst(List<Due> boatByBoat) {
        return IntStream.range(0, boatByBoat.size())
                .mapToLong(i -> boatByBoat.get(i).dueOn().toEpochDay() << Integer.SIZE | i)
                .sorted()
                .mapToObj(key -> boatByBoat.get((int) key))
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
        return of(boat, history, today, wear(boat, history, today));
    }

    /**
     * What is due on one boat if its history were as given, where wear is known from elsewhere.
     *
     * @param boat the boat
     * @param history what is written down of it
     * @param today the day asked for
     * @param wear as {@link #wear} would say
     * @return every work on every part, the soonest first
     */
    public List<Due> of(Boat boat, BoatHistory history, LocalDate today, Map<PartRef, WearDate> wear) {
        return on(today).of(asked(boat, history, byNow(wear, today)));
    }

    private YardDueList on(LocalDate today) {
        return YardDueList.on(files.yard().season(), book::forPart, today);
    }

    private BoatCase asked(Boat boat, BoatHistory history, Map<PartRef, WearDate> wear) {
        Berth berth = there(Optional.ofNullable(files.berths().get(boat.berthId())), boat.berthId());
        Use use = there(files.yard().use(boat.use()), boat.use());
        return new BoatCase(boat, berth, use, history, wear);
    }

    /** What was foretold for an earlier day of the month and not seen since is so by now; nobody saw it on that day. */
    private static Map<PartRef, WearDate> byNow(Map<PartRef, WearDate> wear, LocalDate today) {
        if (wear.values().stream().noneMatch(w -> w.early80().isBefore(today))) {
            return wear;
        }
        Map<PartRef, WearDate> byNow = new HashMap<>();
        wear.forEach((part, w) -> byNow.put(
                part,
                new WearDate(
                        later(w.date(), today),
                        later(w.early80(), today),
                        later(w.late80(), today),
                        w.newLastsMonths(),
                        w.how())));
        return byNow;
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    /**
     * Anodes fall due when they are half gone, as weighed or predicted; every other part by its rules alone.
     *
     * @param boat the boat
     * @param history what is written down of it
     * @param today the day asked for; on every day of a month the answer is the same
     * @return by part; empty where they cannot be computed
     */
    public Map<PartRef, WearDate> wear(Boat boat, BoatHistory history, LocalDate today) {
        return protection.wear(boat, history, today);
    }

    /**
     * The rules in force on a part.
     *
     * @param boat the boat
     * @param ref a part of hers
     * @return the rules, none if there is no such part
     */
    public List<Rule> rules(Boat boat, PartRef ref) {
        return boat
                .installation(ref.installationId())
                .flatMap(i -> i.part(ref.partId()).map(p -> book.forPart(boat, i, p)))
                .orElse(List.of())
                .stream()
                .map(RuleInForce::rule)
                .toList();
    }

    /** The units the yard works in. */
    public YardUnits units() {
        return files.yard().units();
    }

    /** Ids of the rules in force on a part. */
    public List<String> rulesOn(Boat boat, PartRef ref) {
        return rules(boat, ref).stream().map(Rule::id).toList();
    }

    /** Ids of the rules in force on any part of a boat. */
    public List<String> rulesOn(Boat boat) {
        return parts(boat).flatMap(p -> rulesOn(boat, p).stream()).distinct().toList();
    }

    /** Whether there is a rule of this id at all. */
    public boolean knows(String ruleId) {
        return book.rule(ruleId).isPresent();
    }

    /** The parts of a boat on which a rule is in force. */
    public List<PartRef> partsOf(Boat boat, String ruleId) {
        return parts(boat).filter(p -> rulesOn(boat, p).contains(ruleId)).toList();
    }

    private static Stream<PartRef> parts(Boat boat) {
        return boat.installations().stream().flatMap(i -> i.parts().stream().map(p -> new PartRef(i.id(), p.id())));
    }

    /**
     * The happenings that some rule listens to: groundings and the like, and conditions of parts.
     *
     * @return their names in order
     */
    public Set<String> happenings() {
        Set<String> names = new TreeSet<>();
        for (Rule rule : book.rules()) {
            rule.interval().after().stream()
                    .filter(a -> a.startsWith("event:"))
                    .forEach(a -> names.add(a.substring("event:".length())));
            rule.modifiers().stream()
                    .filter(m -> m.when().startsWith("condition:"))
                    .forEach(m -> names.add(m.when().substring("condition:".length())));
        }
        return names;
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
