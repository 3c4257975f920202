package sternwright.season.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sternwright.season.Axis;
import sternwright.season.Due;
import sternwright.season.Half;
import sternwright.season.Hoist;
import sternwright.season.LiftClass;
import sternwright.season.Operation;
import sternwright.season.Promise;
import sternwright.season.SeasonProblem;
import sternwright.season.Visit;
import sternwright.season.Weights;
import sternwright.season.Yard;
import sternwright.season.check.SeasonCheck;
import sternwright.season.planner.Progress;
import sternwright.season.planner.SeasonPlanner;
import sternwright.season.search.Budget;

/** Two boats were promised the only launch of one day: the one whose promise is dearer to move keeps it. */
class PromisePriceTest {
    private static final int DAY = 2;

    @ParameterizedTest
    @CsvSource({"500, 30, 0", "30, 500, 1", "500, -1, 0", "-1, 500, 1", "0, -1, 1"})
    void theDearerPromiseIsKept(int teal, int avocet, int kept) {
        SeasonProblem season = twoLaunches(List.of(new Promise(0, DAY, teal), new Promise(1, DAY, avocet)));
        var answer =
                SeasonPlanner.plan(season, Budget.iterations(400), 1, SeasonPlanner.BoundPace.NONE, Progress.SILENT);
        assertEquals(List.of(), SeasonCheck.of(season, answer.plan()));
        assertEquals(DAY, answer.plan().startQ().get(kept));
        int usual = season.weights().promiseMoved();
        int price = kept == 0 ? avocet : teal;
        long cheaper =
                price == 0 ? 0 : (price < 0 ? usual : price) + season.weights().promisePerQ();
        assertEquals(cheaper, answer.plan().cost().total());
    }

    /** One hoist, one launch a day, five days. */
    private static SeasonProblem twoLaunches(List<Promise> promises) {
        Axis axis = new Axis(1, 5, 1);
        List<Operation> launches = new ArrayList<>();
        for (int boat = 0; boat < 2; boat++) {
            launches.add(
                    new Operation("launch", boat, 1, 0, 5, Operation.NONE, 0, 0, Operation.NONE, List.of(), Due.NONE));
        }
        Yard yard = new Yard(
                axis,
                List.of(),
                List.of(),
                List.of(0),
                0,
                List.of(new Hoist("hoist", List.of(1), List.of())),
                List.of(new LiftClass("any", List.of(0))),
                List.of(),
                List.of(),
                List.of());
        return new SeasonProblem(
                yard,
                List.of(new Visit("Teal", "visit"), new Visit("Avocet", "visit")),
                List.of(new Half(0, "launch"), new Half(1, "launch")),
                launches,
                List.of(),
                List.of(),
                promises,
                Weights.GENERATED);
    }
}
