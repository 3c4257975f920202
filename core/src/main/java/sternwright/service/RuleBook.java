package sternwright.service;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.finding.Caution;

/**
 * The rules in force for every part of every boat: the generic programme with the yard's programmes over it.
 *
 * <p>A rule of the yard with the id of a generic rule takes its place. Overridings are put in field by field: yard, then
 * engine model, then boat, then part; the narrowest that gives a figure leads, and among equals the later one. A rule
 * that names no service point gets that of the part's kind. The answer for parts that differ in nothing but their boat is
 * worked out once and shared, so asking is cheap; the book may be asked from many threads.
 */
public final class RuleBook {
    private final Programme generic;
    private final List<Programme> programmes;
    private final Map<String, PartKind> kinds = new HashMap<>();
    private final Map<String, Rule> rules = new LinkedHashMap<>();
    private final Map<String, Caution> cautions = new LinkedHashMap<>();
    private final Map<String, List<Overriding>> byModel = new HashMap<>();
    private final Map<String, List<Overriding>> byBoat = new HashMap<>();
    private final Map<Slot, Slate> slates = new ConcurrentHashMap<>();

    private RuleBook(Programme generic, List<Programme> programmes, PartCatalogue catalogue) {
        this.generic = generic;
        this.programmes = List.copyOf(programmes);
        catalogue.kinds().forEach(k -> kinds.put(k.id(), k));
        for (Programme p : all()) {
            p.rules().forEach(r -> rules.put(r.id(), r));
            p.cautions().forEach(c -> cautions.put(c.id(), c));
            p.overridings().forEach(this::index);
        }
        // Boat before part, so that the part's figure is put in last; the sort keeps the order of equals.
        byBoat.values().forEach(list -> list.sort(Comparator.comparing(Overriding::scope)));
    }

    /**
     * Makes the book.
     *
     * @param generic the programme that everything starts from
     * @param programmes the yard's own, in the order in which they lead over each other: a later one over an earlier one
     * @param catalogue all kinds of part, the yard's own included
     * @return the book; references that lead nowhere are passed over here and named by {@code ProgrammeCheck}
     */
    public static RuleBook of(Programme generic, List<Programme> programmes, PartCatalogue catalogue) {
        return new RuleBook(generic, programmes, catalogue);
    }

    /**
     * The rules in force for one part, in the order of the programmes.
     *
     * @param boat the boat
     * @param installation an installation of it
     * @param part a part of that
     * @return the rules with the figures that hold and where they come from; empty for a part no rule is for
     */
    public List<RuleInForce> forPart(Boat boat, Installation installation, Part part) {
        String named = boat.programme();
        Slate slate = slates.computeIfAbsent(
                new Slot(
                        named == null ? generic.id() : named,
                        part.kind(),
                        installation.arrangement(),
                        installation.cooling(),
                        model(installation.engineModel())),
                this::slate);
        List<Overriding> narrow = byBoat.isEmpty() ? List.of() : narrow(boat, installation, part);
        if (narrow.isEmpty()) {
            return slate.inForce(part.conditions());
        }
        List<RuleInForce> out = new ArrayList<>(slate.all().size());
        for (RuleOverride one : slate.all()) {
            RuleOverride put = putAll(one, narrow);
            if (put.on()
                    && part.conditions()
                            .containsAll(put.held().rule().appliesTo().conditions())) {
                out.add(put.held());
            }
        }
        return List.copyOf(out);
    }

    /**
     * The rule of an id as its programme writes it, before any overriding.
     *
     * @param id short name
     * @return the rule, the yard's own where it takes the place of a generic one
     */
    public Optional<Rule> rule(String id) {
        return Optional.ofNullable(rules.get(id));
    }

    /**
     * All rules as their programmes write them.
     *
     * @return each id once
     */
    public Collection<Rule> rules() {
        return List.copyOf(rules.values());
    }

    /**
     * The caution of an id.
     *
     * @param id short name
     * @return the caution
     */
    public Optional<Caution> caution(String id) {
        return Optional.ofNullable(cautions.get(id));
    }

    /**
     * The programme a boat follows, for outputs that say which was used.
     *
     * @param boat the boat
     * @return the one it names, else the generic one
     */
    public Programme programmeOf(Boat boat) {
        return programmes.stream()
                .filter(p -> p.id().equals(boat.programme()))
                .findFirst()
                .orElse(generic);
    }

