package sternwright.app.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.history.BoatHistory;
import sternwright.service.RuleBook;
import sternwright.yard.Use;
import sternwright.yard.Yard;

/**
 * The boats of an invented yard and what is written down of them.
 *
 * @param boats the boats, in the order of their names' list
 * @param histories their histories by boat
 */
public record InventedYard(List<Boat> boats, Map<String, BoatHistory> histories) {
    private static final int YEARS = 8;

    /** Copies both. */
    public InventedYard {
        boats = List.copyOf(boats);
        histories = Map.copyOf(histories);
    }

    /**
     * Makes boats and their past.
     *
     * @param count how many boats
     * @param yard the yard with the kinds of use that are invented: weekend, cruising, liveaboard, motor, charter, work
     * @param berths where the boats lie, in turn
     * @param book the rules by which works fell due
     * @param today the day after the last one of the past
     * @param seed the same seed and day give the same yard
     * @return boats and histories
     */
    public static InventedYard make(
            int count, Yard yard, List<Berth> berths, RuleBook book, LocalDate today, long seed) {
        List<SplittableRandom> streams = new ArrayList<>();
        SplittableRandom root = new SplittableRandom(seed);
        for (int i = 0; i < count; i++) {
            streams.add(root.split());
        }
        InventedFleet fleet = new InventedFleet(today, berths);
        List<Made> made = java.util.stream.IntStream.range(0, count)
                .parallel()
                .mapToObj(i -> one(i, fleet, yard, berths.get(i % berths.size()), book, today, streams.get(i)))
                .toList();
        Map<String, BoatHistory> histories = new LinkedHashMap<>();
        made.forEach(m -> histories.put(m.boat.id(), m.history));
        return new InventedYard(made.stream().map(Made::boat).toList(), histories);
    }

    private record Made(Boat boat, BoatHistory history) {}

    private static Made one(
            int index,
            InventedFleet fleet,
            Yard yard,
            Berth berth,
            RuleBook book,
            LocalDate today,
            SplittableRandom random) {
        double u = random.nextDouble();
        Care care = u < 0.3 ? Care.CAREFUL : u < 0.75 ? Care.USUAL : u < 0.9 ? Care.SPARING : Care.NEGLECTED;
        // One boat in eight came to the yard lately: nothing is known of the years before.
        boolean newcomer = random.nextDouble() < 0.125;
        Boat boat = fleet.boat(index, newcomer ? 0.15 : 0.9, random);
        Use use = yard.use(boat.use())
                .orElseThrow(() -> new IllegalArgumentException("the yard has no kind of use " + boat.use()));
        LocalDate from = newcomer ? today.minusMonths(6 + random.nextInt(14)) : today.minusYears(YEARS);
        double habit = Math.exp(use.variation() * 0.6 * random.nextGaussian());
        Map<String, InventedHours> hours = new LinkedHashMap<>();
        double atStart = Math.rint(use.annualHours() * habit * (1 + 4 * random.nextDouble()));
        for (Installation i : boat.installations()) {
            hours.put(i.id(), new InventedHours(i.id(), use, berth.southern(), from, atStart, habit, random.split()));
        }
        InventedPast past = new InventedPast(boat, berth, use, yard.season(), book, care, hours, random.split());
        return new Made(boat, past.between(from, today));
    }
}
