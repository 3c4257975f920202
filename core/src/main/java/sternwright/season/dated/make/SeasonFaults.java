package sternwright.season.dated.make;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sternwright.boat.Boat;
import sternwright.boat.Hull;
import sternwright.boat.Winter;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.SeasonBoat;
import sternwright.season.dated.SeasonFault;
import sternwright.season.dated.SeasonFault.Where;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.Step;
import sternwright.season.dated.WorkingTime;
import sternwright.service.Place;
import sternwright.visit.planned.PlannedVisit;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.StandingClass;

/** Everything for which no season can be planned, each with the boat and what to do. */
public final class SeasonFaults {
    private static final int MOST_KINDS = 12;

    private final SeasonRequest request;
    private final WorkingTime time;
    private final HoistFit fit;
    private final SkillKinds kinds;
    private final List<SeasonFault> found = new ArrayList<>();

    private SeasonFaults(SeasonRequest request) {
        this.request = request;
        time = request.time();
        fit = new HoistFit(request, time);
        kinds = new SkillKinds(request.resources().crew());
    }

    /**
     * Looks a request through.
     *
     * @param request what is asked
     * @return all faults; empty if the season can be planned
     */
    public static List<SeasonFault> of(SeasonRequest request) {
        if (request.to().isBefore(request.from())) {
            return List.of(new SeasonFault(
                    Where.DATES,
                    "",
                    "the season ends on " + request.to() + " before it begins on " + request.from(),
                    "Give a last day after the first."));
        }
        SeasonFaults faults = new SeasonFaults(request);
        boolean lifts = false;
        for (SeasonBoat boat : request.boats()) {
            boolean ashore = faults.ashore(boat);
            lifts |= ashore;
            faults.boat(boat, ashore);
        }
        if (lifts) {
            faults.skills("", "wash and inspect", request.resources().times().washSkills());
        }
        faults.kinds();
        faults.names("of the crew are called", r -> r.crew().stream().map(CrewMember::name));
        faults.names("hoists are called", r -> r.hoists().stream().map(Hoist::name));
        faults.dates();
        faults.promises();
        return List.copyOf(faults.found);
    }

    private boolean ashore(SeasonBoat boat) {
        return boat.boat().winter() == Winter.ASHORE
                || boat.visits().stream().anyMatch(v -> v.place() == Place.ASHORE)
                || request.dates(boat.boat().id(), OwnerDate.Kind.EMERGENCY)
                        .findAny()
                        .isPresent();
    }

    private void boat(SeasonBoat boat, boolean ashore) {
        if (ashore) {
            hoist(boat.boat());
            place(boat.boat());
        }
        for (PlannedVisit visit : boat.visits()) {
            if (visit.to().isBefore(visit.from())) {
                add(
                        Where.VISIT,
                        boat.boat(),
                        "her visit should be over on " + visit.to() + ", before it can begin on " + visit.from(),
                        "Correct what is due on her, or plan her visits again.");
            }
            for (WorkGroup group : WorkGroup.of(visit, Step.WORK)) {
                skills(
                        boat.boat().id(),
                        group.works().get(0).inForce().rule().work() + " on "
                                + boat.boat().name(),
                        group.skills());
            }
        }
    }

    private void hoist(Boat boat) {
        Hull hull = boat.hull();
        List<Hoist> hoists = request.resources().hoists();
        if (fit.takers(hull).isEmpty()) {
            String limits = hoists.isEmpty()
                    ? "the yard has no hoist"
                    : hoists.stream()
                            .map(h -> h.id() + " takes " + figure(h.maxMassKg()) + " kg and " + figure(h.maxBeamM())
                                    + " m beam")
                            .collect(Collectors.joining(", "));
            add(
                    Where.BOAT,
                    boat,
                    "at " + figure(hull.massKg()) + " kg and " + figure(hull.beamM()) + " m beam no hoist takes her: "
                            + limits,
                    "Correct her mass-kg or beam-m, add the crane that lifts her to resources.yaml, or leave her afloat"
                            + " (winter: afloat) with no work that needs her ashore.");
            return;
        }
        if (fit.needsTide(hull)) {
            tide(boat);
        }
    }

    private void tide(Boat boat) {
        var missing = request.tides().firstMonthMissing(time.first(), time.last());
        if (missing.isPresent()) {
            add(
                    Where.TIDES,
                    boat,
                    "she can only be lifted on the tide, and the tide table lacks days in " + missing.get(),
                    "Add the high waters of " + missing.get() + " to tides.csv; the season runs from " + time.first()
                            + " to " + time.last() + ".");
        } else if (fit.of(boat.hull()).isEmpty()) {
            add(
                    Where.BOAT,
                    boat,
                    "with " + figure(boat.hull().draughtM())
                            + " m draught there is never water enough in working hours to lift her",
                    "Correct her draught-m, or the depth-m of the tidal hoists in resources.yaml, or lengthen the season.");
        }
    }

