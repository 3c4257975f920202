package sternwright.app.desk.visits;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
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
     * Opens a yard for planning.
     *
     * @param files what the yard's folder says
     * @param ashoreSince boats that stand ashore already, with the day since which they do
     * @param reader whose language and formats reasons are worded in
     */
    public PlanVisits(YardFiles files, Map<String, LocalDate> ashoreSince, Locale reader) {
        this.ashoreSince = Map.copyOf(ashoreSince);
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
     * The visits of all boats that were read, side by side. Each processor takes the next boat when it is done with one: boats
     * differ a thousandfold in what they need, and none is to wait behind a hard one while a processor has nothing to do.
     *
     * @param today the day from which visits can be held
     * @param months how far to plan, at least 1
     * @param limits time and gap of one boat
     * @return one answer a boat, in the order of the boats
     */
    public List<BoatAnswer> all(LocalDate today, int months, SolveLimits limits) {
        ExecutorService processors =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<CompletableFuture<BoatAnswer>> answers = files.boats().values().stream()
                    .map(b -> CompletableFuture.supplyAsync(
                            () -> of(b, today, months).plan(limits), processors))
                    .toList();
            return answers.stream().map(CompletableFuture::join).toList();
        } finally {
            processors.shutdownNow();
        }
    }

    private static <T> T there(Optional<T> found, String id) {
        return found.orElseThrow(() -> new IllegalStateException(id + " was checked and is not there"));
    }
}
