package sternwright.protection.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.ShorePower;
import sternwright.finding.Severity;
import sternwright.protection.anode.AnodeForecast;
import sternwright.protection.anode.AnodeLife;
import sternwright.protection.circuit.Link;
import sternwright.protection.diagnosis.Diagnosis;
import sternwright.protection.fault.Fault;
import sternwright.protection.judgement.Protection;
import sternwright.protection.metal.AnodeAlloy;
import sternwright.protection.metal.Metal;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.BoatJoint;

/** From what was found to what is to be done: which anode by when, which alloy, which joint, what is for an electrician. */
final class Adviser {
    /** A fault at least so likely after the readings is acted upon. */
    private static final double LIKELY = 0.3;

    /** Anodes due within so many months of the first are renewed with it. */
    private static final int TOGETHER_MONTHS = 3;

    /** A usual hull anode: 0.06 m2 of bare face, 3 kg in zinc (common practice, no source). */
    private static final double HULL_ANODE_M2 = 0.06;

    private static final double HULL_ANODE_M3 = 3 / 7130.0;

    private final BoatCircuit boat;
    private final Berth berth;
    private final List<PartLine> parts;
    private final AnodeLife life;
    private final Metal suited;
    private final Remedies remedies;
    private final LocalDate today;
    private final List<Advice> list = new ArrayList<>();

    Adviser(BoatCircuit boat, Berth berth, List<PartLine> parts, AnodeLife life, Metal suited, LocalDate today) {
        this.boat = boat;
        this.berth = berth;
        this.parts = parts;
        this.life = life;
        this.suited = suited;
        this.today = today;
        remedies = new Remedies(boat, suited);
    }

    /** What is to be done, the most pressing first. */
    List<Advice> all(@Nullable Diagnosis diagnosis) {
        if (diagnosis != null) {
            readings(diagnosis);
        }
        life.stillFull().forEach(this::full);
        renewals();
        alloys();
        unprotected();
        insides();
        overprotected();
        shoreEarth();
        list.sort(Comparator.comparing(Advice::severity).reversed());
        return List.copyOf(list);
    }

    private void readings(Diagnosis d) {
        if (d.nothingExplains()) {
            list.add(new Advice(
                    Severity.WATCH,
                    "Nothing that was thought of explains the readings.",
                    "Have them taken again with another half cell before anything is changed.",
                    null,
                    ""));
            return;
        }
        FaultActions actions = new FaultActions(boat, suited);
        Map<String, Fault> faults = new LinkedHashMap<>();
        d.verdicts().forEach(v -> v.hypothesis().faults().forEach(f -> faults.put(f.id(), f)));
        for (Fault f : faults.values()) {
            double p = d.faultProbability().getOrDefault(f.id(), 0.0);
            if (p >= LIKELY) {
                list.add(new Advice(
                        FaultActions.severity(f.kind()),
                        String.format(
                                Locale.ROOT, "By the readings (%.0f in 100): %s.", Math.min(99, 100 * p), f.words()),
                        actions.act(f),
                        null,
                        FaultActions.caution(f.kind())));
            }
        }
    }

    private void full(AnodeLife.StillFull anode) {
        list.add(new Advice(
                Severity.ACT,
                "The " + anode.anode().name() + " hardly wastes: a full anode after a season protects nothing.",
                "Have it taken off, its seat and bolts cleaned to bright metal, any paint on it removed, and the voltage across its joint"
                        + " read: less than 10 mV while it works.",
                null,
                Advice.IN_THE_WATER));
    }

    private void renewals() {
        if (boat.anodes().isEmpty()) {
            list.add(new Advice(
                    Severity.ACT,
                    "The register knows no anode on this boat.",
                    "Have one of " + FaultActions.plain(suited)
                            + " fitted to each group of metal under water, or entered if it is there.",
                    null,
                    Advice.IN_THE_WATER));
            return;
        }
        List<AnodeForecast> due = life.forecasts().stream()
                .filter(f -> f.halfGone() != null)
                .sorted(Comparator.comparing(f -> Objects.requireNonNull(f.halfGone())))
                .toList();
        List<AnodeForecast> now = due.stream()
                .filter(f -> !Objects.requireNonNull(f.halfGone()).isAfter(today))
                .toList();
        List<AnodeForecast> later = due.subList(now.size(), due.size());
        if (!now.isEmpty()) {
            list.add(new Advice(
                    Severity.ACT,
                    PlainList.of(now.stream().map(f -> "the " + f.body().name()).toList(), true)
                            + (now.size() == 1 ? " is" : " are") + " half gone or more.",
                    "Renew now: " + kinds(now) + ".",
                    today,
                    Advice.IN_THE_WATER));
        }
        if (!later.isEmpty()) {
            later(later, now.isEmpty() ? "Next to renew: " : "After those: ");
        }
    }

