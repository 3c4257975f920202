package sternwright.bench.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import sternwright.season.Due;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.planner.Progress;
import sternwright.season.planner.SeasonPlanner;
import sternwright.season.replan.Event;
import sternwright.season.replan.Move;
import sternwright.season.replan.Promises;
import sternwright.season.replan.Replanner;
import sternwright.season.sample.GeneratedSeason;
import sternwright.season.search.Budget;
import sternwright.season.search.Watch;

/**
 * A bad morning in November: for every 300 boats one technician ill for a week, three parts late and one emergency lift; how soon
 * a plan is there, and how many promised dates move. The peer is the same season planned again without a thought for promises.
 *
 * <p>Command: {@code bench/run season-replan [boats] [seconds to plan] [seconds to re-plan] [seed]}.
 */
public final class ReplanBench {
    private static final int TODAY = 45;

    private ReplanBench() {}

    /**
     * Runs the measurement.
     *
     * @param args boats (300), seconds for the plan (10), seconds for the new plan (10), seed (1)
     */
    public static void main(String[] args) {
        int boats = args.length > 0 ? Integer.parseInt(args[0]) : 300;
        double plan = args.length > 1 ? Double.parseDouble(args[1]) : 10;
        double replan = args.length > 2 ? Double.parseDouble(args[2]) : 10;
        long seed = args.length > 3 ? Long.parseLong(args[3]) : 1;
        SeasonProblem season = GeneratedSeason.of(boats, seed);
        SeasonPlan published = SeasonPlanner.plan(
                        season,
                        Budget.seconds(plan, System::nanoTime),
                        7,
                        SeasonPlanner.BoundPace.NONE,
                        Progress.SILENT)
                .plan();
        SeasonProblem promised = season.promising(Promises.of(season, published));
        int today = TODAY * season.yard().axis().quartersPerDay();
        long ahead =
                promised.promises().stream().filter(p -> p.startQ() >= today).count();
        List<Event> events = events(promised, published, boats, today, new Random(seed + 77));
        System.out.printf(
                "%d boats, published plan %d, %d promised dates ahead, %d events%n",
                boats, published.cost().total(), ahead, events.size());
        long began = System.nanoTime();
        Replanner replanner = new Replanner(promised, published, today, events);
        System.out.printf("repair    %7.3f s  ", (System.nanoTime() - began) / 1e9);
        report(replanner, ahead);
        replanner.polish(Budget.seconds(replan, System::nanoTime), 7, Watch.SILENT);
        System.out.printf("polished  %7.3f s  ", (System.nanoTime() - began) / 1e9);
        report(replanner, ahead);
        for (Move move : replanner.moves()) {
            System.out.printf(
                    "  %s: day %d to day %d, %s%n",
                    promised.phrase(move.operation()), move.oldStartQ() / 4, move.newStartQ() / 4, move.reason());
        }
        forgetful(season, published, today, events, promised, replan, ahead);
    }

    private static void report(Replanner replanner, long ahead) {
        int moved = replanner.moves().size();
        System.out.printf(
                "cost %d, %d dates moved (%.2f %%)%n", replanner.plan().cost().total(), moved, 100.0 * moved / ahead);
    }

    private static void forgetful(
            SeasonProblem season,
            SeasonPlan published,
            int today,
            List<Event> events,
            SeasonProblem promised,
            double seconds,
            long ahead) {
        Replanner forgetful = new Replanner(season, published, today, events);
        forgetful.polish(Budget.seconds(seconds, System::nanoTime), 7, Watch.SILENT);
        long moved = promised.promises().stream()
                .filter(p -> p.startQ() >= today)
                .filter(p -> forgetful.plan().startQ().get(p.operation()) / 4 != p.startQ() / 4)
                .count();
        System.out.printf(
                "peer, promises forgotten: cost %d without them, %d dates moved (%.1f %%)%n",
                forgetful.plan().cost().total(), moved, 100.0 * moved / ahead);
    }

    private static List<Event> events(SeasonProblem season, SeasonPlan plan, int boats, int today, Random random) {
        int of = Math.max(1, boats / 300);
        List<Event> events = new ArrayList<>();
        List<Integer> engine = IntStream.range(0, season.yard().technicians().size())
                .filter(t -> season.yard().technicians().get(t).skills().contains(0))
                .boxed()
                .toList();
        List<Integer> soon = IntStream.range(0, plan.startQ().size())
                .filter(i -> plan.startQ().get(i) >= today && plan.startQ().get(i) < today + 60)
                .filter(i -> List.of("electrics", "drive service", "lay-up")
                        .contains(season.operations().get(i).name()))
                .boxed()
                .toList();
        for (int x = 0; x < of; x++) {
            events.add(new Event.PersonAway(engine.get(random.nextInt(engine.size())), TODAY, TODAY + 4));
            for (int part = 0; part < 3; part++) {
                int operation = soon.get(random.nextInt(soon.size()));
                events.add(new Event.PartLate(operation, plan.startQ().get(operation) + 20));
            }
            events.add(new Event.EmergencyLift(
                    "Emergency " + (x + 1),
                    1,
                    1,
                    List.of(new Event.Work("wash", 2, 1), new Event.Work("drive service", 1, 4)),
                    today,
                    new Due(Due.Kind.WANTED, today + 16, 20, 0)));
        }
        return events;
    }
}
