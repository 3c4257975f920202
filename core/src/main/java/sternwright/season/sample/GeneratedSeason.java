package sternwright.season.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import sternwright.season.Axis;
import sternwright.season.Due;
import sternwright.season.Half;
import sternwright.season.Lag;
import sternwright.season.Operation;
import sternwright.season.SeasonProblem;
import sternwright.season.Stay;
import sternwright.season.Visit;
import sternwright.season.Weights;

/**
 * An invented yard of any size, always the same for the same number of boats and seed.
 *
 * <p>Weeks run from 1 September; two weeks at Christmas are left out; a day has four quarters. Three boats in four winter ashore.
 */
public final class GeneratedSeason {
    static final int QUARTERS_PER_DAY = 4;
    static final Axis AXIS = new Axis(43, 5, QUARTERS_PER_DAY);
    static final int ENGINE = 0;
    static final int DRIVE = 1;
    static final int HULL = 2;
    static final int ELECTRICS = 3;
    static final int ANY_HOIST = 0;
    static final int BIG_HOIST = 1;
    static final int SPRING_TIDE = 0;
    private static final int RECOMMISSION_FROM_Q = 115 * QUARTERS_PER_DAY;
    private static final int FREE = AXIS.quarters();

    private final Random random;
    private final int[] boatsOfClass = new int[3];
    private final List<Visit> visits = new ArrayList<>();
    private final List<Half> halves = new ArrayList<>();
    private final List<Operation> operations = new ArrayList<>();
    private final List<Lag> lags = new ArrayList<>();
    private final List<Stay> stays = new ArrayList<>();

    private GeneratedSeason(long seed) {
        random = new Random(seed);
    }

    /** The season of {@code boats} boats, at least 1, drawn with {@code seed}. */
    public static SeasonProblem of(int boats, long seed) {
        GeneratedSeason season = new GeneratedSeason(seed);
        for (int boat = 0; boat < boats; boat++) {
            season.boat("Boat " + String.format("%04d", boat + 1));
        }
        return new SeasonProblem(
                GeneratedYard.of(boats / 300.0, season.boatsOfClass, season.random),
                season.visits,
                season.halves,
                season.operations,
                season.lags,
                season.stays,
                List.of(),
                Weights.GENERATED);
    }

    /** What is drawn for every boat before its work. */
    private record Draw(
            boolean ashore,
            int liftClass,
            int days,
            int place,
            int weight,
            int releaseDay,
            int frostDay,
            int wantedDay) {}

    private void boat(String name) {
        boolean ashore = random.nextDouble() < 0.75;
        int liftClass = random.nextDouble() < 0.20 ? BIG_HOIST : ANY_HOIST;
        int days = random.nextDouble() < 0.15 ? SPRING_TIDE : Operation.NONE;
        double length = random.nextDouble();
        int place = length < 0.50 ? 0 : length < 0.85 ? 1 : 2;
        int weight = 1 + random.nextInt(3);
        int release = triangular(10, 27, 50);
        int frost = 45 + random.nextInt(20);
        int wanted = triangular(130, 155, 184);
        Draw draw = new Draw(ashore, liftClass, days, place, weight, release, frost, wanted);
        int lift = Operation.NONE;
        if (ashore) {
            boatsOfClass[place]++;
            lift = winterAshore(name, draw);
        } else {
            winterAfloat(name, draw);
        }
        if (random.nextDouble() < (ashore ? 0.07 : 0.6)) {
            shortVisit(name, draw, lift);
        }
    }

    private int triangular(double least, double mode, double most) {
        double u = random.nextDouble();
        double turn = (mode - least) / (most - least);
        double value = u < turn
                ? least + Math.sqrt(u * (most - least) * (mode - least))
                : most - Math.sqrt((1 - u) * (most - least) * (most - mode));
        return (int) Math.floor(value);
    }

