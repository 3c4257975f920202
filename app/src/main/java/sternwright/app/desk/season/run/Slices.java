package sternwright.app.desk.season.run;

import java.time.Duration;
import java.util.List;
import java.util.function.LongSupplier;
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
    private double spentS;
    private boolean stopped;

    /** The run is another program's by now: this one was taken for dead. */
    static final class TakenOver extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    Slices(SeasonRuns runs, SeasonRun run, String node, Duration slice) {
        this.runs = runs;
        this.run = run;
        this.node = node;
        this.sliceS = slice.toMillis() / 1000.0;
        this.ask = RunAsk.of(run.ask());
        this.spentS = run.spentS();
    }

    /** Returns true if a person stopped it. */
    boolean work(Shelf shelf, List<Published> kept, LongSupplier nanoClock) {
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
            spentS += now;
            keep(best);
        } while (spentS < ask.seconds() && !stopped);
        return stopped;
    }

    private void keep(PlannedSeason best) {
        String plan = SeasonSheets.PLAN.write(best.dated().published(ask.today()));
        double point = best.season().pointValue();
        Double known = run.bound();
        double bound = Math.max(known == null ? 0 : known, best.dated().bound());
        if (!runs.keep(run.id(), node, spentS, best.plan().cost().total() * point, bound, plan)) {
            throw new TakenOver();
        }
    }

    /** Tells the store how far it is and asks whether to stop. */
    private final class Watch implements Onlooker {
        private final double from;
        private final double length;
        private String says = "";

        Watch(double from, double length) {
            this.from = from;
            this.length = length;
        }

        @Override
        public void says(String what) {
            says = what;
            beat(from);
        }

        @Override
        public boolean goOn(double spent, double cost, double bound) {
            beat(from + spent * length);
            stopped = runs.one(run.id()).map(SeasonRun::stopAsked).orElse(true);
            return !stopped;
        }

        private void beat(double seconds) {
            if (!runs.beat(run.id(), node, says, seconds)) {
                throw new TakenOver();
            }
        }
    }
}
