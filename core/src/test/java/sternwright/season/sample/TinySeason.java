package sternwright.season.sample;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import sternwright.season.Axis;
import sternwright.season.Due;
import sternwright.season.Half;
import sternwright.season.Hoist;
import sternwright.season.Lag;
import sternwright.season.LiftClass;
import sternwright.season.Operation;
import sternwright.season.PlaceClass;
import sternwright.season.SeasonProblem;
import sternwright.season.Stay;
import sternwright.season.Technician;
import sternwright.season.Visit;
import sternwright.season.Weights;
import sternwright.season.Yard;

/** Yards so small that every plan can be tried; each technician has one skill, so that hands are simply counted. */
public final class TinySeason {
    /** Stands for the cost of the best plan where there is none. */
    public static final long IMPOSSIBLE = Long.MAX_VALUE;

    private static final Axis AXIS = new Axis(2, 2, 2);

    private final SeasonProblem season;
    private final int[] start;
    private long best = IMPOSSIBLE;

    private TinySeason(SeasonProblem season) {
        this.season = season;
        start = new int[season.operations().size()];
    }

    /** A tiny season, drawn with {@code seed}. */
    public static SeasonProblem of(long seed) {
        Random random = new Random(seed);
        List<Operation> ops = new ArrayList<>();
        List<Lag> lags = new ArrayList<>();
        List<Stay> stays = new ArrayList<>();
        int none = Operation.NONE;
        for (int boat = 0; boat < 2; boat++) {
            int at = ops.size();
            Due due = new Due(Due.Kind.WANTED, 2 + random.nextInt(5), 1 + random.nextInt(6), random.nextInt(2));
            ops.add(new Operation("lift", boat, 1, random.nextInt(3), 8, none, 0, 0, none, List.of(), Due.NONE));
            ops.add(new Operation(
                    "work", boat, 1 + random.nextInt(2), 0, 8, random.nextInt(2), 1, none, none, List.of(), Due.NONE));
            ops.add(new Operation("launch", boat, 1, 0, 8, none, 0, 0, none, List.of(), due));
            lags.add(Lag.endToStart(at, 1, at + 1));
            lags.add(new Lag(at + 1, at + 2, ops.get(at + 1).lengthQ(), 3));
            stays.add(new Stay(at, at + 2, 0));
        }
        for (int boat = 2; boat < 4; boat++) {
            Due due = new Due(Due.Kind.FROST, 1 + random.nextInt(6), 1 + random.nextInt(9), 0);
            ops.add(new Operation(
                    "lay-up", boat, 1 + random.nextInt(3), 0, 8, random.nextInt(2), 1, none, none, List.of(), due));
        }
        List<Technician> crew = List.of(
                new Technician("A", List.of(0), List.of()),
                new Technician("B", List.of(1), List.of(random.nextInt(4))));
        Yard yard = new Yard(
                AXIS,
                List.of("engine", "hull"),
                crew,
                Collections.nCopies(2, 1),
                1,
                List.of(new Hoist("hoist", List.of(1, 1), List.of())),
                List.of(new LiftClass("any", List.of(0))),
                List.of(new PlaceClass("any", 1 + random.nextInt(2))),
                List.of(),
                List.of());
        List<Visit> visits = List.of("One", "Two", "Three", "Four").stream()
                .map(name -> new Visit(name, "visit"))
                .toList();
        List<Half> halves = List.of(new Half(0, "all"), new Half(1, "all"), new Half(2, "all"), new Half(3, "all"));
        return new SeasonProblem(yard, visits, halves, ops, lags, stays, List.of(), new Weights(7, 3, 40, 2));
    }

    /** Cost of the best plan of {@code season}, found by trying all of them. */
    public static long best(SeasonProblem season) {
        TinySeason tiny = new TinySeason(season);
        tiny.tryFrom(0);
        return tiny.best;
    }

    private void tryFrom(int i) {
        if (i == start.length) {
            best = Math.min(best, cost());
            return;
        }
        Operation o = season.operations().get(i);
        for (int q = o.earliestQ(); q + o.lengthQ() <= o.latestEndQ(); q++) {
            start[i] = q;
            if (lagsHold(i)) {
                tryFrom(i + 1);
            }
        }
    }

    private boolean lagsHold(int last) {
        for (Lag lag : season.lags()) {
            if (Math.max(lag.before(), lag.after()) == last) {
                int distance = start[lag.after()] - start[lag.before()];
                if (distance < lag.minQ() || distance > lag.maxQ()) {
                    return false;
                }
            }
        }
        return true;
    }

    private long cost() {
        int[] extra = new int[2];
        int[] peak = new int[2];
        for (int q = 0; q < AXIS.quarters(); q++) {
            int[] busy = new int[2];
            int lifts = 0;
            int ashore = 0;
            for (int i = 0; i < start.length; i++) {
                Operation o = season.operations().get(i);
                if (start[i] <= q && q < start[i] + o.lengthQ()) {
                    lifts += o.liftClass() >= 0 ? 1 : 0;
                    if (o.skill() >= 0) {
                        busy[o.skill()]++;
                    }
                }
            }
            for (Stay stay : season.stays()) {
                ashore += start[stay.lift()] <= q && q <= start[stay.launch()] ? 1 : 0;
            }
            List<Integer> slots = season.yard().hoists().get(0).slotsByQuarter();
            if (lifts > slots.get(q % slots.size())
                    || ashore > season.yard().placeClasses().get(0).places()) {
                return IMPOSSIBLE;
            }
            int missing = Math.max(0, busy[0] - present(0, q)) + Math.max(0, busy[1] - present(1, q));
            int week = AXIS.weekOf(q);
            extra[week] = Math.max(extra[week], missing);
            peak[week] = Math.max(peak[week], busy[0] + busy[1]);
        }
        List<Integer> most = season.yard().extraHandsByWeek();
        return extra[0] > most.get(0) || extra[1] > most.get(1) ? IMPOSSIBLE : price(extra, peak);
    }

    private int present(int skill, int q) {
        return (int) season.yard().technicians().stream()
                .filter(t -> t.skills().contains(skill) && !t.awayDays().contains(AXIS.dayOf(q)))
                .count();
    }

    private long price(int[] extra, int[] peak) {
        long sum = 0;
        for (int week = 0; week < 2; week++) {
            sum += (long) season.weights().overtimePerHandWeek() * extra[week]
                    + (long) season.weights().unevenPerHand() * Math.max(0, peak[week] - 1);
        }
        for (int i = 0; i < start.length; i++) {
            Due due = season.operations().get(i).due();
            int end = start[i] + season.operations().get(i).lengthQ();
            sum += end > due.byQ()
                    ? (long) (end - due.byQ()) * due.latePerQ()
                    : (long) (due.byQ() - end) * due.earlyPerQ();
        }
        return sum;
    }
}