    private int winterAshore(String boat, Draw d) {
        int autumn = half(boat, "winter ashore", "lay-up");
        int spring = half(autumn, "recommission");
        int lift = hoist("lift", autumn, d, d.releaseDay * QUARTERS_PER_DAY, Due.NONE);
        int wash = work("wash", autumn, 1, 0, HULL, Due.NONE);
        int layUp = work("lay-up", autumn, 2 + random.nextInt(3), 0, ENGINE, frost(d));
        int drive = Operation.NONE;
        if (random.nextDouble() < 0.6) {
            drive = work("drive service", autumn, 2 + random.nextInt(5), 0, DRIVE, Due.NONE);
        }
        int electrics = Operation.NONE;
        if (random.nextDouble() < 0.25) {
            int length = 2 + random.nextInt(5);
            int from = (40 + random.nextInt(91)) * QUARTERS_PER_DAY;
            electrics = work("electrics", autumn, length, from, ELECTRICS, Due.NONE);
        }
        int recommission = work("recommission", spring, 2 + random.nextInt(2), RECOMMISSION_FROM_Q, ENGINE, Due.NONE);
        int antifouling = work("antifouling", spring, 1 + random.nextInt(3), RECOMMISSION_FROM_Q, HULL, Due.NONE);
        int wantedQ = d.wantedDay * QUARTERS_PER_DAY;
        Due wanted = new Due(Due.Kind.WANTED, wantedQ, 5 * d.weight, 1);
        int launch = hoist("launch", spring, d, wantedQ - 41, wanted);
        within(lift, wash, 4);
        after(wash, layUp);
        after(layUp, recommission);
        if (drive >= 0) {
            after(wash, drive);
            after(drive, recommission);
        }
        if (electrics >= 0) {
            after(lift, electrics);
            after(electrics, launch);
        }
        within(recommission, launch, 60);
        within(antifouling, launch, 60);
        stays.add(new Stay(lift, launch, d.place));
        return lift;
    }

    private void winterAfloat(String boat, Draw d) {
        int autumn = half(boat, "winter afloat", "lay-up");
        int spring = half(autumn, "recommission");
        int layUp = work("lay-up", autumn, 2 + random.nextInt(3), d.releaseDay * QUARTERS_PER_DAY, ENGINE, frost(d));
        int wantedQ = d.wantedDay * QUARTERS_PER_DAY;
        int recommission = work(
                "recommission",
                spring,
                2 + random.nextInt(2),
                Math.max(RECOMMISSION_FROM_Q, wantedQ - 60),
                ENGINE,
                new Due(Due.Kind.WANTED, wantedQ, 5 * d.weight, 0));
        after(layUp, recommission);
    }

    private void shortVisit(String boat, Draw d, int winterLift) {
        int startDay;
        if (d.ashore || random.nextBoolean()) {
            startDay = d.ashore ? random.nextInt(Math.max(1, d.releaseDay - 8)) : random.nextInt(40);
        } else {
            startDay = 130 + random.nextInt(45);
        }
        int start = startDay * QUARTERS_PER_DAY;
        int all = half(boat, "short visit ashore", "short visit");
        int lift = hoist("lift", all, d, start, Due.NONE);
        int wash = work("wash", all, 1, start, HULL, Due.NONE);
        int drive = work("drive service", all, 2 + random.nextInt(2), start, DRIVE, Due.NONE);
        int launch = hoist("launch", all, d, start, new Due(Due.Kind.WANTED, start + 40, 3, 0));
        within(lift, wash, 4);
        after(wash, drive);
        after(drive, launch);
        lags.add(new Lag(lift, launch, 1, 28));
        stays.add(new Stay(lift, launch, d.place));
        if (winterLift >= 0) {
            after(launch, winterLift);
        }
    }

    private static Due frost(Draw d) {
        return new Due(Due.Kind.FROST, d.frostDay * QUARTERS_PER_DAY, 8, 0);
    }

    private int half(String boat, String visit, String name) {
        visits.add(new Visit(boat, visit));
        halves.add(new Half(visits.size() - 1, name));
        return halves.size() - 1;
    }

    private int half(int sibling, String name) {
        halves.add(new Half(halves.get(sibling).visit(), name));
        return halves.size() - 1;
    }

    private int hoist(String name, int half, Draw d, int from, Due due) {
        return add(new Operation(name, half, 1, from, FREE, Operation.NONE, 0, d.liftClass, d.days, List.of(), due));
    }

    private int work(String name, int half, int length, int from, int skill, Due due) {
        return add(new Operation(
                name, half, length, from, FREE, skill, 1, Operation.NONE, Operation.NONE, List.of(), due));
    }

    private int add(Operation operation) {
        operations.add(operation);
        return operations.size() - 1;
    }

    private void after(int before, int after) {
        lags.add(Lag.endToStart(before, operations.get(before).lengthQ(), after));
    }

    /** {@code after} starts between the end of {@code before} and {@code mostQ} quarters later. */
    private void within(int before, int after, int mostQ) {
        int length = operations.get(before).lengthQ();
        lags.add(new Lag(before, after, length, length + mostQ));
    }
}
