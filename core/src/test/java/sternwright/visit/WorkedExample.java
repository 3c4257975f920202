package sternwright.visit;

import java.time.Month;
import java.time.YearMonth;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import sternwright.visit.problem.Life;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.ServicePoint;
import sternwright.visit.problem.UseProfile;
import sternwright.visit.problem.VisitDemands;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitTariff;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkPhase;
import sternwright.visit.problem.WorkRules;
import sternwright.visit.sample.GeneratedBoats;

/** Three works, twelve months: small enough to be followed by hand. Amounts are whole units of money. */
final class WorkedExample {
    static final Set<Month> ALL_YEAR = EnumSet.allOf(Month.class);
    static final Set<Place> EITHER = Set.of(Place.AFLOAT, Place.ASHORE);
    private static final UseProfile USE = GeneratedBoats.use(120, 12);

    private WorkedExample() {}

    static VisitProblem problem() {
        return new VisitProblem(
                YearMonth.of(2026, 9),
                GeneratedBoats.calendar(true, 12),
                false,
                new VisitTariff(90, 30, 350),
                List.of(
                        new ServicePoint("engine front", 25),
                        new ServicePoint("underwater", 20),
                        new ServicePoint("pump", 15)),
                List.of(
                        work("engine oil and filter", 0, new Life(12, 100, 10, 0.84 * 120, USE), EITHER, 180, 0.4, 40),
                        work("anodes", 1, new Life(6, 0, 5, 0, USE), Set.of(Place.ASHORE), 90, 0.5, 30),
                        work("raw-water impeller", 2, new Life(12, 200, 8, 0.82 * 120, USE), EITHER, 70, 0.5, 25)),
                List.of(),
                VisitDemands.NONE);
    }

    private static Work work(String name, int point, Life life, Set<Place> places, long cost, double share, long risk) {
        return new Work(
                name,
                point,
                life,
                List.of(new WorkPhase(places, ALL_YEAR, cost)),
                0,
                share,
                risk,
                WorkRules.recurring(12, 0.35));
    }
}
