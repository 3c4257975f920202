package sternwright.season.relief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import sternwright.season.Hoist;
import sternwright.season.LiftClass;
import sternwright.season.PlaceClass;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.Technician;
import sternwright.season.Yard;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.search.Budget;
import sternwright.season.search.SeasonSearch;
import sternwright.season.search.Watch;

/** Plans on with one more hoist, place or technician, from a plan already made, and says what it saves. */
public final class WorthOfOneMore {
    private WorthOfOneMore() {}

    /**
     * The worth of one more of everything, dearest first.
     *
     * @param plan a plan of {@code problem}
     * @param budget how long to search for each of them
     */
    public static List<OneMore> of(SeasonProblem problem, SeasonPlan plan, Supplier<Budget> budget, long seed) {
        long asItIs = searched(problem, plan, budget.get(), seed);
        List<OneMore> worth = new ArrayList<>();
        Yard yard = problem.yard();
        for (int c = 0; c < yard.liftClasses().size(); c++) {
            String what =
                    "one more hoist for boats " + yard.liftClasses().get(c).name();
            worth.add(new OneMore(what, asItIs - searched(oneMoreHoist(problem, c), plan, budget.get(), seed)));
        }
        for (int c = 0; c < yard.placeClasses().size(); c++) {
            String what = "one more place " + yard.placeClasses().get(c).name();
            worth.add(new OneMore(what, asItIs - searched(oneMorePlace(problem, c), plan, budget.get(), seed)));
        }
        for (int skill = 0; skill < yard.skills().size(); skill++) {
            String what = "one more technician for " + yard.skills().get(skill);
            worth.add(
                    new OneMore(what, asItIs - searched(oneMoreTechnician(problem, skill), plan, budget.get(), seed)));
        }
        worth.sort(Comparator.comparingLong(OneMore::saves).reversed());
        return worth.stream()
                .map(w -> new OneMore(w.what(), Math.max(0, w.saves())))
                .toList();
    }

    private static long searched(SeasonProblem problem, SeasonPlan plan, Budget budget, long seed) {
        SeasonArrays a = SeasonArrays.of(problem);
        int[] starts = plan.startQ().stream().mapToInt(Integer::intValue).toArray();
        int[] better = new SeasonSearch(a, SeasonSearch.Settings.polish(seed)).improve(starts, budget, Watch.SILENT);
        return Plans.of(a, better, "with one more").cost().total();
    }

    private static SeasonProblem oneMoreHoist(SeasonProblem problem, int liftClass) {
        Yard yard = problem.yard();
        List<Hoist> hoists = new ArrayList<>(yard.hoists());
        Hoist like = hoists.get(yard.liftClasses().get(liftClass).hoists().get(0));
        hoists.add(new Hoist("one more", like.slotsByQuarter(), List.of()));
        List<LiftClass> classes = new ArrayList<>();
        for (int c = 0; c < yard.liftClasses().size(); c++) {
            LiftClass was = yard.liftClasses().get(c);
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

    private static SeasonProblem oneMorePlace(SeasonProblem problem, int placeClass) {
        List<PlaceClass> places = new ArrayList<>(problem.yard().placeClasses());
        PlaceClass was = places.get(placeClass);
        places.set(placeClass, new PlaceClass(was.name(), was.places() + 1));
        return problem.in(problem.yard().places(places));
    }

    private static SeasonProblem oneMoreTechnician(SeasonProblem problem, int skill) {
        List<Technician> crew = new ArrayList<>(problem.yard().technicians());
        crew.add(new Technician("one more", List.of(skill), List.of()));
        return problem.in(problem.yard().technicians(crew));
    }
}
