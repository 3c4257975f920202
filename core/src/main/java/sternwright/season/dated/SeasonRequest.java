package sternwright.season.dated;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sternwright.yard.Yard;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.TideTable;

/**
 * All that a season is asked with.
 *
 * @param yard the yard
 * @param resources hoists, places, people, times, prices
 * @param tides high waters
 * @param boats boats with their planned visits
 * @param dates dates set by owners and suppliers
 * @param promises dates given to owners
 * @param begun operations that have begun before {@code from}, or are not to be moved, with the day and quarter they began
 * @param hoistsDown days on which hoists do not work
 * @param from first day of the season
 * @param to last day of the season
 * @param today nothing that has not begun is planned before this day
 */
public record SeasonRequest(
        Yard yard,
        Resources resources,
        TideTable tides,
        List<SeasonBoat> boats,
        List<OwnerDate> dates,
        List<PromisedDate> promises,
        List<PromisedDate> begun,
        List<HoistDown> hoistsDown,
        LocalDate from,
        LocalDate to,
        LocalDate today) {
    /** Copies the lists; visits that begin in the last days and end after them belong to the next season. */
    public SeasonRequest {
        boats = boats.stream().map(b -> b.until(to)).toList();
        dates = List.copyOf(dates);
        promises = List.copyOf(promises);
        begun = List.copyOf(begun);
        hoistsDown = List.copyOf(hoistsDown);
    }

    /**
     * Days on which a hoist does not work.
     *
     * @param hoistId the hoist
     * @param days the days, with the reason
     */
    public record HoistDown(String hoistId, Absence days) {}

    /** Whether a hoist does not work on a day. */
    public boolean hoistDown(String hoistId, LocalDate day) {
        return hoistsDown.stream()
                .anyMatch(d -> d.hoistId().equals(hoistId) && d.days().covers(day));
    }

    /** The dates of one kind of one boat. */
    public Stream<OwnerDate> dates(String boatId, OwnerDate.Kind kind) {
        return dates.stream().filter(d -> d.boatId().equals(boatId) && d.kind() == kind);
    }

    /** The first date of one kind of one boat. */
    public Optional<LocalDate> date(String boatId, OwnerDate.Kind kind) {
        return dates(boatId, kind).map(OwnerDate::date).min(LocalDate::compareTo);
    }

    /** The working days asked about. */
    public WorkingTime time() {
        return WorkingTime.of(
                yard.calendar(),
                from,
                to,
                resources.times().begins(),
                resources.times().hoursADay());
    }

    /** The same with other resources. */
    public SeasonRequest resources(Resources others) {
        return new SeasonRequest(yard, others, tides, boats, dates, promises, begun, hoistsDown, from, to, today);
    }

    /** The same with other dates. */
    public SeasonRequest dates(List<OwnerDate> others) {
        return new SeasonRequest(yard, resources, tides, boats, others, promises, begun, hoistsDown, from, to, today);
    }

    /** The same with other boats. */
    public SeasonRequest boats(List<SeasonBoat> others) {
        return new SeasonRequest(yard, resources, tides, others, dates, promises, begun, hoistsDown, from, to, today);
    }

    /** The same with other days on which hoists do not work. */
    public SeasonRequest hoistsDown(List<HoistDown> others) {
        return new SeasonRequest(yard, resources, tides, boats, dates, promises, begun, others, from, to, today);
    }

    /** The same with other promises and other operations begun. */
    public SeasonRequest promising(List<PromisedDate> others, List<PromisedDate> alreadyBegun) {
        return new SeasonRequest(
                yard, resources, tides, boats, dates, others, alreadyBegun, hoistsDown, from, to, today);
    }
}
