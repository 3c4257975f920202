package sternwright.app.desk.season.board;

import java.util.Optional;
import java.util.concurrent.ThreadPoolExecutor;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.run.SeasonJobs;
import sternwright.app.files.problem.BadInput;
import sternwright.app.store.job.SeasonRun;

/**
 * The plans of runs, looked through against the yard as it is now. The plan of a run made here lately is there at once; any other is
 * looked through behind the asker, once for a state of the yard, for where the visits of thousands of boats are to be planned again
 * that takes minutes.
 */
public final class JudgedRuns implements AutoCloseable {
    private static final int WAITING = 10;

    private final OpenYard yard;
    private final SeasonJobs jobs;
    private final ThreadPoolExecutor worker;
    private final Answers<String, Boolean> judged;

    /**
     * Ready to be asked.
     *
     * @param yard the yard
     * @param jobs the runs
     */
    public JudgedRuns(OpenYard yard, SeasonJobs jobs) {
        this.yard = yard;
        this.jobs = jobs;
        worker = Answers.behind("judging-runs", WAITING);
        judged = new Answers<>(worker);
    }

    /**
     * The season of a run that has a plan.
     *
     * @param run a run with a plan
     * @return the season; empty while it is being looked through
     * @throws BadInput if the yard has changed so that the plan is none any more; found once for a state of the yard
     */
    public Optional<PlannedSeason> of(SeasonRun run) {
        Optional<PlannedSeason> made = jobs.made(run);
        if (made.isPresent() || run.plan() == null) {
            return made;
        }
        String question = question(run);
        try {
            if (judged.ask(question, () -> jobs.planned(run).isPresent()).isPresent()) {
                made = jobs.made(run);
                if (made.isEmpty()) {
                    // Given up meanwhile, for memory or for another run: whoever asks again has it looked through
                    // again.
                    judged.forget(question);
                }
            }
            return made;
        } catch (BadInput changed) {
            throw changed;
        } catch (RuntimeException fault) {
            // A disk that did not answer once may answer the next time.
            judged.forget(question);
            throw fault;
        }
    }

    /**
     * Whether a plan is being looked through just now, so that asking for it would find nothing.
     *
     * @param run a run, its plan may be left out
     * @return false also where it was never asked for
     */
    public boolean underWay(SeasonRun run) {
        return judged.underWay(question(run));
    }

    private String question(SeasonRun run) {
        return String.join(
                " ",
                run.id(),
                Double.toString(run.spentS()),
                yard.state(),
                yard.today().toString());
    }

    /** Ends what is being worked out. */
    @Override
    public void close() {
        worker.shutdownNow();
    }
}
