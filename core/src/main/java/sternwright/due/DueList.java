package sternwright.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.history.BoatHistory;
import sternwright.history.ServiceEntry;
import sternwright.service.EveryNth;
import sternwright.service.Occasion;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;
import sternwright.yard.SeasonDates;
import sternwright.yard.SeasonDates.Window;
import sternwright.yard.Use;

/**
 * The due list of one boat: every rule in force on every part.
 *
 * <p>Rules that stand alone come first; those that hang on another (every n-th, opportunity) are answered from the first answers.
 */
public final class DueList {
    /** Days in which a work asked for by a finding or another work should be done. Common practice, no source. */
    static final int DAYS_AFTER_CALL = 30;

    private final BoatFacts facts;
    private final RulesOf rules;
    private final Map<PartRef, WearDate> wear;
    private final IntervalClauses intervals;
    private final OccasionClauses occasions;
    private final LinkedClauses linked;
    private final Windows windows;

    /** Gives the rules in force for a part. */
    @FunctionalInterface
    public interface RulesOf {
        /**
         * The rules in force.
         *
         * @param boat the boat
         * @param installation the installation
         * @param part the part
         * @return rules with their sources
         */
        List<RuleInForce> forPart(Boat boat, Installation installation, Part part);
    }

    private DueList(BoatFacts facts, RulesOf rules, Map<PartRef, WearDate> wear) {
        this.facts = facts;
        this.rules = rules;
        this.wear = wear;
        this.intervals = new IntervalClauses(facts);
        this.occasions = new OccasionClauses(facts);
        this.linked = new LinkedClauses(facts, rulesByTag(facts.boat, rules));
        this.windows = new Windows(facts.season);
    }

    /**
     * What is due on a boat.
     *
     * @param boat the boat
     * @param berth its berth
     * @param use its kind of use
     * @param season lay-up and recommission of the yard
     * @param rules rules in force
     * @param history what is written down; entries after today are not looked at
     * @param wear dates of renewal by measured or predicted wear, by part; may be empty
     * @param today the day asked for
     * @return one entry for every part and rule that has a date, earliest first, safety items first on equal days
     */
    public static List<Due> of(
            Boat boat,
            Berth berth,
            Use use,
            SeasonDates season,
            RulesOf rules,
            BoatHistory history,
            Map<PartRef, WearDate> wear,
            LocalDate today) {
        return new DueList(new BoatFacts(boat, berth, use, season, history, today), rules, wear).all();
    }

    private static Map<String, Set<String>> rulesByTag(Boat boat, RulesOf rules) {
        Map<String, Set<String>> byTag = new HashMap<>();
        for (Installation installation : boat.installations()) {
            for (Part part : installation.parts()) {
                for (RuleInForce r : rules.forPart(boat, installation, part)) {
                    for (String tag : r.rule().tags()) {
                        byTag.computeIfAbsent(tag, k -> new HashSet<>())
                                .add(r.rule().id());
                    }
                }
            }
        }
        return byTag;
    }

    private List<Due> all() {
        List<Due> dues = new ArrayList<>();
        for (Installation installation : facts.boat.installations()) {
            List<Due> here = new ArrayList<>();
            List<Asked> waiting = new ArrayList<>();
            for (Part part : installation.parts()) {
                addPart(installation, part, here, waiting);
            }
            for (Asked asked : waiting) {
                answer(asked, here).ifPresent(here::add);
            }
            dues.addAll(here);
        }
        dues.sort(Comparator.comparing(Due::dueOn).thenComparing(d -> !d.rule().safety()));
        return dues;
    }

    private void addPart(Installation installation, Part part, List<Due> here, List<Asked> waiting) {
        PartRef ref = new PartRef(installation.id(), part.id());
        List<RuleInForce> inForce = rules.forPart(facts.boat, installation, part);
        Set<String> renewing = new HashSet<>();
        for (RuleInForce r : inForce) {
            if (r.rule().renews()) {
                renewing.add(r.rule().id());
            }
        }
        LocalDate born = facts.bornOn(ref, part, renewing);
        for (RuleInForce r : inForce) {
            Set<String> counting = counting(r.rule(), inForce, renewing);
            Asked asked = new Asked(r, part, ref, counting, born, facts.lastDone(ref, counting));
            boolean waits = r.rule().interval().everyNth() != null
                    || r.rule().interval().unlessLastsTo() != null;
            if (waits) {
                waiting.add(asked);
            } else {
                answer(asked, here).ifPresent(here::add);
            }
        }
    }

    /** The rule itself, those that are done in its place every n-th time, and the renewal of the part. */
    private static Set<String> counting(Rule rule, List<RuleInForce> inForce, Set<String> renewing) {
        Set<String> ids = null;
        for (RuleInForce other : inForce) {
            EveryNth nth = other.rule().interval().everyNth();
            if (nth != null && nth.ruleId().equals(rule.id())) {
                ids = ids == null ? new HashSet<>() : ids;
                ids.add(other.rule().id());
            }
        }
        if (ids == null && (rule.renews() || renewing.isEmpty())) {
            return Set.of(rule.id());
        }
        ids = ids == null ? new HashSet<>() : ids;
        ids.add(rule.id());
        if (!rule.renews()) {
            ids.addAll(renewing);
        }
        return ids;
    }