    /** The next anodes to renew, with those that are due soon after the first. */
    private void later(List<AnodeForecast> later, String opening) {
        LocalDate first = Objects.requireNonNull(later.get(0).halfGone());
        List<AnodeForecast> together = later.stream()
                .filter(f -> !Objects.requireNonNull(f.halfGone()).isAfter(first.plusMonths(TOGETHER_MONTHS)))
                .toList();
        list.add(new Advice(
                first.isBefore(today.plusMonths(TOGETHER_MONTHS)) ? Severity.WATCH : Severity.FINE,
                opening
                        + PlainList.of(
                                together.stream()
                                        .map(f -> "the " + f.body().name())
                                        .toList(),
                                false)
                        + ".",
                "Renew by " + PlainList.month(first) + ": " + kinds(together) + ".",
                first,
                ""));
    }

    /** What to have ready: "zinc of 0.80 kg for the leg anode". */
    private String kinds(List<AnodeForecast> anodes) {
        return PlainList.of(
                anodes.stream()
                        .map(f -> kind(f.body())
                                + (anodes.size() == 1
                                        ? ""
                                        : " for the " + f.body().name()))
                        .toList(),
                false);
    }

    /** An anode of the same size in the alloy that it should be of. */
    private String kind(BoatBody anode) {
        Metal metal = unsuited(anode) ? suited : anode.metal();
        Double mass = anode.massKg();
        AnodeAlloy is = anode.metal().alloy();
        AnodeAlloy willBe = metal.alloy();
        if (mass == null || is == null || willBe == null) {
            return FaultActions.plain(metal);
        }
        return String.format(
                Locale.ROOT,
                "%s of %.2g kg%s",
                FaultActions.plain(metal),
                mass * willBe.densityKgPerM3() / is.densityKgPerM3(),
                metal == anode.metal() ? "" : " (the same size)");
    }

    /** Zinc holds in the sea, though aluminium lasts longer; every other departure from what the water asks for is a fault. */
    private boolean unsuited(BoatBody anode) {
        boolean zincAtSea =
                anode.metal().id().equals("zinc-anode") && boat.water().salinity() >= 18;
        return !anode.metal().id().equals(suited.id()) && !zincAtSea;
    }

    private void alloys() {
        List<BoatBody> wrong = boat.anodes().stream().filter(this::unsuited).toList();
        if (!wrong.isEmpty()) {
            boolean magnesium = wrong.stream().anyMatch(a -> a.metal().id().equals("magnesium-anode"));
            boolean unprotected = parts.stream().anyMatch(Adviser::wants);
            list.add(new Advice(
                    magnesium || unprotected ? Severity.ACT : Severity.WATCH,
                    PlainList.of(wrong.stream().map(a -> "the " + a.name()).toList(), true)
                            + (wrong.size() == 1 ? " is" : " are") + " of "
                            + PlainList.of(
                                    wrong.stream()
                                            .map(a -> FaultActions.plain(a.metal()))
                                            .distinct()
                                            .toList(),
                                    false)
                            + "; this " + boat.water().words() + " asks for " + FaultActions.plain(suited) + ".",
                    (magnesium ? "Change the alloy now, " : "Change the alloy at the next renewal, ")
                            + "all anodes of one metal group together.",
                    null,
                    ""));
        }
    }

    private void unprotected() {
        Map<String, List<PartLine>> byAct = new LinkedHashMap<>();
        for (PartLine p : parts) {
            if (wants(p) && !p.body().inside()) {
                byAct.computeIfAbsent(act(p), k -> new ArrayList<>()).add(p);
            }
        }
        byAct.forEach((act, under) -> list.add(new Advice(
                under.stream()
                        .map(p -> p.atBerth().severity())
                        .max(Comparator.naturalOrder())
                        .orElse(Severity.WATCH),
                PlainList.of(under.stream().map(p -> "the " + p.body().name()).toList(), true)
                        + (under.size() == 1 ? " is" : " are")
                        + " not fully protected at the berth, even with new anodes.",
                act,
                null,
                act.contains("isolator") ? Advice.SHORE_POWER : "")));
    }

