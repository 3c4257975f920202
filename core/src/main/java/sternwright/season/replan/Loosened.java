package sternwright.season.replan;

import java.util.ArrayList;
import java.util.List;
import sternwright.season.Lag;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;

/**
 * A season in which work may follow begun work later than was agreed: what has begun can't be put off, so its greatest distances are
 * the first thing to give way.
 *
 * @param season the season with those distances left out
 * @param overruns operations whose greatest distance was left out
 */
record Loosened(SeasonProblem season, List<Integer> overruns) {
    static Loosened of(SeasonProblem season, SeasonPlan old, int todayQ) {
        List<Lag> lags = new ArrayList<>();
        List<Integer> overruns = new ArrayList<>();
        for (Lag lag : season.lags()) {
            boolean hangs = begun(old, todayQ, lag.before()) && !begun(old, todayQ, lag.after());
            if (hangs && lag.maxQ() < Lag.FREE) {
                lags.add(new Lag(lag.before(), lag.after(), lag.minQ(), Lag.FREE));
                overruns.add(lag.after());
            } else {
                lags.add(lag);
            }
        }
        SeasonProblem loose = new SeasonProblem(
                season.yard(),
                season.visits(),
                season.halves(),
                season.operations(),
                lags,
                season.stays(),
                season.promises(),
                season.weights());
        return new Loosened(loose, overruns);
    }

    private static boolean begun(SeasonPlan old, int todayQ, int operation) {
        return operation < old.startQ().size() && old.startQ().get(operation) < todayQ;
    }
}
