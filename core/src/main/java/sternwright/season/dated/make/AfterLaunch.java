package sternwright.season.dated.make;

import static sternwright.season.dated.WorkingTime.QUARTERS_PER_DAY;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sternwright.boat.Boat;
import sternwright.season.Due;
import sternwright.season.dated.Step;
import sternwright.visit.planned.PlannedVisit;

/** What is done afloat soon after the launch: first what wants the boat settled, then the sea trial. */
final class AfterLaunch {
    private final OperationMaker make;
    private final Boat boat;

    AfterLaunch(OperationMaker make, Boat boat) {
        this.make = make;
        this.boat = boat;
    }

    /** The works of afloat visits that belong to a launch; the last operations of the stay. */
    List<Integer> all(List<PlannedVisit> visits, int half, int launch) {
        List<Integer> operations = new ArrayList<>();
        for (PlannedVisit visit : visits) {
            for (WorkGroup group : WorkGroup.of(visit, Step.WORK)) {
                String name =
                        group.step() == Step.WORK ? "afloat, " + SkillKinds.words(group.skills()) : group.operation();
                var draft = new OperationMaker.Draft(
                        half,
                        group.step(),
                        name,
                        make.time.quarters(group.minutes()),
                        PartsWaitedFor.earliest(make, boat.id(), group),
                        Due.NONE,
                        "soon after the launch");
                operations.add(make.work(boat, draft, group.works(), group.minutes(), group.skills()));
            }
        }
        return follow(operations, launch);
    }

    /** Lets operations follow a launch; the last operations of the stay. */
    List<Integer> follow(List<Integer> operations, int launch) {
        int settling = make.times().settlingDays() * QUARTERS_PER_DAY;
        int soon = make.times().trialWithinDays() * QUARTERS_PER_DAY;
        List<Integer> settled = new ArrayList<>();
        List<Integer> others = new ArrayList<>();
        for (int o : operations) {
            (make.lean.meanings.get(o).step() == Step.SETTLED ? settled : others).add(o);
        }
        others.sort(Comparator.comparing(o -> make.lean.meanings.get(o).step() == Step.TRIAL));
        List<Integer> inTurn = new ArrayList<>(others);
        int trials = (int) others.stream()
                .filter(o -> make.lean.meanings.get(o).step() == Step.TRIAL)
                .count();
        inTurn.addAll(others.size() - trials, settled);
        make.lean.oneAfterAnother(inTurn);
        int length = operations.stream()
                .mapToInt(o -> make.lean.operations.get(o).lengthQ())
                .sum();
        settled.forEach(o -> make.lean.within(launch, o, settling, settling + soon + length));
        for (int o : others) {
            make.lean.within(launch, o, 0, settling + soon + length + QUARTERS_PER_DAY);
        }
        return operations.isEmpty() ? List.of(launch) : List.copyOf(operations);
    }
}