    private void insides() {
        List<String> names = parts.stream()
                .filter(p -> p.body().inside() && (wants(p) || p.underWay().severity() != Severity.FINE))
                .map(p -> "the " + p.body().name())
                .toList();
        if (!names.isEmpty()) {
            list.add(new Advice(
                    Severity.WATCH,
                    PlainList.of(names, true) + (names.size() == 1 ? " is" : " are")
                            + " beyond the full reach of the anodes outside, as channels are.",
                    "Have the channel looked into when its hose is off, its paint kept whole, and rinsed with fresh water before the boat"
                            + " lies idle.",
                    null,
                    ""));
        }
    }

    private static boolean wants(PartLine p) {
        return p.atBerth().state() == Protection.UNDER && p.atBerth().severity() != Severity.FINE;
    }

    private String act(PartLine p) {
        if (!remedies.anodeOn(p.body())) {
            return "Have an anode of " + FaultActions.plain(suited)
                    + " fitted that is joined to it: none is, by the register, so nothing protects it.";
        }
        return remedies.leastFor(p.body())
                .map(r -> switch (r.kind()) {
                    case SHORE_EARTH ->
                        "Have a galvanic isolator fitted into the shore earth: by calculation that alone is enough.";
                    case ALLOY ->
                        "Change the anodes to " + FaultActions.plain(suited) + ": by calculation that alone is enough.";
                    case ALLOY_AND_SHORE_EARTH ->
                        "Change the anodes to " + FaultActions.plain(suited)
                                + " and have a galvanic isolator fitted into the shore earth; by calculation it takes both.";
                    case TWICE -> "Have as much anode again fitted: by calculation that is enough.";
                    case FOUR_TIMES ->
                        "Have more anode fitted, up to four times as much by calculation; measure before and after, and"
                                + " make good the paint first.";
                })
                .orElseGet(() -> hullAnodes(p.body()));
    }

    /** A metal hull wants anodes of its own: those on the shaft reach it through gearbox and engine only. */
    private String hullAnodes(BoatBody part) {
        boolean hull = part.kind().equals("hull") || part.kind().equals("hull-plating");
        AnodeAlloy willBe = suited.alloy();
        Optional<Integer> count = hull ? remedies.hullAnodes(part, HULL_ANODE_M2) : Optional.empty();
        if (count.isEmpty() || willBe == null) {
            return "No single change of anodes is enough by calculation. Have the potentials read, bare metal painted, and the areas"
                    + " in the register measured.";
        }
        return String.format(
                Locale.ROOT,
                "Have %d hull anode%s of %s fitted on the hull itself, each of %.2f m2 bare face and about %.1f kg: by"
                        + " calculation that is enough.",
                count.get(),
                count.get() == 1 ? "" : "s",
                FaultActions.plain(suited),
                HULL_ANODE_M2,
                HULL_ANODE_M3 * willBe.densityKgPerM3());
    }

    private void overprotected() {
        for (PartLine p : parts) {
            if (p.atBerth().state() == Protection.OVER) {
                boolean magnesium =
                        boat.anodes().stream().anyMatch(a -> a.metal().id().equals("magnesium-anode"));
                list.add(new Advice(
                        p.atBerth().severity(),
                        "The " + p.body().name() + " gets more protection than is good for the metal: "
                                + p.atBerth().reason() + ".",
                        magnesium
                                ? "Have the magnesium taken off now and " + FaultActions.plain(suited) + " fitted."
                                : "Have the potential read, and less anode fitted if the reading agrees.",
                        null,
                        ""));
            }
        }
    }

    private void shoreEarth() {
        for (BoatJoint j : boat.joints()) {
            if (j.kind() != BoatJoint.Kind.SHORE_EARTH) {
                continue;
            }
            if (berth.shorePower() == ShorePower.EARTHED && j.link() instanceof Link.Resistor) {
                list.add(earthed());
            } else if (berth.shorePower() == ShorePower.GALVANIC_ISOLATOR) {
                list.add(new Advice(
                        Severity.FINE,
                        "A galvanic isolator stands in the shore earth.",
                        "Have it tested once a year: one that failed short protects nothing, one that failed open leaves the boat without"
                                + " earth. (Common practice, no source.)",
                        null,
                        Advice.SHORE_POWER));
            }
        }
    }

    private Advice earthed() {
        double taken = ShoreShare.of(boat);
        String share = taken > 0.05
                ? String.format(
                        Locale.ROOT, "about %.0f %% of what the anodes give goes ashore through it", 100 * taken)
                : "little goes through it by calculation, until a neighbour changes";
        return new Advice(
                taken > 0.3 ? Severity.ACT : Severity.WATCH,
                "The shore lead joins the boat's metal to every neighbour's and to the piling: " + share + ".",
                "Have a galvanic isolator or an isolation transformer fitted; until then unplug when power is not needed.",
                null,
                Advice.SHORE_POWER);
    }
}
