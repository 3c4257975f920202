package sternwright.app.desk.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongSupplier;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.due.DueWork;
import sternwright.app.desk.season.Onlooker;
import sternwright.app.desk.season.PlanSeason;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.PublishSeason;
import sternwright.app.desk.season.SeasonAsk;
import sternwright.app.desk.season.SeasonPapers;
import sternwright.app.desk.visits.PlanVisits;
import sternwright.app.desk.visits.VisitPapers;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.paper.Figures;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.solver.SolveLimits;

/** Makes an invented yard and does the main job on it: due list, visits, one job card and one estimate. */
public final class ShowDemo {
    /** How far the demo plans. */
    public static final int MONTHS = 24;

    /** All boats together get about this long; one boat never more than the second figure. */
    private static final double SEASON_SECONDS = 4;

    private static final double SECONDS_IN_ALL = 14;

    private static final double MOST_SECONDS_A_BOAT = 0.8;
    private static final double GAP = 0.01;
    private static final int ESTIMATE_DAYS = 30;
    private static final int GOOD_SIZE = 8;

    private final Path folder;
    private final LocalDate today;
    private final Locale reader;

    /**
     * A demo in a folder.
     *
     * @param folder missing or empty
     * @param today the day called today; the invented past ends there
     * @param reader whose formats to use
     */
    public ShowDemo(Path folder, LocalDate today, Locale reader) {
        this.folder = folder;
        this.today = today;
        this.reader = reader;
    }

    /**
     * Writes the yard and reads it back, as any yard is read.
     *
     * @param where which half of the globe
     * @param boats how many boats
     * @param seed the same seed and day give the same yard
     * @return what its files say
     * @throws IOException if the disk refuses
     */
    public YardFiles write(InventedFolder.Where where, int boats, long seed) throws IOException {
        new InventedFolder(where).write(folder, boats, today, seed);
        return YardFolder.all(folder, today);
    }

    /**
     * What is due on every boat.
     *
     * @param files the yard
     * @return every work, the soonest first
     */
    public List<Due> dues(YardFiles files) {
        return new DueWork(files).all(today);
    }

    /**
     * The visits of every boat.
     *
     * @param files the yard
     * @return one answer a boat
     */
    public List<BoatAnswer> visits(YardFiles files) {
        double share = SECONDS_IN_ALL
                * Runtime.getRuntime().availableProcessors()
                / Math.max(1, files.boats().size());
        return new PlanVisits(
                        files,
                        SeasonFolder.read(folder, today),
                        Figures.of(reader).locale())
                .all(
                        today,
                        MONTHS,
                        SolveLimits.ofSeconds(System::nanoTime, Math.min(MOST_SECONDS_A_BOAT, share))
                                .withGap(GAP));
    }

    /**
     * The season of the yard: planned, published, and its board written.
     *
     * @param season the season
     * @param board the board as a page
     */
    public record Season(PlannedSeason season, Path board) {}

    /**
     * Plans the season, publishes it in the folder and writes the board.
     *
     * @param onlooker sees the work
     * @param nanoClock a clock of nanoseconds
     * @return the season
     * @throws IOException if the disk refuses
     */
    public Season season(Onlooker onlooker, LongSupplier nanoClock) throws IOException {
        SeasonAsk ask = new SeasonAsk(
                new FolderShelf(folder), today, today, null, true, List.of(), SEASON_SECONDS, 1, nanoClock);
        PlannedSeason planned = PlanSeason.of(ask, onlooker);
        PublishSeason.write(new FolderShelf(folder), planned, List.of(), today);
        Path to = Files.createDirectories(folder.resolve("papers")).resolve("season-board.html");
        new SeasonPapers(planned, today).board(to);
        return new Season(planned, to);
    }

    /**
     * The papers of a visit.
     *
     * @param boat the boat
     * @param visit the visit chosen
     * @param card the job card as written
     * @param estimate the estimate as written
     */
    public record Papers(Boat boat, PlannedVisit visit, VisitPapers.Written card, VisitPapers.Written estimate) {}

    /**
     * Writes job card and estimate of the next visit that shows most: ashore, of several works, with a safety item.
     *
     * @param files the yard
     * @param answers its visits
     * @return the papers; empty if no boat has a visit
     * @throws IOException if the disk refuses
     */
    public Optional<Papers> papers(YardFiles files, List<BoatAnswer> answers) throws IOException {
        Optional<PlannedVisit> chosen = answers.stream()
                .flatMap(a ->
                        a instanceof BoatPlan plan ? plan.visits().stream().limit(1) : java.util.stream.Stream.of())
                .filter(v -> !v.works().isEmpty())
                .max(Comparator.comparingInt(ShowDemo::showsMuch));
        if (chosen.isEmpty()) {
            return Optional.empty();
        }
        PlannedVisit visit = chosen.get();
        Boat boat = Objects.requireNonNull(files.boats().get(visit.boatId()));
        VisitPapers papers = VisitPapers.of(files, boat, today, reader);
        Path to = folder.resolve("papers");
        return Optional.of(new Papers(
                boat,
                visit,
                papers.write(papers.card(visit), to),
                papers.write(papers.estimate(visit, ESTIMATE_DAYS, List.of()), to)));
    }

    /** A visit that shows how works are bundled and still fits on a few sheets. */
    private static int showsMuch(PlannedVisit visit) {
        int safety = visit.works().stream().anyMatch(w -> w.inForce().rule().safety()) ? 2 : 0;
        int lifted = visit.lifts() ? 2 : 0;
        return safety + lifted - Math.abs(visit.works().size() - GOOD_SIZE);
    }
}
