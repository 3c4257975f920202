package sternwright.app.desk.proving;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import sternwright.app.desk.visits.PlanVisits;
import sternwright.app.files.YardFiles;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.history.BoatHistory;
import sternwright.service.Programme;
import sternwright.yard.Yard;

/** The plans that somebody looks at, each proved once. Any number of threads may ask. */
public final class ProvedPlans implements AutoCloseable {
    private static final int KEPT = 200;
    private static final int WAITING = 50;

    private final Map<Asked, Known> known = new LinkedHashMap<>(16, 0.75f, true);
    private final ThreadPoolExecutor worker;

    /** Opens it; nothing is worked out yet. */
    public ProvedPlans() {
        worker = new ThreadPoolExecutor(1, 1, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(WAITING), task -> {
            Thread thread = new Thread(task, "proving-visits");
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
        worker.allowCoreThreadTimeOut(true);
    }

    private record Asked(String boatId, int months, Locale reader) {}

    /** What a plan rests on. */
    private record Facts(
            Boat boat,
            BoatHistory history,
            Optional<sternwright.boat.Berth> berth,
            Yard yard,
            PartCatalogue catalogue,
            Programme generic,
            List<Programme> programmes,
            Optional<LocalDate> ashoreSince,
            LocalDate today) {
        static Facts of(YardFiles files, Map<String, LocalDate> ashoreSince, Boat boat, LocalDate today) {
            return new Facts(
                    boat,
                    files.history(boat.id()),
                    Optional.ofNullable(files.berths().get(boat.berthId())),
                    files.yard(),
                    files.catalogue(),
                    files.generic(),
                    files.programmes(),
                    Optional.ofNullable(ashoreSince.get(boat.id())),
                    today);
        }
    }

    private record Known(Facts facts, PlanRun run) {}

    /**
     * The plan of a boat as far as it is known; the first asking plans at once and begins the proof.
     *
     * @param files what the yard says
     * @param ashoreSince boats that stand ashore already, with the day since which they do
     * @param boat the boat
     * @param today the day from which visits can be held
     * @param months how far to plan, at least 1
     * @param reader whose language and formats reasons are worded in
     * @return the run, which goes on by itself
     */
    public PlanRun of(
            YardFiles files,
            Map<String, LocalDate> ashoreSince,
            Boat boat,
            LocalDate today,
            int months,
            Locale reader) {
        Asked asked = new Asked(boat.id(), months, reader);
        Facts facts = Facts.of(files, ashoreSince, boat, today);
        PlanRun run;
        synchronized (known) {
            Known before = known.get(asked);
            if (before != null && before.facts.equals(facts)) {
                run = before.run;
            } else {
                if (before != null) {
                    before.run.stop();
                }
                run = new PlanRun(() -> new PlanVisits(files, ashoreSince, reader).of(boat, today, months));
                known.put(asked, new Known(facts, run));
                forget();
            }
        }
        begin(run);
        return run;
    }

    private void forget() {
        while (known.size() > KEPT) {
            Asked oldest = known.keySet().iterator().next();
            Known gone = known.remove(oldest);
            if (gone != null) {
                gone.run.stop();
            }
        }
    }

    /** A full queue is no fault: the next look at the plan tries again. */
    private void begin(PlanRun run) {
        if (run.wantsWork()) {
            try {
                worker.execute(run::work);
            } catch (RejectedExecutionException full) {
                run.notTaken();
            }
        }
    }

    /**
     * Asks what leaving a work costs; the answer comes by and by in the run.
     *
     * @param run the plan
     * @param question which work, until when
     * @return the answer as far as it is known
     */
    public PlanRun.Left left(PlanRun run, LeftQuestion question) {
        PlanRun.Left answer = run.left(question);
        begin(run);
        return answer;
    }

    /** Ends what is being worked out. */
    @Override
    public void close() {
        synchronized (known) {
            known.values().forEach(k -> k.run.stop());
        }
        worker.shutdownNow();
    }
}
