package sternwright.visit;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import sternwright.boat.Winter;
import sternwright.service.Half;
import sternwright.visit.problem.BoatMonth;
import sternwright.visit.problem.MonthSpan;
import sternwright.visit.problem.UseProfile;
import sternwright.yard.SeasonDates;
import sternwright.yard.SeasonDates.Window;

/**
 * The horizon of one boat: which month is which, where the boat can be in each, and which months belong to lay-up and
 * recommission.
 */
final class BoatCalendar {
    /** A month counts for a window if at least so many of its days lie in it. Common practice, no source. */
    private static final int DAYS_THAT_COUNT = 8;

    /** Weeks a boat stands ashore for a work visit between lift and launch. Common practice, no source. */
    static final double WEEKS_ASHORE = 2;

    private final BoatQuestion question;
    private final SeasonDates season;
    final YearMonth firstMonth;
    final int horizon;

    BoatCalendar(BoatQuestion question) {
        this.question = question;
        season = question.yard().season();
        horizon = question.horizonMonths();
        YearMonth now = YearMonth.from(question.today());
        long left = ChronoUnit.DAYS.between(question.today(), now.atEndOfMonth()) + 1;
        firstMonth = left < DAYS_THAT_COUNT ? now.plusMonths(1) : now;
    }

    /** Months of the horizon that have passed by a day, fractions by days; negative before its start. */
    double monthsUntil(LocalDate day) {
        YearMonth month = YearMonth.from(day);
        return ChronoUnit.MONTHS.between(firstMonth, month) + (day.getDayOfMonth() - 1.0) / month.lengthOfMonth();
    }

    /** First day of a month of the horizon: today for the first, to which the few days left of a running month belong. */
    LocalDate firstDay(int month) {
        return month == 0 ? question.today() : firstMonth.plusMonths(month).atDay(1);
    }

    /** Last day of a month of the horizon. */
    LocalDate lastDay(int month) {
        return firstMonth.plusMonths(month).atEndOfMonth();
    }

    /** The months of the year that belong to a half; all for any. */
    Set<Month> months(Half half) {
        if (half == Half.ANY) {
            return EnumSet.allOf(Month.class);
        }
        Window window = half == Half.LAY_UP
                ? season.layUpEndingFrom(question.today())
                : season.recommissionEndingFrom(question.today());
        Set<Month> months = EnumSet.noneOf(Month.class);
        for (YearMonth m = YearMonth.from(window.from());
                !m.isAfter(YearMonth.from(window.to()));
                m = m.plusMonths(1)) {
            if (days(m, window) >= DAYS_THAT_COUNT) {
                months.add(m.getMonth());
            }
        }
        return months.isEmpty() ? EnumSet.of(window.to().getMonth()) : months;
    }

    private static long days(YearMonth m, Window w) {
        LocalDate from = w.from().isAfter(m.atDay(1)) ? w.from() : m.atDay(1);
        LocalDate to = w.to().isBefore(m.atEndOfMonth()) ? w.to() : m.atEndOfMonth();
        return ChronoUnit.DAYS.between(from, to) + 1;
    }

    /** The windows of an occasion from the first one on, as far as the horizon reaches. */
    List<Window> windows(Window first, boolean layUp, boolean beforeFrost) {
        List<Window> list = new ArrayList<>();
        LocalDate end = lastDay(horizon - 1);
        Window window = first;
        while (!window.to().isAfter(end)) {
            list.add(window);
            LocalDate after = window.to().plusDays(1);
            Window half = layUp ? season.layUpEndingFrom(after) : season.recommissionEndingFrom(after);
            if (!half.from().isAfter(window.to()) && beforeFrost) {
                half = season.layUpEndingFrom(half.to().plusDays(1));
            }
            window = beforeFrost ? new Window(half.from(), frostAfter(half.from())) : half;
        }
        return list;
    }

