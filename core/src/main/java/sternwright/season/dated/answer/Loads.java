package sternwright.season.dated.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import sternwright.season.Axis;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.Stay;
import sternwright.season.Yard;

/** Counts how full hoists, places, people and overtime are. */
final class Loads {
    private final SeasonProblem problem;
    private final SeasonPlan plan;
    private final Rota rota;
    private final Yard yard;
    private final Axis axis;

    Loads(SeasonProblem problem, SeasonPlan plan, Rota rota) {
        this.problem = problem;
        this.plan = plan;
        this.rota = rota;
        yard = problem.yard();
        axis = yard.axis();
    }

    List<Load> all() {
        List<Load> loads = new ArrayList<>();
        IntStream.range(0, yard.hoists().size()).forEach(h -> loads.add(hoist(h)));
        IntStream.range(0, yard.placeClasses().size()).forEach(c -> loads.add(places(c)));
        int[][] busy = busy();
        IntStream.range(0, yard.technicians().size()).forEach(t -> loads.add(person(t, busy[t])));
        loads.add(overtime());
        return loads;
    }

    private Load hoist(int hoist) {
        int[] used = new int[axis.weeks()];
        int[] there = new int[axis.weeks()];
        for (int i = 0; i < plan.startQ().size(); i++) {
            if (rota.hoist(i) == hoist) {
                used[axis.weekOf(plan.startQ().get(i))]++;
            }
        }
        for (int q = 0; q < axis.quarters(); q++) {
            there[axis.weekOf(q)] += rota.slots(q)[hoist];
        }
        return load(Load.Kind.HOIST, yard.hoists().get(hoist).name(), used, there);
    }

    /** Boats that need this length or a longer one, against the places of this length or longer. */
    private Load places(int placeClass) {
        int[] standing = new int[axis.quarters()];
        for (Stay stay : problem.stays()) {
            if (stay.placeClass() >= placeClass) {
                for (int q = plan.startQ().get(stay.lift()); q < plan.endQ(problem, stay.launch()); q++) {
                    standing[q]++;
                }
            }
        }
        int[] used = new int[axis.weeks()];
        for (int q = 0; q < standing.length; q++) {
            used[axis.weekOf(q)] = Math.max(used[axis.weekOf(q)], standing[q]);
        }
        int places = yard.placeClasses().subList(placeClass, yard.placeClasses().size()).stream()
                .mapToInt(p -> p.places())
                .sum();
        int[] there = new int[axis.weeks()];
        java.util.Arrays.fill(there, places);
        String name = yard.placeClasses().get(placeClass).name();
        boolean longest = placeClass == yard.placeClasses().size() - 1;
        return load(Load.Kind.PLACES, longest ? name : name + " and longer", used, there);
    }

    private int[][] busy() {
        int[][] busy = new int[yard.technicians().size()][axis.weeks()];
        for (int i = 0; i < plan.startQ().size(); i++) {
            int[] people = rota.people(i, true);
            for (int k = 0; k < people.length; k++) {
                if (people[k] != Assignment.NOBODY) {
                    busy[people[k]][axis.weekOf(plan.startQ().get(i) + k)]++;
                }
            }
        }
        return busy;
    }

    private Load person(int person, int[] busy) {
        int[] there = new int[axis.weeks()];
        for (int q = 0; q < axis.quarters(); q++) {
            there[axis.weekOf(q)] += rota.there(person, q) ? 1 : 0;
        }
        return load(Load.Kind.PERSON, yard.technicians().get(person).name(), busy, there);
    }

    private Load overtime() {
        int[] extra = new int[axis.quarters()];
        for (int i = 0; i < plan.startQ().size(); i++) {
            int[] people = rota.people(i, true);
            boolean skilled = problem.operations().get(i).skill() >= 0;
            for (int k = 0; skilled && k < people.length; k++) {
                extra[plan.startQ().get(i) + k] += people[k] == Assignment.NOBODY ? 1 : 0;
            }
        }
        int[] used = new int[axis.weeks()];
        for (int q = 0; q < extra.length; q++) {
            used[axis.weekOf(q)] = Math.max(used[axis.weekOf(q)], extra[q]);
        }
        int[] there =
                yard.extraHandsByWeek().stream().mapToInt(Integer::intValue).toArray();
        return load(Load.Kind.OVERTIME, "extra hands", used, there);
    }

    private static Load load(Load.Kind kind, String name, int[] used, int[] there) {
        return new Load(
                kind,
                name,
                IntStream.range(0, used.length)
                        .mapToObj(w -> new Load.Week(used[w], there[w]))
                        .toList());
    }
}
