package sternwright.yard.resource;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * High waters at the yard.
 *
 * @param highWaters in order of time
 */
public record TideTable(List<HighWater> highWaters) {
    /** A yard that needs no table. */
    public static final TideTable NONE = new TideTable(List.of());

    /** Sorts the list. */
    public TideTable {
        highWaters =
                highWaters.stream().sorted(Comparator.comparing(HighWater::at)).toList();
    }

    /**
     * The highest water of each day on which there is one between two times of day.
     *
     * @param from first time of day that is of use
     * @param to last time of day that is of use
     * @return by day
     */
    public NavigableMap<LocalDate, HighWater> byDay(LocalTime from, LocalTime to) {
        return highWaters.stream()
                .filter(h -> !h.at().toLocalTime().isBefore(from)
                        && !h.at().toLocalTime().isAfter(to))
                .collect(Collectors.toMap(
                        h -> h.at().toLocalDate(), h -> h, (a, b) -> a.heightM() >= b.heightM() ? a : b, TreeMap::new));
    }

    /**
     * The first month of a stretch that lacks days. A day without any high water happens (about one in fifteen where there are
     * two tides a day has only one, and one tide a day may fall past midnight), two days running do not.
     *
     * @param from first day asked for
     * @param to last day asked for
     * @return the first month with two days running without high water
     */
    public Optional<YearMonth> firstMonthMissing(LocalDate from, LocalDate to) {
        var days = highWaters.stream().map(h -> h.at().toLocalDate()).collect(Collectors.toSet());
        return from.datesUntil(to)
                .filter(d -> !days.contains(d) && !days.contains(d.plusDays(1)))
                .map(YearMonth::from)
                .findFirst();
    }
}