    private Optional<Due> answer(Asked asked, List<Due> sameInstallation) {
        Rule rule = asked.rule();
        Occasion occasion = rule.interval().occasion();
        Optional<Window> occasionWindow =
                occasion == null ? Optional.empty() : occasions.window(occasion, asked.lastDate());
        List<Clause> clauses = new ArrayList<>(3);
        WearDate worn = rule.renews() ? wear.get(asked.ref()) : null;
        if (worn == null) {
            intervals.add(clauses, asked, EffectiveInterval.of(rule, asked, facts));
        } else {
            clauses.add(new Clause(ClauseKind.WASTAGE, worn.date(), worn.early80(), worn.late80(), 0, worn.how()));
        }
        occasionWindow.ifPresent(w ->
                clauses.add(Clause.certain(ClauseKind.OCCASION, w.to(), 0, occasion == null ? "" : occasion.name())));
        linked.addAfter(clauses, asked);
        linked.addFindings(clauses, asked);
        if (rule.interval().everyNth() != null) {
            linked.addNth(clauses, asked, onPart(sameInstallation, asked.ref()));
        }
        if (rule.interval().unlessLastsTo() != null) {
            linked.addOpportunity(clauses, asked, sameInstallation);
        }
        if (clauses.isEmpty()) {
            return Optional.empty();
        }
        clauses.sort(Comparator.comparing(Clause::date).thenComparing(c -> c.kind() != ClauseKind.UNKNOWN));
        return Optional.of(due(asked, clauses, occasionWindow.orElse(null)));
    }

    private static Map<String, Due> onPart(List<Due> dues, PartRef ref) {
        Map<String, Due> found = new HashMap<>();
        for (Due d : dues) {
            if (d.part().equals(ref)) {
                found.put(d.rule().id(), d);
            }
        }
        return found;
    }

    private Due due(Asked asked, List<Clause> clauses, @Nullable Window occasion) {
        Clause first = clauses.get(0);
        LocalDate base = asked.base();
        Window window = window(asked.rule(), first, base, occasion);
        boolean refused = facts.refused(asked.ref(), asked.rule(), asked.lastDate());
        return new Due(
                facts.boat.id(),
                asked.ref(),
                asked.inForce(),
                state(asked.rule(), clauses, window, refused),
                clauses,
                first.date(),
                window.from(),
                window.to(),
                asked.lastDate(),
                IntervalClauses.hoursAtLast(asked),
                lifeUsed(base, first),
                facts.timesDone(asked.ref(), Set.of(asked.rule().id()), lastNth(asked)));
    }

    /** When an n-th service last took the place of this work, null if never. */
    private @Nullable LocalDate lastNth(Asked asked) {
        if (asked.counting().size() == 1) {
            return null;
        }
        Set<String> nths = new HashSet<>(asked.counting());
        nths.remove(asked.rule().id());
        ServiceEntry last = nths.isEmpty() ? null : facts.lastDone(asked.ref(), nths);
        return last == null ? null : last.date();
    }

    private Window window(Rule rule, Clause first, @Nullable LocalDate base, @Nullable Window occasion) {
        return switch (first.kind()) {
            case OCCASION -> occasion == null ? new Window(first.date(), first.date()) : occasion;
            case UNKNOWN -> new Window(facts.today, nextHalfEnd());
            case AFTER, CONDITION ->
                new Window(
                        first.date(),
                        rule.safety() ? first.date() : first.date().plusDays(DAYS_AFTER_CALL));
            // Wear known from today on gives a stretch even where nobody knows when the part was fitted.
            case WASTAGE -> windows.around(rule, first.date(), base == null ? facts.today : base);
            default -> windows.around(rule, first.date(), base);
        };
    }

    private LocalDate nextHalfEnd() {
        LocalDate layUp = facts.season.layUpEndingFrom(facts.today).to();
        LocalDate recommission =
                facts.season.recommissionEndingFrom(facts.today).to();
        return layUp.isBefore(recommission) ? layUp : recommission;
    }

    private DueState state(Rule rule, List<Clause> clauses, Window window, boolean refused) {
        if (refused) {
            return DueState.REFUSED;
        }
        if (rule.interval().occasion() == Occasion.EVERY_VISIT && clauses.size() == 1) {
            return DueState.EVERY_VISIT;
        }
        if (facts.today.isAfter(window.to())
                && facts.today.isAfter(clauses.get(0).date())) {
            return DueState.OVERDUE;
        }
        if (clauses.stream().anyMatch(c -> c.kind() == ClauseKind.UNKNOWN)) {
            return DueState.UNKNOWN;
        }
        return facts.today.isBefore(window.from()) ? DueState.COMING : DueState.DUE;
    }

    private double lifeUsed(@Nullable LocalDate base, Clause first) {
        if (base == null || !base.isBefore(first.date())) {
            return 1;
        }
        return (double) ChronoUnit.DAYS.between(base, facts.today) / ChronoUnit.DAYS.between(base, first.date());
    }
}
