package sternwright.app.desk.protect;

import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Winter;
import sternwright.measure.MonthlyShare;
import sternwright.protection.anode.BoatYear;
import sternwright.yard.SeasonDates;
import sternwright.yard.Use;
import sternwright.yard.WinterStay;

/** A boat's year as its anodes see it: running hours and months in the water. */
final class SeasonalUse {
    private SeasonalUse() {}

    static BoatYear of(Boat boat, Berth berth, Use use, SeasonDates season) {
        MonthlyShare months = berth.southern() ? use.months().shiftedHalfAYear() : use.months();
        List<Double> hours = new ArrayList<>();
        List<Double> afloat = new ArrayList<>();
        for (Month m : Month.values()) {
            hours.add(use.annualHours() * months.of(m));
            afloat.add(afloat(boat, season, m));
        }
        return new BoatYear(hours, afloat);
    }

    /** Months of hauling and launching count as afloat: an anode is rather believed to be spent than to last. */
    private static double afloat(Boat boat, SeasonDates season, Month month) {
        WinterStay stay = new WinterStay(season);
        YearMonth m = YearMonth.of(2001, month);
        return boat.winter() == Winter.ASHORE && stay.ashore(m) && !stay.atEitherEnd(m) ? 0 : 1;
    }
}
