package sternwright.app.desk.visits;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.YardFiles;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.due.Reasons;
import sternwright.history.BoatHistory;
import sternwright.service.RuleBook;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatQuestion;
import sternwright.visit.BoatVisits;
import sternwright.visit.solver.SolveLimits;
import sternwright.yard.Use;

/** Plans the visits of a yard's boats, each boat for itself. */
public final class PlanVisits {
    private final YardFiles files;
    private final DueWork dues;
    private final RuleBook book;
    private final Reasons reasons;
    private final Map<String, LocalDate> ashoreSince;

    /**
     * Opens a yard for planning.
     *
     * @param files what the yard's folder says
     * @param season what is said of the season: boats that stand ashore already
     * @param reader whose language and formats reasons are worded in
     */
    public PlanVisits(YardFiles files, SeasonFiles season, Locale reader) {
        this(files, AshoreSince.of(season), reader);
    }

    /**
     * Opens a yard of which nobody says which boats stand ashore already.
     *
     * @param files what the yard's folder says
     * @param reader whose language and formats reasons are worded in
     */
    public PlanVisits(YardFiles files, Locale reader) {
        this(files, Map.of(), reader);
    }

    private PlanVisits(YardFiles files, Map<String, LocalDate> ashoreSince, Locale reader) {
        this.ashoreSince = ashoreSince;
        this.files = files;
        this.dues = new DueWork(files);
        this.book = RuleBook.of(files.generic(), files.programmes(), files.catalogue());
        this.reasons = new Reasons(reader);
    }

    /**
     * The question of one boat, ready to be answered.
     *
     * @param boat the boat
     * @param today the day from which visits can be held
     * @param months how far to plan, at least 1
     * @return plans, alternatives and what-ifs can be asked of it
     */
    public BoatVisits of(Boat boat, LocalDate today, int months) {
        Berth berth = there(Optional.ofNullable(files.berths().get(boat.berthId())), boat.berthId());
        Use use = there(files.yard().use(boat.use()), boat.use());
        BoatHistory history = files.history(boat.id());
        return BoatVisits.of(new BoatQuestion(
                boat,
                berth,
                use,
                files.yard(),
                files.catalogue(),
                book::forPart,
                history,
                dues.of(boat, history, today),
                reasons,
                today,
                months,
                ashoreSince.get(boat.id())));
    }

    /**
     * The visits of all boats that were read, side by side.
     *
     * @param today the day from which visits can be held
     * @param months how far to plan, at least 1
     * @param seconds most time for one boat
     * @param gap proven gap at which a boat is done, as a share of its cost
     * @return one answer a boat, in the order of the boats
     */
    public List<BoatAnswer> all(LocalDate today, int months, double seconds, double gap) {
        return files.boats().values().parallelStream()
                .map(b -> of(b, today, months)
                        .plan(SolveLimits.ofSeconds(System::nanoTime, seconds).withGap(gap)))
                .toList();
    }

    private static <T> T there(Optional<T> found, String id) {
        return found.orElseThrow(() -> new IllegalStateException(id + " was checked and is not there"));
    }
}
