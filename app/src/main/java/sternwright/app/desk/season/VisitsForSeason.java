package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.paper.Figures;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.due.Reasons;
import sternwright.history.BoatHistory;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.season.dated.PublishedWork;
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

/**
 * The planned visits of every boat, as they were on the day the published plan rests on, without what has been done since.
 *
 * <p>So that one late part does not re-open the visits of a whole fleet, a season under way keeps its visits until a fresh one is
 * planned. They are taken as they were written down with the published plan; those of a boat are planned again where anything that
 * they rest on has changed since.
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
    private final VisitPrint print;
    private final PublishedVisits written;
    private final Supplier<List<PublishedWork>> kept;

    @Nullable
    private PublishedVisits lately;

    private final List<String> remarks = new ArrayList<>();
    private final List<PublishedWork> works = new ArrayList<>();
    private final List<PublishedWork> fresh = new ArrayList<>();
    private int planned;

    /**
     * Opens it; nothing is planned yet.
     *
     * @param files the yard
     * @param agreed what is agreed with owners
     * @param basis the day on which visits were planned, or are
     * @param ashoreSince boats that are known to stand ashore since a day
     * @param written visits as they were written down with the published plan
     * @param kept visits as they were planned lately; asked only where those written down do not hold
     */
    VisitsForSeason(
            YardFiles files,
            List<AgreedWork> agreed,
            LocalDate basis,
            Map<String, LocalDate> ashoreSince,
            List<PublishedWork> written,
            Supplier<List<PublishedWork>> kept) {
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
        print = new VisitPrint(files, basis);
        this.written = new PublishedVisits(written, files, book);
        this.kept = kept;
    }

    /** Boats for which no visits could be planned, and why. */
    List<String> remarks() {
        return List.copyOf(remarks);
    }

    /** The visits as they are written down with the plan, once {@link #all} has been asked. */
    List<PublishedWork> works() {
        return List.copyOf(works);
    }

    /** The same of the boats alone whose visits had to be planned, once {@link #all} has been asked. */
    List<PublishedWork> fresh() {
        return List.copyOf(fresh);
    }

    /** Of how many boats the visits had to be planned, once {@link #all} has been asked. */
    int planned() {
        return planned;
    }

    List<SeasonBoat> all() {
        List<Answered> answered = List.copyOf(files.boats().values()).parallelStream()
                .map(this::of)
                .toList();
        answered.forEach(a -> {
            remarks.addAll(a.remarks);
            works.addAll(a.works);
            if (a.planned) {
                planned++;
                fresh.addAll(a.works);
            }
        });
        return answered.stream().map(Answered::boat).toList();
    }

    private record Answered(SeasonBoat boat, List<PublishedWork> works, List<String> remarks, boolean planned) {}

    private Answered of(Boat boat) {
        BoatHistory history = files.history(boat.id());
        BoatHistory then = until(history);
        Berth berth = there(Optional.ofNullable(files.berths().get(boat.berthId())));
        List<AgreedWork> own =
                agreed.stream().filter(a -> a.boatId().equals(boat.id())).toList();
        String restsOn = print.of(boat, then, own, ashoreSince.get(boat.id()));
        Optional<List<PlannedVisit>> known = written.of(boat, restsOn).or(() -> lately().of(boat, restsOn));
        List<String> said = new ArrayList<>();
        List<PlannedVisit> visits = known.orElseGet(() -> plan(boat, berth, then, own, said));
        return new Answered(
                new SeasonBoat(boat, berth, left(visits, history)),
                said.isEmpty() ? PublishedVisits.lines(visits, restsOn) : List.of(),
                said,
                known.isEmpty());
    }

    private synchronized PublishedVisits lately() {
        PublishedVisits known = lately;
        if (known == null) {
            known = new PublishedVisits(kept.get(), files, book);
            lately = known;
        }
        return known;
    }

    private List<PlannedVisit> plan(Boat boat, Berth berth, BoatHistory then, List<AgreedWork> own, List<String> said) {
        BoatQuestion question = new BoatQuestion(
                        boat,
                        berth,
                        there(files.yard().use(boat.use())),
                        files.yard(),
                        files.catalogue(),
                        book::forPart,
                        then,
                        dues.of(boat, then, basis),
                        new Reasons(Figures.of(Locale.getDefault()).locale()),
                        basis,
                        HORIZON_MONTHS)
                .ashoreSince(ashoreSince.get(boat.id()));
        BoatVisits asked = BoatVisits.of(question);
        BoatAnswer answer = asked.plan(SolveLimits.ofNodes(BRANCHES).withGap(GAP));
        if (answer instanceof BoatPlan plan) {
            return asAgreed(boat, asked, plan, own, said);
        }
        BoatAnswer.NoPlan no = (BoatAnswer.NoPlan) answer;
        said.add(boat.name() + ": no visits can be planned for her, so the season has none of her works: "
                + String.join("; ", no.clash()));
        return List.of();
    }

    /** The visits as owner and yard have agreed them, unless that breaks what must not be broken. */
    private static List<PlannedVisit> asAgreed(
            Boat boat, BoatVisits asked, BoatPlan plan, List<AgreedWork> own, List<String> said) {
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
