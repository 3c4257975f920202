package sternwright.app.desk.protect;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Winter;
import sternwright.measure.MonthlyShare;
import sternwright.protection.anode.BoatYear;
import sternwright.yard.SeasonDates;
import sternwright.yard.Use;

/** A boat's year as its anodes see it: running hours and months in the water. */
final class SeasonalUse {
    private SeasonalUse() {}

    static BoatYear of(Boat boat, Berth berth, Use use, SeasonDates season) {
        MonthlyShare months = berth.southern() ? use.months().shiftedHalfAYear() : use.months();
        List<Double> hours = new ArrayList<>();
        List<Double> afloat = new ArrayList<>();
        for (Month m : Month.values()) {
            hours.add(use.annualHours() * months.of(m));
            afloat.add(boat.winter() == Winter.ASHORE && ashore(season, m) ? 0.0 : 1.0);
        }
        return new BoatYear(hours, afloat);
    }

    /** Ashore from the middle of lay-up to the middle of recommission. */
    private static boolean ashore(SeasonDates season, Month month) {
        LocalDate day = LocalDate.of(2001, month, 15);
        SeasonDates.Window in = season.layUpEndingFrom(day);
        SeasonDates.Window out = season.recommissionEndingFrom(day);
        LocalDate hauled = middle(in);
        LocalDate launched = middle(out);
        if (!hauled.isAfter(day)) {
            return true;
        }
        return launched.isAfter(day) && launched.isBefore(hauled);
    }

    private static LocalDate middle(SeasonDates.Window w) {
        return w.from().plusDays(ChronoUnit.DAYS.between(w.from(), w.to()) / 2);
    }
}
