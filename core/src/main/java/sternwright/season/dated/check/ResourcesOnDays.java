package sternwright.season.dated.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import sternwright.boat.Boat;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.Step;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.StandingClass;
import sternwright.yard.resource.TidalDock;

/** Hoists, people and places, counted on the calendar. */
final class ResourcesOnDays {
    private final SeasonRequest request;
    private final DatedSeason season;
    private final Map<String, Boat> boats;
    private final Set<OperationName> begun;
    private final List<String> wrong = new ArrayList<>();

    ResourcesOnDays(SeasonRequest request, DatedSeason season, Map<String, Boat> boats, Set<OperationName> begun) {
        this.request = request;
        this.season = season;
        this.boats = boats;
        this.begun = begun;
    }

    List<String> wrong() {
        hoists();
        people();
        places();
        return wrong;
    }

    private void hoists() {
        Map<String, Integer> lifts = new HashMap<>();
        for (DatedOperation o : season.operations()) {
            Step step = o.meaning().step();
            if (step != Step.LIFT && step != Step.LAUNCH) {
                continue;
            }
            Optional<Hoist> found = request.resources().hoists().stream()
                    .filter(h -> h.name().equals(o.hoist()))
                    .findFirst();
            if (found.isEmpty()) {
                add(o, "has no hoist");
                continue;
            }
            Hoist hoist = found.get();
            LocalDate day = o.from().toLocalDate();
            Boat boat = boats.get(o.meaning().boatId());
            if (boat == null || !hoist.takes(boat.hull())) {
                add(o, hoist.name() + " does not take her");
            } else if (!begun.contains(o.meaning().name())) {
                lift(o, hoist, boat, day);
            }
            int count = lifts.merge(hoist.id() + day, 1, Integer::sum);
            if (count > hoist.liftsADay()) {
                add(o, "is lift " + count + " of " + hoist.name() + " on " + day);
            }
        }
    }

    private void lift(DatedOperation o, Hoist hoist, Boat boat, LocalDate day) {
        if (request.hoistDown(hoist.id(), day)) {
            add(o, hoist.name() + " is down on " + day);
        }
        TidalDock dock = hoist.tidal();
        if (dock != null) {
            double water = request.tides().highWaters().stream()
                    .filter(h -> h.at().toLocalDate().equals(day))
                    .mapToDouble(h -> h.heightM() + dock.depthM())
                    .max()
                    .orElse(Double.NEGATIVE_INFINITY);
            if (water < boat.hull().draughtM() + dock.clearanceM()) {
                add(o, "has not water enough at " + hoist.name() + " on " + day);
            }
        }
    }

    private void people() {
        Map<String, List<DatedOperation>> alone = new TreeMap<>();
        for (DatedOperation o : season.operations()) {
            if (o.meaning().step() == Step.LIFT
                    || o.meaning().step() == Step.LAUNCH
                    || o.meaning().step() == Step.STANDS) {
                continue;
            }
            if (o.people().isEmpty()) {
                add(o, "has nobody to do it");
            }
            for (String name : o.people()) {
                person(o, name);
            }
            if (o.people().size() == 1) {
                alone.computeIfAbsent(o.people().get(0), n -> new ArrayList<>()).add(o);
            }
        }
        request.resources().crew().forEach(c -> overlaps(alone.getOrDefault(c.name(), List.of())));
    }

    private void person(DatedOperation o, String name) {
        Optional<CrewMember> member = request.resources().crew().stream()
                .filter(c -> c.name().equals(name))
                .findFirst();
        if (member.isEmpty()) {
            return; // an extra hand; how many may be had is the lean judge's matter
        }
        if (!member.get().skills().containsAll(o.meaning().skills())) {
            add(o, name + " has not the skill");
        }
        if (o.people().size() == 1 && o.until().isAfter(o.from())) {
            o.from()
                    .toLocalDate()
                    .datesUntil(o.until().toLocalDate().plusDays(1))
                    .filter(request.yard().calendar()::works)
                    .filter(d -> !member.get().there(d))
                    .findFirst()
                    .ifPresent(d -> add(o, name + " is not there on " + d));
        }
    }

    /** Nobody works on two boats at once; operations that change hands are left to the lean judge. */
    private void overlaps(List<DatedOperation> operations) {
        List<DatedOperation> sorted = operations.stream()
                .sorted(Comparator.comparing(DatedOperation::from))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).from().isBefore(sorted.get(i - 1).until())) {
                add(
                        sorted.get(i),
                        "is at the same time as " + sorted.get(i - 1).meaning().operation() + " on "
                                + sorted.get(i - 1).meaning().boatName() + ", both by "
                                + sorted.get(i).people());
            }
        }
    }

    /** On the evening of every day the boats that stand must fit into the places, the longest first. */
    private void places() {
        List<StandingClass> classes = request.resources().standing();
        Map<LocalDate, List<Double>> ashore = new TreeMap<>();
        for (DatedVisit visit : season.visits()) {
            var from = visit.ashoreFrom();
            var until = visit.ashoreUntil();
            Boat boat = boats.get(visit.boatId());
            if (from != null && until != null && boat != null && until.isAfter(from)) {
                from.toLocalDate()
                        .datesUntil(until.toLocalDate())
                        .forEach(d -> ashore.computeIfAbsent(d, x -> new ArrayList<>())
                                .add(boat.hull().lengthM()));
            }
        }
        ashore.forEach((day, lengths) -> {
            for (int c = 0; c < classes.size(); c++) {
                double shorter = c == 0 ? 0 : classes.get(c - 1).upToLengthM();
                long need = lengths.stream().filter(l -> l > shorter).count();
                int places = classes.subList(c, classes.size()).stream()
                        .mapToInt(StandingClass::places)
                        .sum();
                if (need > places) {
                    wrong.add("on " + day + " " + need + " boats over " + shorter + " m stand ashore and there are "
                            + places + " places for them");
                }
            }
        });
    }

    private void add(DatedOperation o, String what) {
        wrong.add(o.meaning().boatName() + ", " + o.meaning().visit() + ": "
                + o.meaning().operation() + ": " + what);
    }
}
