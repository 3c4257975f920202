package sternwright.season.dated.make;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.stream.DoubleStream;
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
    private final List<Double> levels = new ArrayList<>();

    HoistFit(SeasonRequest request, WorkingTime time) {
        this.hoists = request.resources().hoists();
        this.time = time;
        LocalTime begins = time.begins();
        long minutes = Math.round(time.hoursADay() * 60);
        tides = request.tides()
                .byDay(
                        begins.minusHours(TIDE_BEFORE_AND_AFTER_WORK_HOURS),
                        begins.plusMinutes(minutes).plusHours(TIDE_BEFORE_AND_AFTER_WORK_HOURS));
        List<Hull> hulls = request.boats().stream().map(b -> b.boat().hull()).toList();
        hoists.forEach(h -> levels.add(level(h, hulls)));
    }

    /**
     * The height of high water from which a tidal dock is open: the one that opens it to most boats on most days, never above what a
     * boat needs that has no other way out of the water.
     */
    private double level(Hoist hoist, List<Hull> hulls) {
        TidalDock dock = hoist.tidal();
        if (dock == null) {
            return Double.NEGATIVE_INFINITY;
        }
        List<Hull> taken = hulls.stream().filter(hoist::takes).toList();
        double highest = taken.stream()
                .filter(this::needsTide)
                .mapToDouble(h -> dock.heightNeededM(h.draughtM()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        double best = highest;
        long mostBoatDays = 0;
        double[] needed = taken.stream()
                .mapToDouble(h -> dock.heightNeededM(h.draughtM()))
                .toArray();
        // Thousands of boats have some dozens of draughts.
        for (double level : DoubleStream.of(needed).distinct().toArray()) {
            long boats = DoubleStream.of(needed).filter(n -> n <= level).count();
            long boatDays = level > highest ? 0 : boats * days(level).size();
            if (boatDays > mostBoatDays) {
                mostBoatDays = boatDays;
                best = level;
            }
        }
        return best;
    }

    /** Working days on which the dock of a hoist has less water than the height from which it is open. */
    List<Integer> closed(int hoist) {
        List<Integer> open = days(levels.get(hoist));
        return hoists.get(hoist).tidal() == null
                ? List.of()
                : IntStream.range(0, time.days().size())
                        .filter(d -> !open.contains(d))
                        .boxed()
                        .toList();
    }

    private boolean openTo(int h, Hull hull) {
        TidalDock dock = hoists.get(h).tidal();
        return dock == null || dock.heightNeededM(hull.draughtM()) <= levels.get(h);
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
     * The hoists to use for a hull. Where one of them needs no tide, the tidal ones help on the days on which their docks are open;
     * where all need it, the days are those with water enough for this hull.
     *
     * @return empty if no hoist takes it, or never in this season
     */
    Optional<Fit> of(Hull hull) {
        List<Integer> takers = takers(hull);
        List<Integer> always =
                takers.stream().filter(h -> hoists.get(h).tidal() == null).toList();
        if (!always.isEmpty()) {
            List<Integer> helping = takers.stream().filter(h -> openTo(h, hull)).toList();
            return Optional.of(new Fit(liftClass(helping), Operation.NONE));
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
        return days(dock == null ? Double.NEGATIVE_INFINITY : dock.heightNeededM(hull.draughtM()));
    }

    private List<Integer> days(double needed) {
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
