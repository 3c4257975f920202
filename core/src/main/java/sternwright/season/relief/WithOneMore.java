package sternwright.season.relief;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import sternwright.season.Axis;
import sternwright.season.Hoist;
import sternwright.season.LiftClass;
import sternwright.season.Operation;
import sternwright.season.PlaceClass;
import sternwright.season.SeasonProblem;
import sternwright.season.Technician;
import sternwright.season.Yard;

/** The same season in a yard that has one more of something, or some weeks more. */
final class WithOneMore {
    /** A season with one more of something. */
    record Wider(String what, SeasonProblem season) {}

    private WithOneMore() {}

    /** One more hoist for each class of boats, one more place of each length, one more technician for each kind of work. */
    static List<Wider> ofEverything(SeasonProblem problem) {
        return ofEverything(problem, 1);
    }

    /** So many more of each. */
    static List<Wider> ofEverything(SeasonProblem problem, int more) {
        Yard yard = problem.yard();
        List<Wider> wider = new ArrayList<>();
        String many = more == 1 ? "one more " : more + " more ";
        String s = more == 1 ? " " : "s ";
        for (int c = 0; c < yard.liftClasses().size(); c++) {
            String boats = yard.liftClasses().get(c).name();
            wider.add(new Wider(many + "hoist" + s + "like " + boats, hoists(problem, c, more)));
        }
        for (int c = 0; c < yard.placeClasses().size(); c++) {
            wider.add(new Wider(many + "place" + s + yard.placeClasses().get(c).name(), places(problem, c, more)));
        }
        for (int skill = 0; skill < yard.skills().size(); skill++) {
            wider.add(new Wider(
                    many + "technician" + s + "for " + yard.skills().get(skill), technicians(problem, skill, more)));
        }
        return wider;
    }

    private static SeasonProblem hoists(SeasonProblem problem, int liftClass, int more) {
        SeasonProblem with = problem;
        for (int h = 0; h < more; h++) {
            with = hoist(with, liftClass);
        }
        return with;
    }

    private static SeasonProblem hoist(SeasonProblem problem, int liftClass) {
        Yard yard = problem.yard();
        List<Hoist> hoists = new ArrayList<>(yard.hoists());
        Hoist like = hoists.get(yard.liftClasses().get(liftClass).hoists().get(0));
        hoists.add(new Hoist("one more", like.slotsByQuarter(), List.of()));
        List<LiftClass> classes = new ArrayList<>();
        for (LiftClass was : yard.liftClasses()) {
            List<Integer> able = new ArrayList<>(was.hoists());
            if (able.containsAll(yard.liftClasses().get(liftClass).hoists())) {
                able.add(hoists.size() - 1);
            }
            classes.add(new LiftClass(was.name(), able));
        }
        return problem.in(new Yard(
                yard.axis(),
                yard.skills(),
                yard.technicians(),
                yard.extraHandsByWeek(),
                yard.evenHands(),
                hoists,
                classes,
                yard.placeClasses(),
                yard.pools(),
                yard.daySets()));
    }

    private static SeasonProblem places(SeasonProblem problem, int placeClass, int more) {
        List<PlaceClass> places = new ArrayList<>(problem.yard().placeClasses());
        PlaceClass was = places.get(placeClass);
        places.set(placeClass, new PlaceClass(was.name(), was.places() + more));
        return problem.in(problem.yard().places(places));
    }

    private static SeasonProblem technicians(SeasonProblem problem, int skill, int more) {
        List<Technician> crew = new ArrayList<>(problem.yard().technicians());
        crew.addAll(Collections.nCopies(more, new Technician("one more", List.of(skill), List.of())));
        return problem.in(problem.yard().technicians(crew));
    }

    /** The season some weeks longer: what had to end with it may end later, with the extra hands of its last week. */
    static SeasonProblem weeks(SeasonProblem problem, int more) {
        Yard yard = problem.yard();
        Axis was = yard.axis();
        Axis axis = new Axis(was.weeks() + more, was.daysPerWeek(), was.quartersPerDay());
        List<Integer> extra = IntStream.range(0, axis.weeks())
                .mapToObj(w -> yard.extraHandsByWeek().get(Math.min(w, was.weeks() - 1)))
                .toList();
        List<Operation> operations = problem.operations().stream()
                .map(o -> o.latestEndQ() == was.quarters() ? o.within(o.earliestQ(), axis.quarters()) : o)
                .toList();
        return problem.operations(operations)
                .in(new Yard(
                        axis,
                        yard.skills(),
                        yard.technicians(),
                        extra,
                        yard.evenHands(),
                        yard.hoists(),
                        yard.liftClasses(),
                        yard.placeClasses(),
                        yard.pools(),
                        yard.daySets()));
    }
}
