package sternwright.season.sample;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import sternwright.season.Axis;
import sternwright.season.Days;
import sternwright.season.Due;
import sternwright.season.Half;
import sternwright.season.Hoist;
import sternwright.season.Lag;
import sternwright.season.LiftClass;
import sternwright.season.Need;
import sternwright.season.Operation;
import sternwright.season.PlaceClass;
import sternwright.season.Pool;
import sternwright.season.Promise;
import sternwright.season.SeasonProblem;
import sternwright.season.Stay;
import sternwright.season.Technician;
import sternwright.season.Visit;
import sternwright.season.Weights;
import sternwright.season.Yard;

/** Small seasons with every feature of the model, drawn at random; nearly all of them can be planned. */
public final class RandomSeason {
    private final Random random;
    private final Axis axis;
    private final List<Visit> visits = new ArrayList<>();
    private final List<Half> halves = new ArrayList<>();
    private final List<Operation> operations = new ArrayList<>();
    private final List<Lag> lags = new ArrayList<>();
    private final List<Stay> stays = new ArrayList<>();

    private RandomSeason(long seed, int weeks) {
        random = new Random(seed);
        axis = new Axis(weeks, 2 + random.nextInt(4), 1 + random.nextInt(4));
    }

    /** A season of {@code boats} boats in {@code weeks} weeks, drawn with {@code seed}. */
    public static SeasonProblem of(int boats, int weeks, long seed) {
        RandomSeason season = new RandomSeason(seed, weeks);
        for (int boat = 0; boat < boats; boat++) {
            season.boat("Boat " + boat);
        }
        return new SeasonProblem(
                season.yard(boats),
                season.visits,
                season.halves,
                season.operations,
                season.lags,
                season.stays,
                season.promises(),
                new Weights(20 + season.random.nextInt(50), season.random.nextInt(15), 40, 2));
    }

    private Yard yard(int boats) {
        List<Technician> crew = new ArrayList<>();
        int people = 3 + random.nextInt(3) + boats / 6;
        for (int t = 0; t < people; t++) {
            List<Integer> skills = new ArrayList<>(List.of(t % 3));
            if (random.nextBoolean()) {
                skills.add((t + 1) % 3);
            }
            List<Integer> away = random.nextInt(3) == 0 ? List.of(random.nextInt(axis.days())) : List.of();
            crew.add(new Technician("Technician " + t, skills, away));
        }
        List<Integer> slots = Collections.nCopies(axis.quartersPerDay(), 1 + random.nextInt(2));
        return new Yard(
                axis,
                List.of("engine", "drive", "hull"),
                crew,
                Collections.nCopies(axis.weeks(), 1 + random.nextInt(2)),
                2,
                List.of(
                        new Hoist("big", slots, List.of(random.nextInt(axis.days()))),
                        new Hoist("small", slots, List.of())),
                List.of(new LiftClass("light", List.of(0, 1)), new LiftClass("heavy", List.of(0))),
                List.of(new PlaceClass("short", 1 + boats / 2), new PlaceClass("long", 1 + boats / 3)),
                List.of(new Pool("wash pad", 1 + random.nextInt(2))),
                List.of(new Days(
                        "tide",
                        IntStream.range(0, axis.days())
                                .filter(d -> d % 5 < 3)
                                .boxed()
                                .toList())));
    }

    private void boat(String name) {
        visits.add(new Visit(name, "visit"));
        int visit = visits.size() - 1;
        if (random.nextInt(3) == 0) {
            afloat(half(visit));
        } else {
            boolean split = random.nextBoolean();
            int first = half(visit);
            ashore(first, split ? half(visit) : first);
        }
    }

    private void afloat(int half) {
        int one = work("service", half, random.nextInt(3), due(), List.of());
        int two = work("trial", half, random.nextInt(3), Due.NONE, List.of());
        lags.add(Lag.endToStart(one, operations.get(one).lengthQ(), two));
    }

    private void ashore(int autumn, int spring) {
        int liftClass = random.nextInt(2);
        int days = random.nextInt(4) == 0 ? 0 : Operation.NONE;
        int lift = lift("lift", autumn, liftClass, days, Due.NONE);
        int wash = work("wash", autumn, 2, Due.NONE, List.of(new Need(0, 1)));
        int layUp = work("lay-up", autumn, 0, due(), List.of());
        int drive = work("drive", spring, 1, Due.NONE, List.of());
        int launch = lift("launch", spring, liftClass, days, due());
        lags.add(new Lag(lift, wash, 1, 1 + random.nextInt(3)));
        lags.add(Lag.endToStart(wash, operations.get(wash).lengthQ(), layUp));
        lags.add(Lag.endToStart(layUp, operations.get(layUp).lengthQ(), drive));
        int length = operations.get(drive).lengthQ();
        lags.add(new Lag(drive, launch, length, length + 3 + random.nextInt(12)));
        stays.add(new Stay(lift, launch, random.nextInt(2)));
    }

    private Due due() {
        Due.Kind kind = random.nextBoolean() ? Due.Kind.FROST : Due.Kind.WANTED;
        return new Due(kind, 3 + random.nextInt(axis.quarters()), 1 + random.nextInt(8), random.nextInt(2));
    }

    private int half(int visit) {
        halves.add(new Half(visit, "half"));
        return halves.size() - 1;
    }

    private int lift(String name, int half, int liftClass, int days, Due due) {
        operations.add(
                new Operation(name, half, 1, 0, axis.quarters(), Operation.NONE, 0, liftClass, days, List.of(), due));
        return operations.size() - 1;
    }

    private int work(String name, int half, int skill, Due due, List<Need> needs) {
        int length = 1 + random.nextInt(Math.min(4, axis.quartersPerDay() + 1));
        int from = random.nextInt(1 + axis.quarters() / 4);
        operations.add(new Operation(
                name, half, length, from, axis.quarters(), skill, 1, Operation.NONE, Operation.NONE, needs, due));
        return operations.size() - 1;
    }

    private List<Promise> promises() {
        List<Promise> promises = new ArrayList<>();
        for (int i = 0; i < operations.size(); i++) {
            if (operations.get(i).due() != Due.NONE && random.nextInt(4) == 0) {
                int start = random.nextInt(axis.quarters());
                promises.add(new Promise(i, start, start % 3 == 0 ? 5 * (start % 20) : Promise.USUAL));
            }
        }
        return promises;
    }
}
