package sternwright.season.dated.make;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.stream.IntStream;
import sternwright.boat.Hull;
import sternwright.season.Days;
import sternwright.season.LiftClass;
import sternwright.season.Operation;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.WorkingTime;
import sternwright.yard.resource.HighWater;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.TidalDock;

/** Which hoists take a hull, and on which days there is water enough for it. */
final class HoistFit {
    private static final int TIDE_BEFORE_AND_AFTER_WORK_HOURS = 1;

    private final List<Hoist> hoists;
    private final WorkingTime time;
    private final NavigableMap<LocalDate, HighWater> tides;
    private final List<LiftClass> classes = new ArrayList<>();
    private final List<Days> daySets = new ArrayList<>();
    private final Map<List<Integer>, Integer> classOf = new HashMap<>();
    private final Map<List<Integer>, Integer> setOf = new HashMap<>();

    HoistFit(SeasonRequest request, WorkingTime time) {
        this.hoists = request.resources().hoists();
        this.time = time;
        LocalTime begins = time.begins();
        long minutes = Math.round(time.hoursADay() * 60);
        tides = request.tides()
                .byDay(
                        begins.minusHours(TIDE_BEFORE_AND_AFTER_WORK_HOURS),
                        begins.plusMinutes(minutes).plusHours(TIDE_BEFORE_AND_AFTER_WORK_HOURS));
    }

    /**
     * How a hull is lifted.
     *
     * @param liftClass index of the lean lift class
     * @param days index of the lean day set, {@link Operation#NONE} if any day does
     */
    record Fit(int liftClass, int days) {}

    /** Positions of the hoists that take a hull by mass and beam. */
    List<Integer> takers(Hull hull) {
        return IntStream.range(0, hoists.size())
                .filter(h -> hoists.get(h).takes(hull))
                .boxed()
                .toList();
    }

    /** Whether every hoist that takes the hull waits for the tide. */
    boolean needsTide(Hull hull) {
        List<Integer> takers = takers(hull);
        return !takers.isEmpty() && takers.stream().allMatch(h -> hoists.get(h).tidal() != null);
    }

    /**
     * The hoists to use for a hull and the days on which they all can. A hoist that needs no tide leads; the tidal ones are then
     * left to the boats that have nothing else.
     *
     * @return empty if no hoist takes it, or never in this season
     */
    Optional<Fit> of(Hull hull) {
        List<Integer> takers = takers(hull);
        List<Integer> always =
                takers.stream().filter(h -> hoists.get(h).tidal() == null).toList();
        if (!always.isEmpty()) {
            return Optional.of(new Fit(liftClass(always), Operation.NONE));
        }
        List<Integer> best = List.of();
        for (int h : takers) {
            List<Integer> days = days(hoists.get(h), hull);
            best = days.size() > best.size() ? days : best;
        }
        if (best.isEmpty()) {
            return Optional.empty();
        }
        List<Integer> chosen = best;
        List<Integer> able = takers.stream()
                .filter(h -> days(hoists.get(h), hull).containsAll(chosen))
                .toList();
        return Optional.of(new Fit(liftClass(able), daySet(chosen)));
    }

    private List<Integer> days(Hoist hoist, Hull hull) {
        TidalDock dock = hoist.tidal();
        double needed = dock == null ? Double.NEGATIVE_INFINITY : dock.heightNeededM(hull.draughtM());
        return IntStream.range(0, time.days().size())
                .filter(d -> {
                    HighWater high = tides.get(time.days().get(d));
                    return high != null && high.heightM() >= needed;
                })
                .boxed()
                .toList();
    }

    /** The high water of a day in working hours, if the table has one. */
    Optional<HighWater> highWater(LocalDate day) {
        return Optional.ofNullable(tides.get(day));
    }

    private int liftClass(List<Integer> able) {
        return classOf.computeIfAbsent(able, a -> {
            classes.add(new LiftClass(
                    String.join(
                            " or ", a.stream().map(h -> hoists.get(h).name()).toList()),
                    a));
            return classes.size() - 1;
        });
    }

    private int daySet(List<Integer> days) {
        return setOf.computeIfAbsent(days, d -> {
            daySets.add(new Days("the days with water enough", d));
            return daySets.size() - 1;
        });
    }

    List<LiftClass> classes() {
        return List.copyOf(classes);
    }

    List<Days> daySets() {
        return List.copyOf(daySets);
    }
}
