package sternwright.app.desk.season;

import java.util.List;
import java.util.stream.Collectors;
import sternwright.season.dated.Meaning;
import sternwright.season.dated.WorkingTime;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.replan.Move;
import sternwright.season.replan.Replanner;

/** Says in one line what a repair at once moves, while a better plan is searched for. */
final class RepairWords {
    private static final int MOST_NAMED = 4;

    private RepairWords() {}

    static String of(Replanner replanner, SeasonOfYard season) {
        int promises = season.request().promises().size();
        List<Move> moves = replanner.moves();
        if (moves.isEmpty()) {
            return "Repaired at once: none of " + promises + " promised dates moves. Looking for a better plan ...";
        }
        String named = moves.stream()
                .limit(MOST_NAMED)
                .map(m -> words(m, season.meanings().get(m.operation()), season.time()))
                .collect(Collectors.joining("; "));
        return "Repaired at once: " + moves.size() + " of " + promises + " promised dates move: " + named
                + (moves.size() > MOST_NAMED ? "; ..." : ".") + " Looking for a better plan ...";
    }

    private static String words(Move move, Meaning meaning, WorkingTime time) {
        return meaning.boatName() + ", " + meaning.operation() + ", from " + time.date(move.oldStartQ()) + " to "
                + time.date(move.newStartQ());
    }
}
