package sternwright.season.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sternwright.season.Cost;
import sternwright.season.Hoist;
import sternwright.season.Operation;
import sternwright.season.PlaceClass;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.Technician;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.check.Violation.Kind;
import sternwright.season.sample.GeneratedSeason;
import sternwright.season.sample.RandomSeason;
import sternwright.season.search.FirstPlan;

/** A sound plan passes; each planted fault is found and named. */
class SeasonCheckTest {
    private final SeasonProblem season = GeneratedSeason.of(300, 3);
    private final SeasonPlan plan = planned(season);

    private static SeasonPlan planned(SeasonProblem season) {
        SeasonArrays a = SeasonArrays.of(season);
        Timetable t = new Timetable(a, 20);
        assertEquals(List.of(), FirstPlan.fill(t, 1));
        return Plans.of(a, t.start, "first");
    }

    private void finds(Kind kind, SeasonProblem judged, SeasonPlan candidate) {
        List<Kind> kinds =
                SeasonCheck.of(judged, candidate).stream().map(Violation::kind).toList();
        assertTrue(kinds.contains(kind), "expected " + kind + ", found " + kinds);
    }

    private SeasonPlan moved(int operation, int startQ) {
        List<Integer> starts = new ArrayList<>(plan.startQ());
        starts.set(operation, startQ);
        return new SeasonPlan(starts, plan.cost(), plan.how());
    }

    private int first(String name) {
        return IntStream.range(0, season.operations().size())
                .filter(i -> season.operations().get(i).name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void passesASoundPlan() {
        assertEquals(List.of(), SeasonCheck.of(season, plan));
    }

    @Test
    void findsAMissingStart() {
        finds(Kind.INCOMPLETE, season, new SeasonPlan(plan.startQ().subList(1, 50), plan.cost(), plan.how()));
    }

    @Test
    void findsAStartBeforeTheRelease() {
        int lift = first("lift");
        finds(Kind.WINDOW, season, moved(lift, season.operations().get(lift).earliestQ() - 1));
        finds(Kind.WINDOW, season, moved(lift, season.yard().axis().quarters()));
        finds(Kind.WINDOW, season, moved(lift, -1));
    }

    @Test
    void findsALiftOnANeapTide() {
        int lift = IntStream.range(0, season.operations().size())
                .filter(i -> season.operations().get(i).days() >= 0)
                .findFirst()
                .orElseThrow();
        List<Integer> spring = season.yard().daySets().get(0).days();
        int neap = IntStream.range(100, 200)
                .filter(d -> !spring.contains(d))
                .findFirst()
                .orElseThrow();
        finds(Kind.TIDE, season, moved(lift, neap * 4));
    }

    @Test
    void findsAWashTooLateAfterTheLift() {
        int wash = first("wash");
        finds(Kind.LAG, season, moved(wash, plan.startQ().get(wash) + 40));
    }

    @Test
    void findsALayUpBeforeTheWash() {
        int layUp = first("lay-up");
        int lift = first("lift");
        finds(Kind.LAG, season, moved(layUp, plan.startQ().get(lift)));
    }

    @Test
    void findsLiftsWithoutHoist() {
        List<Hoist> hoists = season.yard().hoists().stream()
                .map(h -> new Hoist(h.name(), List.of(0, 0, 0, 0), List.of()))
                .toList();
        finds(Kind.HOIST, season.in(season.yard().hoists(hoists)), plan);
    }

    @Test
    void findsAHoistThatIsDown() {
        List<Integer> always =
                IntStream.range(0, season.yard().axis().days()).boxed().toList();
        List<Hoist> hoists = season.yard().hoists().stream()
                .map(h -> new Hoist(h.name(), h.slotsByQuarter(), always))
                .toList();
        finds(Kind.HOIST, season.in(season.yard().hoists(hoists)), plan);
    }

    @Test
    void findsBoatsWithoutPlace() {
        List<PlaceClass> few = season.yard().placeClasses().stream()
                .map(c -> new PlaceClass(c.name(), 1))
                .toList();
        finds(Kind.PLACE, season.in(season.yard().places(few)), plan);
    }

    @Test
    void findsWorkWithoutPeople() {
        List<Technician> noEngine = season.yard().technicians().stream()
                .map(t -> new Technician(t.name(), List.of(2), t.awayDays()))
                .toList();
        finds(Kind.PEOPLE, season.in(season.yard().technicians(noEngine)), plan);
        List<Integer> none = Collections.nCopies(season.yard().axis().weeks(), 0);
        List<Technician> one = season.yard().technicians().subList(0, 1);
        finds(Kind.PEOPLE, season.in(season.yard().technicians(one).extraHands(none)), plan);
    }

    @Test
    void findsAPoolThatRunsOut() {
        SeasonProblem small = RandomSeason.of(8, 6, 11);
        SeasonPlan sound = planned(small);
        List<Operation> hungry = small.operations().stream()
                .map(o -> o.needs().isEmpty()
                        ? o
                        : new Operation(
                                o.name(),
                                o.half(),
                                o.lengthQ(),
                                o.earliestQ(),
                                o.latestEndQ(),
                                o.skill(),
                                o.hands(),
                                o.liftClass(),
                                o.days(),
                                List.of(new sternwright.season.Need(0, 9)),
                                o.due()))
                .toList();
        finds(Kind.POOL, small.operations(hungry), sound);
    }

    @Test
    void findsACostThatIsNotTheCost() {
        Cost c = plan.cost();
        Cost wrong = new Cost(c.frost(), c.promises(), c.late() + 1, c.early(), c.overtime(), c.uneven());
        finds(Kind.COST, season, new SeasonPlan(plan.startQ(), wrong, plan.how()));
        finds(Kind.COST, season, moved(first("electrics"), plan.startQ().get(first("electrics")) + 1));
    }
}
