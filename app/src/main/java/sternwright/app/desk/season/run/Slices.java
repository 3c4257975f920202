package sternwright.app.desk.season.run;

import java.time.Duration;
import java.util.List;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.season.Onlooker;
import sternwright.app.desk.season.PlanSeason;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.store.job.SeasonRun;
import sternwright.app.store.job.SeasonRuns;
import sternwright.season.dated.Published;

/** Works on a run slice by slice and keeps the best plan after each, so that a program that dies loses one slice at most. */
final class Slices {
    private final SeasonRuns runs;
    private final SeasonRun run;
    private final String node;
    private final double sliceS;
    private final RunAsk ask;
    private RunCourse course;
    private double spentS;
    private double bound;
    private boolean stopped;

    /** The run is another program's by now: this one was taken for dead. */
    static final class TakenOver extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /**
     * What came of it.
     *
     * @param best the plan kept
     * @param stopped whether a person stopped it
     */
    record Worked(PlannedSeason best, boolean stopped) {}

    Slices(SeasonRuns runs, SeasonRun run, String node, Duration slice) {
        this.runs = runs;
        this.run = run;
        this.node = node;
        this.sliceS = slice.toMillis() / 1000.0;
        this.ask = RunAsk.of(run.ask());
        this.spentS = run.spentS();
        this.course = RunCourse.of(run.course());
        Double known = run.bound();
        this.bound = known == null ? 0 : known;
    }

    Worked work(Shelf shelf, List<Published> kept, LongSupplier nanoClock) {
        PlannedSeason best = null;
        do {
            double now = Math.max(0.001, Math.min(sliceS, ask.seconds() - spentS));
            long seed = ask.seed() + Math.round(spentS / sliceS);
            Watch watch = new Watch(spentS, now);
            var slice = ask.on(shelf, now, seed, nanoClock);
            if (best != null) {
                best = PlanSeason.goOn(best, slice, watch);
            } else {
                best = kept.isEmpty() ? PlanSeason.of(slice, watch) : PlanSeason.from(slice, kept, watch);
            }
            spentS = stopped ? Math.min(spentS + now, watch.at) : spentS + now;
            keep(best);
        } while (spentS < ask.seconds() && !stopped);
        return new Worked(best, stopped);
    }

    private void keep(PlannedSeason best) {
        var basis = ask.fresh() ? ask.today() : best.visitsOf().orElse(ask.today());
        String plan = SeasonSheets.PLAN.write(best.dated().published(basis));
        double cost = best.dated().cost().total();
        note(spentS, cost, best.dated().bound());
        if (!runs.keep(run.id(), node, new SeasonRuns.At(spentS, cost, bound, course.text()), plan)) {
            throw new TakenOver();
        }
    }

    private void note(double seconds, double cost, double newBound) {
        bound = Math.min(Math.max(bound, newBound), cost);
        course = course.with(new RunCourse.Point(seconds, cost, bound));
    }

    /** Tells the store how far it is and asks whether to stop. */
    private final class Watch implements Onlooker {
        private final double from;
        private final double length;
        private String says = "";
        private double at;

        Watch(double from, double length) {
            this.from = from;
            this.length = length;
            this.at = from;
        }

        @Override
        public void says(String what) {
            says = what;
            beat(new SeasonRuns.At(from, null, null, null));
        }

        @Override
        public boolean goOn(double spent, double cost, double newBound) {
            at = from + Math.min(1, spent) * length;
            @Nullable Double known = null;
            if (cost > 0) {
                note(at, cost, newBound);
                known = cost;
            }
            beat(new SeasonRuns.At(at, known, known == null ? null : bound, known == null ? null : course.text()));
            stopped = runs.one(run.id()).map(SeasonRun::stopAsked).orElse(true);
            return !stopped;
        }

        private void beat(SeasonRuns.At how) {
            if (!runs.beat(run.id(), node, says, how)) {
                throw new TakenOver();
            }
        }
    }
}
