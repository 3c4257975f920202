package sternwright.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.history.BoatHistory;
import sternwright.history.ServiceEntry;
import sternwright.service.Interval;
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
    private static final Comparator<Due> SOONEST_FIRST = (a, b) -> {
        int byDate = a.dueOn().compareTo(b.dueOn());
        return byDate != 0
                ? byDate
                : Boolean.compare(b.rule().safety(), a.rule().safety());
    };
    private static final Comparator<Clause> FIRST_CLAUSE_FIRST = (a, b) -> {
        int byDate = a.date().compareTo(b.date());
        return byDate != 0 ? byDate : Boolean.compare(b.kind() == ClauseKind.UNKNOWN, a.kind() == ClauseKind.UNKNOWN);
    };

    /** Days in which a work asked for by a finding or another work should be done. Common practice, no source. */
    static final int DAYS_AFTER_CALL = 30;

    private final BoatFacts facts;
    private final List<RulePlan> plans = new ArrayList<>();
    private final Map<PartRef, WearDate> wear;
    private final IntervalClauses intervals;
    private final OccasionClauses occasions;
    private final LinkedClauses linked;
    private final Windows windows;
    private final List<Clause> clauses = new ArrayList<>();

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

    private DueList(BoatFacts facts, RulePlans rules, Map<PartRef, WearDate> wear) {
        this.facts = facts;
        this.wear = wear;
        for (Installation installation : facts.boat.installations()) {
            for (Part part : installation.parts()) {
                plans.add(rules.of(facts.boat, installation, part));
            }
        }
        this.intervals = new IntervalClauses(facts);
        this.occasions = new OccasionClauses(facts);
        this.linked = new LinkedClauses(facts, this::rulesWithTag);
        this.windows = new Windows(facts.day.halves);
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
        return YardDueList.on(season, rules, today).of(new BoatCase(boat, berth, use, history, wear));
    }

    static List<Due> of(BoatCase asked, AskedDay day, RulePlans rules) {
        BoatFacts facts = new BoatFacts(asked.boat(), asked.berth(), asked.use(), asked.history(), day);
        return new DueList(facts, rules, asked.wear()).all();
    }

    private Set<String> rulesWithTag(String tag) {
        Set<String> ids = new HashSet<>();
        plans.forEach(p -> ids.addAll(p.tagged(tag)));
        return ids;
    }

    private List<Due> all() {
        List<Due> dues = new ArrayList<>(2 * facts.parts.size());
        List<Asked> waiting = new ArrayList<>();
        int place = 0;
        for (int engine = 0; engine < facts.boat.installations().size(); engine++) {
            List<Part> parts = facts.boat.installations().get(engine).parts();
            int begin = dues.size();
            waiting.clear();
            for (int i = 0; i < parts.size(); i++) {
                addPart(parts.get(i), place++, engine, dues, waiting);
            }
            for (int i = 0; i < waiting.size(); i++) {
                add(waiting.get(i), dues.subList(begin, dues.size()), dues);
            }
        }
        dues.sort(SOONEST_FIRST);
        return dues;
    }

    private void addPart(Part part, int place, int engine, List<Due> dues, List<Asked> waiting) {
        RulePlan plan = plans.get(place);
        PartRef ref = facts.parts.get(place);
        LocalDate born = born(part, place, plan.renewing());
        for (RulePlan.Ready ready : plan.rules()) {
            ServiceEntry last = facts.history.lastDone(place, ready.counting());
            Asked asked = new Asked(ready, part, ref, place, engine, born, last);
            if (ready.waits()) {
                waiting.add(asked);
            } else {
                add(asked, List.of(), dues);
            }
        }
    }

    /** When the part was fitted or last renewed, null if not known. */
    private @Nullable LocalDate born(Part part, int place, Set<String> renewing) {
        ServiceEntry renewed = renewing.isEmpty() ? null : facts.history.lastDone(place, renewing);
        LocalDate fitted = part.fittedOn();
        if (renewed == null) {
            return fitted;
        }
        return fitted != null && fitted.isAfter(renewed.date()) ? fitted : renewed.date();
    }

    private void add(Asked asked, List<Due> sameInstallation, List<Due> dues) {
        Interval interval = asked.rule().interval();
        Occasion occasion = interval.occasion();
        Window wanted = occasion == null ? null : occasions.window(occasion, asked.lastDate());
        clauses.clear();
        WearDate worn = asked.rule().renews() && !wear.isEmpty() ? wear.get(asked.ref()) : null;
        if (worn == null) {
            intervals.add(clauses, asked, EffectiveInterval.of(asked, facts));
        } else {
            clauses.add(wastage(worn));
        }
        if (occasion != null && wanted != null) {
            clauses.add(Clause.certain(ClauseKind.OCCASION, wanted.to(), 0, occasion.name()));
        }
        linked.addAfter(clauses, asked);
        linked.addFindings(clauses, asked);
        if (interval.everyNth() != null) {
            linked.addNth(clauses, asked, sameInstallation);
        }
        if (interval.unlessLastsTo() != null) {
            linked.addOpportunity(clauses, asked, sameInstallation);
        }
        if (!clauses.isEmpty()) {
            clauses.sort(FIRST_CLAUSE_FIRST);
            dues.add(due(asked, kept(clauses), wanted));
        }
    }

    /** One or two clauses, as nearly all have, are kept without a copy between. */
    private static List<Clause> kept(List<Clause> clauses) {
        return switch (clauses.size()) {
            case 1 -> List.of(clauses.get(0));
            case 2 -> List.of(clauses.get(0), clauses.get(1));
            default -> List.copyOf(clauses);
        };
    }

    private static Clause wastage(WearDate worn) {
        Double lasts = worn.newLastsMonths();
        return new Clause(
                ClauseKind.WASTAGE,
                worn.date(),
                worn.early80(),
                worn.late80(),
                lasts == null ? 0 : Math.max(1, Math.round(lasts)),
                worn.how());
    }

    private Due due(Asked asked, List<Clause> found, @Nullable Window occasion) {
        Clause first = found.get(0);
        LocalDate base = asked.base();
        Rule rule = asked.rule();
        Window window = window(rule, first, base, occasion);
        boolean refused = facts.history.refused(asked.place(), rule.id(), asked.lastDate());
        return new Due(
                facts.boat.id(),
                asked.ref(),
                asked.ready().inForce(),
                state(rule, found, window, refused),
                found,
                first.date(),
                window.from(),
                window.to(),
                asked.lastDate(),
                asked.hoursAtLast(),
                lifeUsed(base, first),
                facts.history.timesDone(asked.place(), rule.id(), lastInstead(asked)));
    }

    /** When an n-th service or the renewal of the part last took the place of this work, null if never. */
    private @Nullable LocalDate lastInstead(Asked asked) {
        Set<String> instead = asked.ready().instead();
        ServiceEntry last = instead == null ? null : facts.history.lastDone(asked.place(), instead);
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
        LocalDate layUp = facts.day.halves.endingFrom(true, facts.today).to();
        LocalDate recommission = facts.day.halves.endingFrom(false, facts.today).to();
        return layUp.isBefore(recommission) ? layUp : recommission;
    }

    private DueState state(Rule rule, List<Clause> found, Window window, boolean refused) {
        if (refused) {
            return DueState.REFUSED;
        }
        if (rule.interval().occasion() == Occasion.EVERY_VISIT && found.size() == 1) {
            return DueState.EVERY_VISIT;
        }
        if (facts.today.isAfter(window.to()) && facts.today.isAfter(found.get(0).date())) {
            return DueState.OVERDUE;
        }
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).kind() == ClauseKind.UNKNOWN) {
                return DueState.UNKNOWN;
            }
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