    private LocalDate frostAfter(LocalDate day) {
        MonthDay frost = question.berth().firstFrost();
        if (frost == null) {
            return season.layUpEndingFrom(day).to();
        }
        LocalDate night = frost.atYear(day.getYear());
        return night.isBefore(day) ? frost.atYear(day.getYear() + 1) : night;
    }

    /** The months in which a work can be done within a window; a window already past asks for the first two months. */
    MonthSpan span(Window window) {
        int first = (int) Math.floor(monthsUntil(window.from()));
        int last = (int) Math.floor(monthsUntil(window.to()));
        if (last >= 0 && window.to().getDayOfMonth() < DAYS_THAT_COUNT) {
            last--;
        }
        if (last < 0) {
            return new MonthSpan(0, Math.min(1, horizon - 1));
        }
        first = Math.max(0, first);
        return new MonthSpan(first, Math.max(first, last));
    }

    /** Where the boat can be, month by month. */
    List<BoatMonth> boatMonths(OptionalDouble liftPrice, Prices prices) {
        List<BoatMonth> list = new ArrayList<>();
        boolean winterAshore = question.boat().winter() == Winter.ASHORE;
        Set<Month> use = monthsOfUse();
        double weekly =
                question.yard().tariff().standingWeek(question.boat().hull().lengthM());
        double loss = question.yard().tariff().lossOfUsePerWeek();
        for (int t = 0; t < horizon; t++) {
            YearMonth m = firstMonth.plusMonths(t);
            boolean paid = winterAshore && inWinterStay(m);
            boolean atEitherEnd = paid && (!inWinterStay(m.minusMonths(1)) || !inWinterStay(m.plusMonths(1)));
            boolean used = use.contains(m.getMonth());
            list.add(new BoatMonth(
                    paid,
                    !paid || atEitherEnd,
                    paid || liftPrice.isPresent(),
                    prices.cents(WEEKS_ASHORE * weekly),
                    used ? prices.cents(WEEKS_ASHORE * loss) : 0));
        }
        return list;
    }

    /** Hauled in the middle of lay-up, launched in the middle of recommission; common practice, no source. */
    private boolean inWinterStay(YearMonth m) {
        Window layUp = season.layUpEndingFrom(m.atDay(1).minusYears(1));
        YearMonth haul = YearMonth.from(middle(layUp));
        for (int i = 0; i < 3; i++) {
            YearMonth launch = YearMonth.from(middle(season.recommissionEndingFrom(haul.atEndOfMonth())));
            if (!m.isBefore(haul) && !m.isAfter(launch)) {
                return true;
            }
            haul = haul.plusYears(1);
        }
        return false;
    }

    private static LocalDate middle(Window w) {
        return w.from().plusDays(ChronoUnit.DAYS.between(w.from(), w.to()) / 2);
    }

    /** The boating months: neither lay-up nor winter nor recommission. */
    private Set<Month> monthsOfUse() {
        Set<Month> months = EnumSet.noneOf(Month.class);
        Window recommission = season.recommissionEndingFrom(question.today());
        Window layUp = season.layUpEndingFrom(recommission.to());
        for (LocalDate d = recommission.to().plusDays(15); d.isBefore(layUp.from()); d = d.plusMonths(1)) {
            months.add(d.getMonth());
        }
        return months;
    }

    /** Expected running hours per month of the horizon. */
    UseProfile use(double annualHours) {
        var share = question.berth().southern()
                ? question.use().months().shiftedHalfAYear()
                : question.use().months();
        List<Double> hours = new ArrayList<>();
        for (int t = 0; t < horizon; t++) {
            hours.add(annualHours * share.of(firstMonth.plusMonths(t).getMonth()));
        }
        return new UseProfile(hours);
    }

    /** Share of a year's use from the start of the horizon to a day; 0 before its start. */
    double useUntil(LocalDate day) {
        LocalDate start = firstMonth.atDay(1);
        var share = question.berth().southern()
                ? question.use().months().shiftedHalfAYear()
                : question.use().months();
        return day.isAfter(start) ? share.between(start, day) : 0;
    }
}
