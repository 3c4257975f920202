package sternwright.yard;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import sternwright.yard.SeasonDates.Window;

/**
 * Where a boat that is hauled every winter is, as everybody presumes who is not told.
 *
 * <p>She is hauled between the first and the last day of lay-up and launched between the first and the last day of recommission: by
 * custom in the middle of both, and so far ahead that is what is planned with. While a lay-up or recommission runs, hauling or
 * launching may still be to come and she can be in either place; after the last day of lay-up she stands ashore, after the last
 * of recommission she is afloat. Common practice, no source.
 *
 * @param season lay-up and recommission of the yard
 */
public record WinterStay(SeasonDates season) {
    /**
     * Whether she stands ashore in a month by custom, if only for a part of it.
     *
     * @param month any month
     * @return true from the month of hauling to the month of launching
     */
    public boolean ashore(YearMonth month) {
        Window layUp = season.layUpEndingFrom(month.atDay(1).minusYears(1));
        YearMonth haul = YearMonth.from(middle(layUp));
        for (int i = 0; i < 3; i++) {
            YearMonth launch = YearMonth.from(middle(season.recommissionEndingFrom(haul.atEndOfMonth())));
            if (!month.isBefore(haul) && !month.isAfter(launch)) {
                return true;
            }
            haul = haul.plusYears(1);
        }
        return false;
    }

    /**
     * Whether she is hauled or launched in a month by custom, so that there are days afloat and days ashore in it.
     *
     * @param month any month
     * @return true in the first and the last month of her stay
     */
    public boolean atEitherEnd(YearMonth month) {
        return ashore(month) && (!ashore(month.minusMonths(1)) || !ashore(month.plusMonths(1)));
    }

    /**
     * Whether hauling or launching may still be to come in a month, seen from a day in the lay-up or recommission that has the month.
     *
     * @param day the day
     * @param month a month not before it
     * @return true from the customary month to the end of the half of the year that runs on the day
     */
    public boolean stillToCome(LocalDate day, YearMonth month) {
        return toCome(season.layUpEndingFrom(day), day, month)
                || toCome(season.recommissionEndingFrom(day), day, month);
    }

    private static boolean toCome(Window half, LocalDate day, YearMonth month) {
        return half.contains(day)
                && !month.isBefore(YearMonth.from(middle(half)))
                && !month.isAfter(YearMonth.from(half.to()));
    }

    /**
     * Whether she stands ashore on a day if nobody says otherwise, so that no haul-out has to be planned before her launch.
     *
     * @param day any day
     * @return true from the day after lay-up to the end of recommission
     */
    public boolean hauledBefore(LocalDate day) {
        return season.recommissionEndingFrom(day)
                .to()
                .isBefore(season.layUpEndingFrom(day).to());
    }

    private static LocalDate middle(Window w) {
        return w.from().plusDays(ChronoUnit.DAYS.between(w.from(), w.to()) / 2);
    }
}
