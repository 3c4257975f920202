package sternwright.season.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sternwright.season.Due;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.check.SeasonCheck;
import sternwright.season.planner.Progress;
import sternwright.season.planner.SeasonPlanner;
import sternwright.season.sample.GeneratedSeason;
import sternwright.season.search.Budget;
import sternwright.season.search.Watch;

/** After a bad week in November few promises move, each with its reason, and what has begun stays. */
class ReplannerTest {
    private static final int TODAY_DAY = 45;
    private static final int TODAY_Q = 4 * TODAY_DAY;
    private static SeasonProblem season = GeneratedSeason.of(300, 1);
    private static SeasonPlan plan = new SeasonPlan(List.of(), new sternwright.season.Cost(0, 0, 0, 0, 0, 0), "");

    @BeforeAll
    static void planTheSeason() {
        plan = SeasonPlanner.plan(season, Budget.iterations(2000), 1, SeasonPlanner.BoundPace.NONE, Progress.SILENT)
                .plan();
        season = season.promising(Promises.of(season, plan));
    }

    private static int next(String name, int withinQ) {
        return IntStream.range(0, plan.startQ().size())
                .filter(i -> season.operations().get(i).name().equals(name))
                .filter(i -> plan.startQ().get(i) >= TODAY_Q && plan.startQ().get(i) < TODAY_Q + withinQ)
                .findFirst()
                .orElseThrow();
    }

    private static List<Event> badWeek() {
        int drive = next("drive service", 60);
        Event.EmergencyLift lift = new Event.EmergencyLift(
                "Emergency",
                1,
                1,
                List.of(new Event.Work("wash", 2, 1), new Event.Work("drive service", 1, 4)),
                TODAY_Q,
                new Due(Due.Kind.WANTED, TODAY_Q + 16, 20, 0));
        return List.of(
                new Event.PersonAway(0, TODAY_DAY, TODAY_DAY + 4),
                new Event.PartLate(drive, plan.startQ().get(drive) + 20),
                lift);
    }

    @Test
    void fewPromisesMoveAndEachHasAReason() {
        Replanner replanner = new Replanner(season, plan, TODAY_Q, badWeek());
        long repaired = replanner.plan().cost().total();
        replanner.polish(Budget.iterations(1500), 1, Watch.SILENT);
        assertTrue(replanner.plan().cost().total() <= repaired);
        assertEquals(List.of(), SeasonCheck.of(replanner.season(), replanner.plan()));
        List<Move> moves = replanner.moves();
        long ahead =
                season.promises().stream().filter(p -> p.startQ() >= TODAY_Q).count();
        assertTrue(moves.size() <= Math.max(4, ahead / 100), moves.size() + " of " + ahead + " moved");
        moves.forEach(m -> assertTrue(!m.reason().isBlank()));
        long differ = season.promises().stream()
                .filter(p -> replanner.plan().startQ().get(p.operation()) / 4 != p.startQ() / 4)
                .count();
        assertEquals(differ, moves.size(), "no date moves silently");
    }

    @Test
    void whatHasBegunStays() {
        Replanner replanner = new Replanner(season, plan, TODAY_Q, badWeek());
        replanner.polish(Budget.iterations(300), 2, Watch.SILENT);
        for (int i = 0; i < plan.startQ().size(); i++) {
            int old = plan.startQ().get(i);
            int now = replanner.plan().startQ().get(i);
            assertTrue(old < TODAY_Q ? now == old : now >= TODAY_Q, season.phrase(i) + " " + old + " " + now);
        }
    }

    @Test
    void nothingMovesWhenNothingHappened() {
        Replanner replanner = new Replanner(season, plan, TODAY_Q, List.of());
        assertEquals(plan.startQ(), replanner.plan().startQ());
        assertEquals(List.of(), replanner.moves());
    }

    @Test
    void hoistDownAndOwnersDateAreNamedAsReasons() {
        int launch = next("lift", 8);
        List<Event> events = new ArrayList<>();
        events.add(new Event.HoistDown(0, TODAY_DAY, TODAY_DAY + 1));
        events.add(new Event.HoistDown(1, TODAY_DAY, TODAY_DAY + 1));
        Replanner replanner = new Replanner(season, plan, TODAY_Q, events);
        Move move = replanner.moves().stream()
                .filter(m -> m.operation() == launch)
                .findFirst()
                .orElseThrow();
        assertTrue(move.reason().contains("out of order"), move.reason());
        assertTrue(move.newStartQ() >= 4 * (TODAY_DAY + 2));
        int spring = IntStream.range(0, plan.startQ().size())
                .filter(i -> season.operations().get(i).name().equals("launch")
                        && plan.startQ().get(i) > 620)
                .findFirst()
                .orElseThrow();
        Replanner sooner = new Replanner(
                season,
                plan,
                TODAY_Q,
                List.of(new Event.OwnersDate(spring, plan.startQ().get(spring) - 40)));
        sooner.polish(Budget.iterations(300), 3, Watch.SILENT);
        Move moved = sooner.moves().stream()
                .filter(m -> m.operation() == spring)
                .findFirst()
                .orElseThrow();
        assertTrue(moved.reason().contains("owner"), moved.reason());
        assertTrue(PlanComparison.of(season, plan, sooner.plan()).otherDay().stream()
                .anyMatch(d -> d.operation() == spring));
    }
}
