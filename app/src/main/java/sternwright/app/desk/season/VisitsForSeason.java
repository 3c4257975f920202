package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.paper.Figures;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.Reasons;
import sternwright.history.BoatHistory;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.season.dated.SeasonBoat;
import sternwright.service.RuleBook;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatQuestion;
import sternwright.visit.BoatVisits;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.solver.SolveLimits;
import sternwright.yard.Use;

/**
 * The planned visits of every boat, as they were on the day the published plan rests on, without what has been done since.
 *
 * <p>So that one late part does not re-open the visits of a whole fleet, a season under way keeps its visits until a fresh one is
 * planned.
 */
final class VisitsForSeason {
    private static final int HORIZON_MONTHS = 18;
    private static final long BRANCHES = 40;
    private static final double GAP = 0.02;

    private final YardFiles files;
    private final DueWork dues;
    private final RuleBook book;
    private final List<AgreedWork> agreed;
    private final LocalDate basis;
    private final Map<String, LocalDate> ashoreSince;
    private final List<String> remarks = new ArrayList<>();

    /** The boats {@code ashoreSince} are known to stand ashore since a day. */
    VisitsForSeason(YardFiles files, List<AgreedWork> agreed, LocalDate basis, Map<String, LocalDate> ashoreSince) {
        this.files = files;
        this.agreed = List.copyOf(agreed);
        agreed.stream()
                .map(AgreedWork::boatId)
                .filter(id -> !files.boats().containsKey(id))
                .distinct()
                .forEach(id ->
                        remarks.add("agreed.csv names the boat " + id + ", which is not registered: passed over"));
        this.basis = basis;
        this.ashoreSince = Map.copyOf(ashoreSince);
        dues = new DueWork(files);
        book = RuleBook.of(files.generic(), files.programmes(), files.catalogue());
    }

    /** Boats for which no visits could be planned, and why. */
    List<String> remarks() {
        return List.copyOf(remarks);
    }

    List<SeasonBoat> all() {
        List<Answered> answered = List.copyOf(files.boats().values()).parallelStream()
                .map(this::of)
                .toList();
        answered.forEach(a -> remarks.addAll(a.remarks));
        return answered.stream().map(Answered::boat).toList();
    }

    private record Answered(SeasonBoat boat, List<String> remarks) {}

    private Answered of(Boat boat) {
        BoatHistory history = files.history(boat.id());
        BoatHistory then = until(history);
        List<Due> due = dues.of(boat, then, basis);
        Berth berth = there(Optional.ofNullable(files.berths().get(boat.berthId())));
        Use use = there(files.yard().use(boat.use()));
        BoatQuestion question = new BoatQuestion(
                        boat,
                        berth,
                        use,
                        files.yard(),
                        files.catalogue(),
                        book::forPart,
                        then,
                        due,
                        new Reasons(Figures.of(Locale.getDefault()).locale()),
                        basis,
                        HORIZON_MONTHS)
                .ashoreSince(ashoreSince.get(boat.id()));
        BoatVisits asked = BoatVisits.of(question);
        BoatAnswer answer = asked.plan(SolveLimits.ofNodes(BRANCHES).withGap(GAP));
        if (answer instanceof BoatPlan plan) {
            List<String> said = new ArrayList<>();
            List<PlannedVisit> visits = asAgreed(boat, asked, plan, said);
            return new Answered(new SeasonBoat(boat, berth, left(visits, history)), said);
        }
        BoatAnswer.NoPlan no = (BoatAnswer.NoPlan) answer;
        String why = boat.name() + ": no visits can be planned for her, so the season has none of her works: "
                + String.join("; ", no.clash());
        return new Answered(new SeasonBoat(boat, berth, List.of()), List.of(why));
    }

    /** The visits as owner and yard have agreed them, unless that breaks what must not be broken. */
    private List<PlannedVisit> asAgreed(Boat boat, BoatVisits asked, BoatPlan plan, List<String> said) {
        List<AgreedWork> own =
                agreed.stream().filter(a -> a.boatId().equals(boat.id())).toList();
        if (own.isEmpty()) {
            return plan.visits();
        }
        HandPlan hand = asked.asAgreed(plan, own);
        if (hand.allowed()) {
            return hand.plan().visits();
        }
        said.add(boat.name() + ": her agreed visits cannot be kept, the proposed ones are planned instead: "
                + hand.broken().get(0).words());
        return plan.visits();
    }

    private BoatHistory until(BoatHistory history) {
        return new BoatHistory(
                history.boatId(),
                history.entries().stream().filter(e -> !e.date().isAfter(basis)).toList(),
                history.meter().stream().filter(m -> !m.date().isAfter(basis)).toList());
    }

    /** Visits without works that have been done since. */
    private List<PlannedVisit> left(List<PlannedVisit> visits, BoatHistory history) {
        List<ServiceEntry> since = history.entries().stream()
                .filter(e -> e.date().isAfter(basis) && e.outcome() == Outcome.DONE)
                .toList();
        if (since.isEmpty()) {
            return visits;
        }
        return visits.stream()
                .map(v -> with(
                        v, v.works().stream().filter(w -> !done(w, v, since)).toList()))
                .toList();
    }

    private static boolean done(PlannedWork work, PlannedVisit visit, List<ServiceEntry> since) {
        return since.stream()
                .anyMatch(e -> e.part().equals(work.part())
                        && e.ruleId().equals(work.inForce().rule().id())
                        && !e.date().isBefore(visit.from().minusMonths(2)));
    }

    private static PlannedVisit with(PlannedVisit v, List<PlannedWork> works) {
        double share =
                v.works().isEmpty() ? 1 : (double) works.size() / v.works().size();
        return new PlannedVisit(
                v.boatId(),
                v.from(),
                v.to(),
                v.place(),
                v.lifts(),
                works,
                v.minutes() * share,
                v.supplies(),
                v.prices(),
                v.net(),
                v.savedByBundling());
    }

    private static <T> T there(Optional<T> found) {
        return found.orElseThrow(() -> new IllegalStateException("what was checked is not there"));
    }
}