    private void place(Boat boat) {
        if (request.resources().classFor(boat.hull().lengthM()).isEmpty()) {
            String longest = request.resources().standing().stream()
                    .reduce((a, b) -> b)
                    .map((StandingClass s) -> "the longest place takes " + figure(s.upToLengthM()) + " m")
                    .orElse("the yard has no hard standing");
            add(
                    Where.BOAT,
                    boat,
                    "at " + figure(boat.hull().lengthM()) + " m no place on hard standing is long enough: " + longest,
                    "Correct her length-m, or add places of her length to resources.yaml.");
        }
    }

    private void skills(String boatId, String work, Set<String> skills) {
        if (!kinds.anyone(skills)) {
            String words = SkillKinds.words(skills);
            String fault = skills.isEmpty() ? "the yard has no crew" : "nobody of the crew has the skill " + words;
            found.add(new SeasonFault(
                    boatId.isEmpty() ? Where.RESOURCES : Where.BOAT,
                    boatId,
                    work + ": " + fault,
                    "Give one of the crew in resources.yaml the skill " + words + ", or have the work sent out."));
        } else {
            kinds.kind(skills);
        }
    }

    private void kinds() {
        int count = kinds.names().size();
        if (count > MOST_KINDS) {
            found.add(new SeasonFault(
                    Where.RESOURCES,
                    "",
                    "the crew's skills make " + count + " kinds of work, more than the " + MOST_KINDS
                            + " that can be planned together",
                    "Give people who do the same work the same skills."));
        }
    }

    /** Plans and job cards name people and hoists, so that no two may be called the same. */
    private void names(String what, Function<Resources, Stream<String>> names) {
        Set<String> seen = new HashSet<>();
        names.apply(request.resources())
                .filter(n -> !seen.add(n))
                .distinct()
                .forEach(n -> found.add(new SeasonFault(
                        Where.RESOURCES,
                        "",
                        "two " + what + " " + n,
                        "Give each a name of its own in resources.yaml, such as " + n + " 2.")));
    }

    private void dates() {
        Set<String> boats = request.boats().stream().map(b -> b.boat().id()).collect(Collectors.toSet());
        for (OwnerDate date : request.dates()) {
            if (!boats.contains(date.boatId())) {
                found.add(new SeasonFault(
                        Where.DATES, date.boatId(), "there is no such boat", "Correct the boat's id in dates.csv."));
            } else if (date.kind() != OwnerDate.Kind.ASHORE_SINCE && date.date().isAfter(time.last())) {
                found.add(new SeasonFault(
                        Where.DATES,
                        date.boatId(),
                        "the date " + date.date() + " lies after the season's last day, " + time.last(),
                        "Correct the date, or plan a longer season with --to."));
            }
        }
        for (SeasonBoat boat : request.boats()) {
            window(boat.boat());
        }
    }

    /** An owner has one mind: of two dates of a kind only one can hold. */
    private void oneOf(OwnerDate.Kind kind, String written, Boat boat) {
        List<LocalDate> days = request.dates(boat.id(), kind)
                .map(OwnerDate::date)
                .distinct()
                .sorted()
                .toList();
        if (days.size() > 1) {
            add(
                    Where.DATES,
                    boat,
                    written + " is given as " + days.get(0) + " and as " + days.get(1),
                    "Keep the line that holds in dates.csv and take the other out.");
        }
    }

    private void window(Boat boat) {
        oneOf(OwnerDate.Kind.OUT_FROM, "out-from", boat);
        oneOf(OwnerDate.Kind.AFLOAT_BY, "afloat-by", boat);
        var from = request.date(boat.id(), OwnerDate.Kind.OUT_FROM);
        var by = request.date(boat.id(), OwnerDate.Kind.AFLOAT_BY);
        if (from.isPresent() && by.isPresent() && !by.get().isAfter(from.get())) {
            add(
                    Where.DATES,
                    boat,
                    "the owner wants her afloat by " + by.get() + " and gives her up from " + from.get()
                            + ": the window ends before it begins",
                    "Correct out-from or afloat-by in dates.csv.");
        }
    }

    private void promises() {
        for (PromisedDate promise : request.promises()) {
            LocalDate day = promise.date();
            boolean inside = !day.isBefore(time.first()) && !day.isAfter(time.last());
            if (inside && !request.yard().calendar().works(day)) {
                found.add(new SeasonFault(
                        Where.PROMISES,
                        promise.name().boatId(),
                        promise.name().operation() + " is promised for " + day + ", on which the yard does not work",
                        "Agree another day with the owner and correct promises.csv, or take the day out of the holidays"
                                + " in yard.yaml."));
            }
        }
    }

    private static String figure(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    private void add(Where where, Boat boat, String what, String advice) {
        found.add(new SeasonFault(where, boat.id(), boat.name() + ": " + what, advice));
    }
}
