package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sternwright.app.files.YardFiles;
import sternwright.boat.Boat;
import sternwright.measure.Money;
import sternwright.season.dated.PublishedWork;
import sternwright.service.Place;
import sternwright.service.RuleBook;
import sternwright.service.RuleInForce;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;

/**
 * The visits of the published season as they were written down with it, so that they need not be planned again. What the season does
 * not use is not written: a visit read from here has no supplies and reasons, and no price but those of its
 * works.
 */
final class PublishedVisits {
    private final Map<String, List<PublishedWork>> byBoat;
    private final RuleBook book;
    private final Money none;

    PublishedVisits(List<PublishedWork> works, YardFiles files, RuleBook book) {
        byBoat = works.stream().collect(Collectors.groupingBy(PublishedWork::boatId));
        this.book = book;
        none = Money.zero(files.yard().currency());
    }

    /**
     * The visits of a boat, if they were written down and nothing that they rest on has changed.
     *
     * @param boat the boat
     * @param restsOn the print of what her visits rest on now
     * @return the visits; empty if they are to be planned
     */
    Optional<List<PlannedVisit>> of(Boat boat, String restsOn) {
        List<PublishedWork> works = byBoat.getOrDefault(boat.id(), List.of());
        String print = print(works, restsOn);
        if (works.isEmpty() || works.stream().anyMatch(w -> !w.restsOn().equals(print))) {
            return Optional.empty();
        }
        Map<Held, List<PublishedWork>> visits = new LinkedHashMap<>();
        works.forEach(
                w -> visits.computeIfAbsent(new Held(w), v -> new ArrayList<>()).add(w));
        List<PlannedVisit> planned = new ArrayList<>();
        for (List<PublishedWork> visit : visits.values()) {
            List<PlannedWork> there =
                    visit.stream().flatMap(w -> work(boat, w).stream()).toList();
            if (there.size() < visit.size()) {
                return Optional.empty();
            }
            planned.add(visit(visit.get(0), there));
        }
        return Optional.of(planned);
    }

    /**
     * The visits of a boat as they are written down.
     *
     * @param visits the visits
     * @param restsOn the print of what they rest on
     * @return a line for each work; none if a visit has no works, so that it is planned again
     */
    static List<PublishedWork> lines(List<PlannedVisit> visits, String restsOn) {
        if (visits.stream().anyMatch(v -> v.works().isEmpty())) {
            return List.of();
        }
        List<PublishedWork> lines = visits.stream()
                .flatMap(v -> v.works().stream().map(w -> line(v, w)))
                .toList();
        String print = print(lines, restsOn);
        return lines.stream().map(l -> l.restsOn(print)).toList();
    }

    private static PublishedWork line(PlannedVisit v, PlannedWork w) {
        return new PublishedWork(
                v.boatId(),
                v.from(),
                v.to(),
                v.place(),
                v.lifts(),
                v.minutes(),
                w.part(),
                w.partName(),
                w.inForce().rule().id(),
                w.dueOn(),
                w.clause(),
                w.minutes(),
                w.price().toDouble(),
                "");
    }

    /** The print of lines and of what they rest on: a line that somebody changed does not fit any more. */
    private static String print(List<PublishedWork> lines, String restsOn) {
        return VisitPrint.of(
                restsOn + lines.stream().map(l -> l.restsOn("").toString()).collect(Collectors.joining("\n")));
    }

    /** What the lines of one visit have in common. */
    private record Held(LocalDate from, LocalDate to, Place place, boolean lifts, double minutes) {
        Held(PublishedWork w) {
            this(w.from(), w.to(), w.place(), w.lifts(), w.visitMinutes());
        }
    }

    private PlannedVisit visit(PublishedWork v, List<PlannedWork> works) {
        return new PlannedVisit(
                v.boatId(),
                v.from(),
                v.to(),
                v.place(),
                v.lifts(),
                works,
                v.visitMinutes(),
                List.of(),
                List.of(),
                none,
                none);
    }

    private Optional<PlannedWork> work(Boat boat, PublishedWork w) {
        return inForce(boat, w)
                .map(rule -> new PlannedWork(
                        w.part(),
                        w.partName(),
                        rule,
                        w.dueOn(),
                        w.clause(),
                        "",
                        "",
                        w.minutes(),
                        none,
                        List.of(),
                        Money.of(w.price(), none.currency())));
    }

    private Optional<RuleInForce> inForce(Boat boat, PublishedWork w) {
        return boat
                .installation(w.part().installationId())
                .flatMap(i -> i.part(w.part().partId()).map(p -> book.forPart(boat, i, p)))
                .orElse(List.of())
                .stream()
                .filter(r -> r.rule().id().equals(w.ruleId()))
                .findFirst();
    }
}
