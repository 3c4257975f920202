package sternwright.season.relief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sternwright.season.Operation;
import sternwright.season.PlaceClass;
import sternwright.season.Promise;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.planner.Progress;
import sternwright.season.planner.SeasonAnswer;
import sternwright.season.planner.SeasonPlanner;
import sternwright.season.sample.RandomSeason;
import sternwright.season.search.Budget;

/** A season that can't be planned names the visits that clash and what would be enough. */
class WhyNoSeasonTest {
    /** Three boats of eight must all have their lay-up in the same two quarters; engine hands are fewer. */
    private static SeasonProblem crowded() {
        SeasonProblem season = RandomSeason.of(8, 6, 5);
        List<Operation> operations = new ArrayList<>();
        int squeezed = 0;
        for (Operation o : season.operations()) {
            boolean layUp = o.name().equals("lay-up") && squeezed++ < 4;
            operations.add(layUp ? o.within(20, 20 + o.lengthQ()) : o);
        }
        return season.operations(operations);
    }

    private static SeasonAnswer.NoPlan refused(SeasonProblem season) {
        return assertThrows(
                SeasonAnswer.NoPlan.class,
                () -> SeasonPlanner.plan(
                        season, Budget.iterations(50), 1, SeasonPlanner.BoundPace.NONE, Progress.SILENT));
    }

    @Test
    void namesTheSmallestClashProvesItAndFindsARelief() {
        SeasonProblem season = crowded();
        NoSeason why = WhyNoSeason.of(season, refused(season).operations(), 1, 20);
        assertTrue(why.proved(), why.sentence());
        assertTrue(why.clash().size() >= 2 && why.clash().size() <= 4, why.clash() + " " + why.sentence());
        why.clash()
                .forEach(v -> assertTrue(
                        why.sentence().contains(season.visits().get(v).boat())));
        NoSeason.Relief first = why.reliefs().get(0);
        assertTrue(first.enough(), why.reliefs().toString());
        assertTrue(why.reliefs().stream().anyMatch(r -> r.kind() == NoSeason.Relief.Kind.TURN_AWAY && r.enough()));
    }

    @Test
    void whatIsEnoughComesFirstThePricedByPriceAndTurningAwayLast() {
        SeasonProblem season = crowded();
        List<NoSeason.Relief> enough = WhyNoSeason.of(season, refused(season).operations(), 1, 20).reliefs().stream()
                .takeWhile(NoSeason.Relief::enough)
                .toList();
        assertEquals(
                NoSeason.Relief.Kind.TURN_AWAY, enough.get(enough.size() - 1).kind());
        List<Long> priced =
                enough.stream().map(NoSeason.Relief::points).filter(p -> p > 0).toList();
        assertEquals(priced.stream().sorted().toList(), priced);
        NoSeason.Relief away = enough.get(enough.size() - 1);
        away.visits()
                .forEach(v -> assertTrue(
                        away.sentence().contains(season.visits().get(v).boat())));
    }

    /** Every launch is promised for the same two quarters, more than the hoists can; a week later they may. */
    @Test
    void anotherWeekCostsThePromisesItMoves() {
        SeasonProblem free = RandomSeason.of(6, 10, 5);
        List<Integer> plan = SeasonPlanner.plan(
                        free, Budget.iterations(50), 1, SeasonPlanner.BoundPace.NONE, Progress.SILENT)
                .plan()
                .startQ();
        int first = IntStream.range(0, plan.size())
                .filter(i -> free.operations().get(i).name().equals("launch"))
                .map(plan::get)
                .min()
                .orElseThrow();
        List<Operation> operations = new ArrayList<>();
        List<Promise> promises = new ArrayList<>();
        for (Operation o : free.operations()) {
            boolean launch = o.name().equals("launch");
            if (launch) {
                promises.add(new Promise(operations.size(), first));
            }
            operations.add(launch ? o.within(o.earliestQ(), first + o.lengthQ()) : o);
        }
        SeasonProblem season = free.operations(operations).promising(promises);
        NoSeason why = WhyNoSeason.of(season, refused(season).operations(), 1, 20);
        NoSeason.Relief later = why.reliefs().stream()
                .filter(r -> r.sentence().startsWith("the last dates"))
                .findFirst()
                .orElseThrow();
        System.err.println(why);
        assertTrue(
                !later.enough()
                        || later.points()
                                >= (long) why.clash().size() * season.weights().promiseMoved(),
                later.toString());
    }

    @Test
    void aBoatThatFitsNowhereStandsAlone() {
        SeasonProblem season = RandomSeason.of(6, 6, 8);
        SeasonProblem noPlace =
                season.in(season.yard().places(List.of(new PlaceClass("short", 0), new PlaceClass("long", 0))));
        NoSeason why = WhyNoSeason.of(noPlace, refused(noPlace).operations(), 1, 10);
        assertEquals(1, why.clash().size(), why.sentence());
        assertTrue(why.proved());
        assertTrue(why.sentence().contains("even if it were the only boat"));
    }

    @Test
    void oneMoreNeverCostsMore() {
        SeasonProblem season = RandomSeason.of(10, 6, 3);
        SeasonPlan plan = SeasonPlanner.plan(
                        season, Budget.iterations(400), 1, SeasonPlanner.BoundPace.steps(100), Progress.SILENT)
                .plan();
        List<OneMore> worth = WorthOfOneMore.of(season, plan, () -> Budget.iterations(200), 1);
        assertFalse(worth.isEmpty());
        for (int x = 1; x < worth.size(); x++) {
            assertTrue(worth.get(x).saves() <= worth.get(x - 1).saves());
            assertTrue(worth.get(x).saves() >= 0);
        }
    }
}