    private List<Programme> all() {
        List<Programme> all = new ArrayList<>();
        all.add(generic);
        all.addAll(programmes);
        return all;
    }

    private void index(Overriding over) {
        switch (over.scope()) {
            case ENGINE_MODEL ->
                byModel.computeIfAbsent(normal(over.target()), m -> new ArrayList<>())
                        .add(over);
            case BOAT, PART -> {
                int slash = over.target().indexOf('/');
                String boatId = slash < 0 ? over.target() : over.target().substring(0, slash);
                byBoat.computeIfAbsent(boatId, b -> new ArrayList<>()).add(over);
            }
            case GENERIC, YARD -> {
                // Put in when a slate is made, because only the programmes a boat follows count.
            }
        }
    }

    private List<Overriding> narrow(Boat boat, Installation installation, Part part) {
        List<Overriding> ofBoat = byBoat.get(boat.id());
        if (ofBoat == null) {
            return List.of();
        }
        String here = boat.id() + "/" + installation.id() + "/" + part.id();
        return ofBoat.stream()
                .filter(o -> o.scope() == Scope.BOAT || o.target().equals(here))
                .toList();
    }

    private static String normal(String model) {
        return model.strip().toLowerCase(Locale.ROOT);
    }

    /** Only models that some overriding names need a slate of their own. */
    private String model(@Nullable String engineModel) {
        if (engineModel == null || byModel.isEmpty()) {
            return "";
        }
        String normal = normal(engineModel);
        return byModel.containsKey(normal) ? normal : "";
    }

    private static RuleOverride putAll(RuleOverride rule, List<Overriding> overridings) {
        RuleOverride put = rule;
        for (Overriding over : overridings) {
            if (over.ruleId().equals(rule.held().rule().id())) {
                put = put.put(over);
            }
        }
        return put;
    }

    private Slate slate(Slot slot) {
        PartKind kind = kinds.get(slot.kind);
        List<Overriding> wide = new ArrayList<>();
        Map<String, RuleInForce> followed = new LinkedHashMap<>();
        for (Programme p : all()) {
            if (p.onlyIfNamed() && !p.id().equals(slot.programme)) {
                continue;
            }
            Scope scope = p == generic ? Scope.GENERIC : Scope.YARD;
            p.rules().forEach(r -> followed.put(r.id(), new RuleInForce(r, scope, r.source())));
            p.overridings().stream()
                    .filter(o -> o.scope() == Scope.YARD || o.scope() == Scope.GENERIC)
                    .forEach(wide::add);
        }
        wide.addAll(byModel.getOrDefault(slot.model, List.of()));
        return Slate.of(followed.values().stream()
                .filter(held -> slot.fits(held.rule().appliesTo(), kind))
                .map(held -> putAll(new RuleOverride(held, true), wide))
                .map(put -> kind == null ? put : put.at(kind.servicePoint()))
                .toList());
    }

    /** What tells one part from another before boat and part themselves are looked at. */
    private record Slot(String programme, String kind, Arrangement arrangement, Cooling cooling, String model) {
        boolean fits(AppliesTo to, @Nullable PartKind known) {
            boolean meant = to.kinds().contains(kind)
                    || (known != null && known.tags().stream().anyMatch(to.tags()::contains));
            return meant
                    && (to.arrangements().isEmpty() || to.arrangements().contains(arrangement))
                    && (to.coolings().isEmpty() || to.coolings().contains(cooling));
        }
    }

    /** The rules of a slot: all with those switched off, and those in force by the conditions that a part carries. */
    private record Slate(
            List<RuleOverride> all, boolean asksConditions, Map<Set<String>, List<RuleInForce>> byConditions) {
        static Slate of(List<RuleOverride> all) {
            boolean asks = all.stream()
                    .anyMatch(r -> !r.held().rule().appliesTo().conditions().isEmpty());
            return new Slate(all, asks, new ConcurrentHashMap<>());
        }

        /** If nothing narrower is said; the same list for the same conditions. */
        List<RuleInForce> inForce(Set<String> conditions) {
            return byConditions.computeIfAbsent(asksConditions ? conditions : Set.of(), this::with);
        }

        private List<RuleInForce> with(Set<String> conditions) {
            return all.stream()
                    .filter(RuleOverride::on)
                    .map(RuleOverride::held)
                    .filter(held ->
                            conditions.containsAll(held.rule().appliesTo().conditions()))
                    .toList();
        }
    }
}
