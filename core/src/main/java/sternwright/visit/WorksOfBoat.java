package sternwright.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.due.ClauseKind;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.service.EveryNth;
import sternwright.service.Occasion;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;
import sternwright.yard.SeasonDates.Window;

/**
 * Sorts a boat's due list into works that are planned, works of every visit and works refused: every n-th services join the rule
 * they stand in for, and rules that only follow others are added though nothing is due by them yet.
 */
final class WorksOfBoat {
    private static final int LONGEST_CYCLE = 12;

    private final BoatQuestion question;
    private final BoatCalendar calendar;
    final List<BoatWork> planned = new ArrayList<>();
    final List<BoatWork> everyVisit = new ArrayList<>();
    final List<Due> refused = new ArrayList<>();

    private record Key(PartRef part, String ruleId) {}

    WorksOfBoat(BoatQuestion question, BoatCalendar calendar) {
        this.question = question;
        this.calendar = calendar;
        Map<Key, Due> dues = new HashMap<>();
        for (Due d : question.dues()) {
            if (d.state() == DueState.REFUSED) {
                refused.add(d);
            } else {
                dues.put(new Key(d.part(), d.rule().id()), d);
            }
        }
        for (Due d : question.dues()) {
            if (d.state() != DueState.REFUSED && !stoodInFor(d, dues)) {
                add(d, dues);
            }
        }
        addFollowers();
    }

    /** Whether the work is a phase of another's cycle. */
    private static boolean stoodInFor(Due d, Map<Key, Due> dues) {
        EveryNth nth = d.rule().interval().everyNth();
        return nth != null && nth.n() <= LONGEST_CYCLE && dues.containsKey(new Key(d.part(), nth.ruleId()));
    }

    private void add(Due d, Map<Key, Due> dues) {
        Part part = part(d.part()).orElse(null);
        if (part == null) {
            return;
        }
        Occasion occasion = d.rule().interval().occasion();
        List<RuleInForce> phases = new ArrayList<>(List.of(d.inForce()));
        for (Due other : dues.values()) {
            EveryNth nth = other.rule().interval().everyNth();
            if (nth != null
                    && other.part().equals(d.part())
                    && nth.ruleId().equals(d.rule().id())
                    && nth.n() <= LONGEST_CYCLE) {
                while (phases.size() < nth.n() - 1) {
                    phases.add(d.inForce());
                }
                phases.add(other.inForce());
                break;
            }
        }
        BoatWork work = new BoatWork(d.part(), part, name(d.part(), part), phases, d, windows(d), "");
        if (occasion == Occasion.EVERY_VISIT && d.clauses().size() == 1) {
            everyVisit.add(work);
        } else {
            planned.add(work);
        }
    }

    private List<Window> windows(Due d) {
        Occasion occasion = d.rule().interval().occasion();
        if (occasion == null || occasion == Occasion.EVERY_VISIT) {
            return List.of();
        }
        LocalDate last = d.clauses().stream()
                .filter(c -> c.kind() == ClauseKind.OCCASION)
                .map(c -> c.date())
                .findFirst()
                .orElse(d.lastSensible());
        boolean frost = occasion == Occasion.EVERY_LAY_UP_BEFORE_FROST;
        LocalDate from = d.earliest().isAfter(last) ? last : d.earliest();
        return calendar.windows(new Window(from, last), occasion != Occasion.EVERY_RECOMMISSION, frost);
    }

    /** Rules without a date of their own that some planned work leads to. */
    private void addFollowers() {
        Boat boat = question.boat();
        for (Installation i : boat.installations()) {
            for (Part p : i.parts()) {
                PartRef ref = new PartRef(i.id(), p.id());
                for (RuleInForce r : question.rules().forPart(boat, i, p)) {
                    boolean known = question.dues().stream()
                            .anyMatch(d -> d.part().equals(ref)
                                    && d.rule().id().equals(r.rule().id()));
                    String leads = known ? "" : trigger(ref, r.rule());
                    if (!leads.isEmpty()) {
                        planned.add(new BoatWork(ref, p, name(ref, p), List.of(r), null, List.of(), leads));
                    }
                }
            }
        }
    }

    private String trigger(PartRef ref, Rule rule) {
        return planned.stream()
                .filter(w -> w.ref().installationId().equals(ref.installationId()))
                .flatMap(w -> w.phases().stream())
                .map(RuleInForce::rule)
                .filter(r -> leads(r, rule))
                .map(Rule::work)
                .findFirst()
                .orElse("");
    }

    /** Whether a rule carried out makes another due. */
    static boolean leads(Rule first, Rule then) {
        return !first.id().equals(then.id())
                && then.interval().after().stream()
                        .anyMatch(a -> a.startsWith("tag:")
                                ? first.tags().contains(a.substring("tag:".length()))
                                : a.equals(first.id()));
    }

    private Optional<Part> part(PartRef ref) {
        return question.boat().installation(ref.installationId()).flatMap(i -> i.part(ref.partId()));
    }

    private String name(PartRef ref, Part part) {
        String kind = question.catalogue()
                .find(part.kind())
                .map(k -> k.name())
                .orElse(part.kind().replace('-', ' '));
        Installation installation =
                question.boat().installation(ref.installationId()).orElse(null);
        if (installation == null) {
            return kind;
        }
        long alike = installation.parts().stream()
                .filter(p -> p.kind().equals(part.kind()))
                .count();
        String own = alike > 1 ? kind + " " + part.id() : kind;
        return question.boat().installations().size() > 1
                ? own + ", " + installation.side().name().toLowerCase(Locale.ROOT)
                : own;
    }
}
