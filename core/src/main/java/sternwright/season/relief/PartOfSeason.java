package sternwright.season.relief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import sternwright.season.Half;
import sternwright.season.Lag;
import sternwright.season.Operation;
import sternwright.season.Promise;
import sternwright.season.SeasonProblem;
import sternwright.season.Stay;
import sternwright.season.Visit;

/** A season with some of its visits only, in the same yard. */
final class PartOfSeason {
    private PartOfSeason() {}

    static SeasonProblem of(SeasonProblem problem, Set<Integer> keep) {
        List<Visit> visits = new ArrayList<>();
        int[] newVisit = new int[problem.visits().size()];
        for (int v = 0; v < newVisit.length; v++) {
            newVisit[v] = keep.contains(v) ? visits.size() : -1;
            if (keep.contains(v)) {
                visits.add(problem.visits().get(v));
            }
        }
        List<Half> halves = new ArrayList<>();
        int[] newHalf = new int[problem.halves().size()];
        Arrays.fill(newHalf, -1);
        for (int h = 0; h < newHalf.length; h++) {
            Half half = problem.halves().get(h);
            if (newVisit[half.visit()] >= 0) {
                newHalf[h] = halves.size();
                halves.add(new Half(newVisit[half.visit()], half.name()));
            }
        }
        List<Operation> operations = new ArrayList<>();
        int[] newOperation = new int[problem.operations().size()];
        for (int i = 0; i < newOperation.length; i++) {
            Operation o = problem.operations().get(i);
            newOperation[i] = newHalf[o.half()] < 0 ? -1 : operations.size();
            if (newHalf[o.half()] >= 0) {
                operations.add(inHalf(o, newHalf[o.half()]));
            }
        }
        return new SeasonProblem(
                problem.yard(),
                visits,
                halves,
                operations,
                lags(problem, newOperation),
                stays(problem, newOperation),
                promises(problem, newOperation),
                problem.weights());
    }

    private static Operation inHalf(Operation o, int half) {
        return new Operation(
                o.name(),
                half,
                o.lengthQ(),
                o.earliestQ(),
                o.latestEndQ(),
                o.skill(),
                o.hands(),
                o.liftClass(),
                o.days(),
                o.needs(),
                o.due());
    }

    private static List<Lag> lags(SeasonProblem problem, int[] to) {
        return problem.lags().stream()
                .filter(l -> to[l.before()] >= 0 && to[l.after()] >= 0)
                .map(l -> new Lag(to[l.before()], to[l.after()], l.minQ(), l.maxQ()))
                .toList();
    }

    private static List<Stay> stays(SeasonProblem problem, int[] to) {
        return problem.stays().stream()
                .filter(s -> to[s.lift()] >= 0 && to[s.launch()] >= 0)
                .map(s -> new Stay(to[s.lift()], to[s.launch()], s.placeClass()))
                .toList();
    }

    private static List<Promise> promises(SeasonProblem problem, int[] to) {
        return problem.promises().stream()
                .filter(p -> to[p.operation()] >= 0)
                .map(p -> new Promise(to[p.operation()], p.startQ(), p.movedCost()))
                .toList();
    }
}
