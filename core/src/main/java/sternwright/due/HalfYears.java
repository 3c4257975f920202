package sternwright.due;

import java.time.LocalDate;
import sternwright.service.Half;
import sternwright.yard.SeasonDates;
import sternwright.yard.SeasonDates.Window;

/**
 * The yard's lay-ups and recommissions of every year that a due list can touch, each made once and shared by all boats.
 *
 * <p>In every year exactly one lay-up and one recommission end, so the year of the last day names them.
 */
final class HalfYears {
    private static final int YEARS_BACK = 60;
    private static final int YEARS = 200;

    private final SeasonDates season;
    private final int firstYear;
    private final Window[] layUps = new Window[YEARS];
    private final Window[] recommissions = new Window[YEARS];

    HalfYears(SeasonDates season, LocalDate today) {
        this.season = season;
        this.firstYear = today.getYear() - YEARS_BACK;
        for (int i = 0; i < YEARS; i++) {
            layUps[i] = made(true, firstYear + i);
            recommissions[i] = made(false, firstYear + i);
        }
    }

    /** The lay-up or recommission that has not ended before a day. */
    Window endingFrom(boolean layUp, LocalDate day) {
        Window thisYears = of(layUp, day.getYear());
        return thisYears.to().isBefore(day) ? of(layUp, day.getYear() + 1) : thisYears;
    }

    /** The same by the half a work belongs to, which is not {@link Half#ANY}. */
    Window endingFrom(Half half, LocalDate day) {
        return endingFrom(half == Half.LAY_UP, day);
    }

    /** The lay-up after a lay-up, the recommission after a recommission. */
    Window following(boolean layUp, Window window) {
        return of(layUp, window.to().getYear() + 1);
    }

    private Window of(boolean layUp, int year) {
        int at = year - firstYear;
        if (at < 0 || at >= YEARS) {
            return made(layUp, year);
        }
        return layUp ? layUps[at] : recommissions[at];
    }

    private Window made(boolean layUp, int year) {
        LocalDate newYear = LocalDate.of(year, 1, 1);
        return layUp ? season.layUpEndingFrom(newYear) : season.recommissionEndingFrom(newYear);
    }
}
