package sternwright.season.dated.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import sternwright.season.Axis;
import sternwright.season.Operation;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.Yard;

/** Names people and hoists for every operation of a plan. */
final class Rota {
    private final SeasonProblem problem;
    private final SeasonPlan plan;
    private final Yard yard;
    private final Axis axis;
    private final List<List<Integer>> active = new ArrayList<>();
    private final List<Set<Integer>> away = new ArrayList<>();
    private final List<Set<Integer>> down = new ArrayList<>();
    private final int[][] personAt;
    private final int[] hoist;
    private final Map<String, Set<Integer>> knows = new HashMap<>();

    Rota(SeasonProblem problem, SeasonPlan plan) {
        this.problem = problem;
        this.plan = plan;
        yard = problem.yard();
        axis = yard.axis();
        IntStream.range(0, axis.quarters()).forEach(q -> active.add(new ArrayList<>()));
        int n = problem.operations().size();
        personAt = new int[n][];
        hoist = new int[n];
        Arrays.fill(hoist, Assignment.NOBODY);
        for (int i = 0; i < n; i++) {
            personAt[i] = new int[problem.operations().get(i).lengthQ()];
            Arrays.fill(personAt[i], Assignment.NOBODY);
            for (int q = plan.startQ().get(i); q < plan.endQ(problem, i); q++) {
                active.get(q).add(i);
            }
        }
        yard.technicians().forEach(t -> away.add(new HashSet<>(t.awayDays())));
        yard.hoists().forEach(h -> down.add(new HashSet<>(h.downDays())));
        for (int q = 0; q < axis.quarters(); q++) {
            people(q);
            hoists(q);
        }
    }

    /** Positions of the people who do an operation in its quarters; {@link Assignment#NOBODY} is an extra hand. */
    int[] people(int operation, boolean all) {
        return all
                ? personAt[operation].clone()
                : Arrays.stream(personAt[operation]).distinct().toArray();
    }

    /** Position of the hoist of an operation, {@link Assignment#NOBODY} if it needs none. */
    int hoist(int operation) {
        return hoist[operation];
    }

    private void people(int q) {
        List<Integer> jobs = skilled(q);
        int[] server = Assignment.of(able(jobs, q), presence(q), kept(jobs, q));
        for (int j = 0; j < jobs.size(); j++) {
            int i = jobs.get(j);
            personAt[i][q - plan.startQ().get(i)] = server[j];
            if (server[j] != Assignment.NOBODY) {
                knows.computeIfAbsent(problem.boatOf(i), b -> new HashSet<>()).add(server[j]);
            }
        }
    }

    private List<Integer> skilled(int q) {
        return active.get(q).stream()
                .filter(i -> problem.operations().get(i).skill() >= 0)
                .toList();
    }

    private int[] kept(List<Integer> jobs, int q) {
        return jobs.stream()
                .mapToInt(i -> q > plan.startQ().get(i)
                        ? personAt[i][q - 1 - plan.startQ().get(i)]
                        : Assignment.NOBODY)
                .toArray();
    }

    private int[] presence(int q) {
        return IntStream.range(0, yard.technicians().size())
                .map(t -> away.get(t).contains(axis.dayOf(q)) ? 0 : 1)
                .toArray();
    }

    /** Who knows the boat comes first, then who can do the fewest other things. */
    private List<List<Integer>> able(List<Integer> jobs, int q) {
        List<List<Integer>> able = new ArrayList<>();
        for (int i : jobs) {
            int skill = problem.operations().get(i).skill();
            Set<Integer> knowing = knows.getOrDefault(problem.boatOf(i), Set.of());
            able.add(IntStream.range(0, yard.technicians().size())
                    .filter(t -> yard.technicians().get(t).skills().contains(skill))
                    .boxed()
                    .sorted(Comparator.<Integer>comparingInt(t -> knowing.contains(t) ? 0 : 1)
                            .thenComparingInt(
                                    t -> yard.technicians().get(t).skills().size()))
                    .toList());
        }
        return able;
    }

    private void hoists(int q) {
        List<Integer> lifts = lifts(q);
        int[] none = new int[lifts.size()];
        Arrays.fill(none, Assignment.NOBODY);
        int[] server = Assignment.of(takers(lifts), slots(q), none);
        for (int j = 0; j < lifts.size(); j++) {
            hoist[lifts.get(j)] = server[j];
        }
    }

    private List<Integer> lifts(int q) {
        return active.get(q).stream()
                .filter(i -> problem.operations().get(i).liftClass() >= 0)
                .toList();
    }

    private List<List<Integer>> takers(List<Integer> lifts) {
        return lifts.stream()
                .map(i -> yard.liftClasses()
                        .get(problem.operations().get(i).liftClass())
                        .hoists())
                .toList();
    }

    /** Lifts that each hoist can do in a quarter. */
    int[] slots(int q) {
        return IntStream.range(0, yard.hoists().size())
                .map(h -> down.get(h).contains(axis.dayOf(q))
                        ? 0
                        : yard.hoists().get(h).slotsByQuarter().get(q % axis.quartersPerDay()))
                .toArray();
    }

    /** Whether hoists and people could do an operation in other quarters, everything else staying as planned. */
    boolean couldBegin(int operation, int startQ) {
        Operation o = problem.operations().get(operation);
        for (int q = startQ; q < Math.min(startQ + o.lengthQ(), axis.quarters()); q++) {
            if (o.skill() >= 0 && !served(with(skilled(q), operation), q)) {
                return false;
            }
            if (o.liftClass() >= 0 && !lifted(with(lifts(q), operation), q)) {
                return false;
            }
        }
        return true;
    }

    private static List<Integer> with(List<Integer> jobs, int operation) {
        if (jobs.contains(operation)) {
            return jobs;
        }
        List<Integer> all = new ArrayList<>(jobs);
        all.add(operation);
        return all;
    }

    private boolean served(List<Integer> jobs, int q) {
        int[] server = Assignment.of(able(jobs, q), presence(q), nobody(jobs.size()));
        return Arrays.stream(server).noneMatch(s -> s == Assignment.NOBODY);
    }

    private boolean lifted(List<Integer> lifts, int q) {
        int[] server = Assignment.of(takers(lifts), slots(q), nobody(lifts.size()));
        return Arrays.stream(server).noneMatch(s -> s == Assignment.NOBODY);
    }

    private static int[] nobody(int n) {
        int[] none = new int[n];
        Arrays.fill(none, Assignment.NOBODY);
        return none;
    }

    /** Whether a person is there in a quarter. */
    boolean there(int person, int q) {
        return !away.get(person).contains(axis.dayOf(q));
    }
}
