package sternwright.app.desk.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.BadInput;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.answer.Binding;

/**
 * A season planned in the background: it can be looked at while it gets better, and stopped and kept.
 *
 * <p>All methods may be called from any thread.
 */
public final class SeasonJob {
    private final List<String> said = new ArrayList<>();
    private State state = State.PLANNING;
    private double spent;
    private double cost;
    private double bound;
    private @Nullable Supplier<PlannedSeason> latest;
    private @Nullable PlannedSeason shown;
    private @Nullable BadInput refused;
    private @Nullable RuntimeException fault;
    private boolean stop;

    private SeasonJob() {}

    /** How far a job has come. */
    public enum State {
        /** The search goes on. */
        PLANNING,
        /** Ended, by its time or because it was stopped; the plan is kept. */
        DONE,
        /** There is no such season: see {@link Standing#refused}. */
        REFUSED,
        /** A fault of the program: see {@link Standing#fault}. */
        FAULT
    }

    /**
     * How a job stands.
     *
     * @param state how far it has come
     * @param said remarks on the work, oldest first
     * @param spent spent part of the time, 0 to 1
     * @param cost cost of the best plan, in the yard's currency, 0 before the first plan
     * @param bound no plan can cost less
     * @param gap part of the cost not proved necessary, 0 to 1
     * @param refused why there is no such season
     * @param fault what went wrong, in words to report
     */
    public record Standing(
            State state,
            List<String> said,
            double spent,
            double cost,
            double bound,
            double gap,
            Optional<BadInput> refused,
            Optional<String> fault) {
        /** Copies the list. */
        public Standing {
            said = List.copyOf(said);
        }
    }

    /** Begins to plan what is asked. */
    public static SeasonJob plan(SeasonAsk ask, Executor executor) {
        return start(onlooker -> PlanSeason.of(ask, onlooker), executor);
    }

    /** Begins to plan on from {@code base} with operations fixed on days, see {@link PlanSeason#with}. */
    public static SeasonJob with(PlannedSeason base, List<PromisedDate> fixed, SeasonAsk ask, Executor executor) {
        return start(onlooker -> PlanSeason.with(base, fixed, ask, onlooker), executor);
    }

    private static SeasonJob start(Function<Onlooker, PlannedSeason> work, Executor executor) {
        SeasonJob job = new SeasonJob();
        executor.execute(() -> job.run(work));
        return job;
    }

    private void run(Function<Onlooker, PlannedSeason> work) {
        try {
            PlannedSeason planned = work.apply(new Watching());
            synchronized (this) {
                latest = () -> planned;
                shown = planned;
                cost = planned.dated().cost().total();
                bound = planned.dated().bound();
                state = State.DONE;
            }
        } catch (BadInput none) {
            synchronized (this) {
                refused = none;
                state = State.REFUSED;
            }
        } catch (RuntimeException wrong) {
            synchronized (this) {
                fault = wrong;
                state = State.FAULT;
            }
        }
    }

    /** Asks the job to end soon and to keep its best plan. */
    public synchronized void stop() {
        stop = true;
    }

    /** How it stands now. */
    public synchronized Standing standing() {
        double gap = cost <= 0 ? 0 : Math.max(0, (cost - bound) / cost);
        return new Standing(
                state,
                said,
                spent,
                cost,
                bound,
                gap,
                Optional.ofNullable(refused),
                Optional.ofNullable(fault).map(f -> String.valueOf(f.getMessage())));
    }

    /**
     * The best plan so far, proved by both judges now; with thousands of boats that takes a moment.
     *
     * @return empty before the first plan and where there is none
     */
    public Optional<PlannedSeason> best() {
        Supplier<PlannedSeason> newest;
        synchronized (this) {
            newest = latest;
            if (newest == null || shown != null) {
                return Optional.ofNullable(shown);
            }
        }
        PlannedSeason plan = newest.get();
        synchronized (this) {
            if (latest == newest) {
                shown = plan;
            }
        }
        return Optional.of(plan);
    }

    /** What binds in the best plan so far. */
    public List<Binding> binds() {
        return best().map(p -> p.dated().binds()).orElse(List.of());
    }

    /** Hears what the planner says. */
    private final class Watching implements Onlooker {
        @Override
        public void says(String what) {
            synchronized (SeasonJob.this) {
                said.add(what);
            }
        }

        @Override
        public boolean goOn(double spentNow, double costNow, double boundNow) {
            synchronized (SeasonJob.this) {
                spent = spentNow;
                cost = costNow;
                bound = boundNow;
                return !stop;
            }
        }

        @Override
        public void better(Supplier<PlannedSeason> plan) {
            synchronized (SeasonJob.this) {
                latest = plan;
                shown = null;
            }
        }
    }
}
