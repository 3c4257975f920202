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
import sternwright.measure.MonthlyShare;
import sternwright.service.Half;
import sternwright.visit.problem.BoatMonth;
import sternwright.visit.problem.MonthSpan;
import sternwright.visit.problem.UseProfile;
import sternwright.yard.SeasonDates;
import sternwright.yard.SeasonDates.Window;
import sternwright.yard.WinterStay;

/**
 * The horizon of one boat: which month is which, where the boat can be in each, and which months belong to lay-up and
 * recommission.
 */
final class BoatCalendar {
    /** A month counts for a window if at least so many of its days lie in it. Common practice, no source. */
    private static final int DAYS_THAT_COUNT = 8;

    /** A boat counts as laid up once less than this share of a year's hours is still to come before spring. Common practice, no source. */
    private static final double USE_LEFT = 0.05;

    /** Months at least in which a work of unknown history finds a visit. Common practice, no source. */
    private static final int MONTHS_TO_FIND = 2;

    /** Weeks a boat stands ashore for a work visit between lift and launch. Common practice, no source. */
    static final double WEEKS_ASHORE = 2;

    private final BoatQuestion question;
    private final SeasonDates season;
    private final WinterStay stay;
    final YearMonth firstMonth;
    final int horizon;

    BoatCalendar(BoatQuestion question) {
        this.question = question;
        season = question.yard().season();
        stay = new WinterStay(season);
        horizon = question.horizonMonths();
        firstMonth = firstMonth(question.today());
    }

    /** The month a plan begins with: too few days left of the running month belong to the next. */
    static YearMonth firstMonth(LocalDate today) {
        YearMonth now = YearMonth.from(today);
        long left = ChronoUnit.DAYS.between(today, now.atEndOfMonth()) + 1;
        return left < DAYS_THAT_COUNT ? now.plusMonths(1) : now;
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
            list.add(layUp ? laidUp(window) : window);
            LocalDate after = window.to().plusDays(1);
            Window half = layUp ? season.layUpEndingFrom(after) : season.recommissionEndingFrom(after);
            if (!half.from().isAfter(window.to()) && beforeFrost) {
                half = season.layUpEndingFrom(half.to().plusDays(1));
            }
            window = beforeFrost ? new Window(half.from(), frostAfter(half.from())) : half;
        }
        return list;
    }

    /**
     * The window of a lay-up work, from when the boat is laid up: a boat that is still used would lose its protection again. That
     * is the month of the haul-out, else the last month with hours worth counting; the end of the window stays.
     */
    private Window laidUp(Window window) {
        YearMonth end = YearMonth.from(window.to());
        if (window.to().getDayOfMonth() < DAYS_THAT_COUNT) {
            end = end.minusMonths(1);
        }
        YearMonth month = YearMonth.from(window.from());
        while (month.isBefore(end) && !isLaidUp(month)) {
            month = month.plusMonths(1);
        }
        LocalDate from = month.atDay(1);
        return from.isAfter(window.from()) ? new Window(from, window.to()) : window;
    }

    private boolean isLaidUp(YearMonth month) {
        if (question.boat().winter() == Winter.ASHORE) {
            return stay.ashore(month);
        }
        LocalDate after = month.plusMonths(1).atDay(1);
        LocalDate spring = season.recommissionEndingFrom(after).from();
        return !spring.isAfter(after) || share().between(after, spring) < USE_LEFT;
    }

    /**
     * The months in which the first visit may do a work of unknown history: from now to the end of the half of the year that comes
     * next. What belongs to recommission waits for it while the boat is laid up, because it is not used before.
     */
    Set<Month> monthsOfFirstVisit(Half half) {
        LocalDate today = question.today();
        // Laid up from the first day of lay-up to the first of recommission: then recommission ends before the next
        // lay-up does.
        Window layUp = season.layUpEndingFrom(today);
        Window recommission = season.recommissionEndingFrom(today);
        boolean winter =
                layUp.contains(today) || recommission.to().isBefore(layUp.from()) && !recommission.contains(today);
        boolean laidUp = winter && question.boat().winter() != Winter.IN_USE;
        if (half == Half.RECOMMISSION && laidUp) {
            return months(half);
        }
        YearMonth least = firstMonth.plusMonths(MONTHS_TO_FIND - 1);
        YearMonth layUpEnd =
                YearMonth.from(season.layUpEndingFrom(least.atEndOfMonth()).to());
        YearMonth recommissionEnd = YearMonth.from(
                season.recommissionEndingFrom(least.atEndOfMonth()).to());
        YearMonth end = layUpEnd.isBefore(recommissionEnd) ? layUpEnd : recommissionEnd;
        Set<Month> months = EnumSet.copyOf(months(half));
        for (YearMonth m = firstMonth; !m.isAfter(end); m = m.plusMonths(1)) {
            months.add(m.getMonth());
        }
        return months;
    }

    private MonthlyShare share() {
        return question.berth().southern()
                ? question.use().months().shiftedHalfAYear()
                : question.use().months();
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
            boolean toCome = stay.stillToCome(question.today(), m);
            boolean stands = knownAshore(m);
            boolean paid = winterAshore && (stay.ashore(m) || toCome || stands);
            boolean eitherPlace = (stay.atEitherEnd(m) || toCome) && !stands;
            boolean used = use.contains(m.getMonth());
            list.add(new BoatMonth(
                    paid,
                    !paid || eitherPlace,
                    paid || liftPrice.isPresent(),
                    prices.cents(WEEKS_ASHORE * weekly),
                    used ? prices.cents(WEEKS_ASHORE * loss) : 0));
        }
        return list;
    }

    /** Whether it is written down that the boat stands ashore, in the months of the lay-up that runs. */
    private boolean knownAshore(YearMonth m) {
        LocalDate since = question.ashoreSince();
        Window layUp = season.layUpEndingFrom(question.today());
        return since != null
                && !since.isAfter(question.today())
                && layUp.contains(question.today())
                && !m.isAfter(YearMonth.from(layUp.to()));
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
        MonthlyShare share = share();
        List<Double> hours = new ArrayList<>();
        for (int t = 0; t < horizon; t++) {
            hours.add(annualHours * share.of(firstMonth.plusMonths(t).getMonth()));
        }
        return new UseProfile(hours);
    }

    /** Share of a year's use from the start of the horizon to a day; 0 before its start. */
    double useUntil(LocalDate day) {
        LocalDate start = firstMonth.atDay(1);
        return day.isAfter(start) ? share().between(start, day) : 0;
    }
}
