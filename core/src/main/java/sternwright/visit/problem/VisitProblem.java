package sternwright.visit.problem;

import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/**
 * Which visits, and which works in each, at least cost over the horizon.
 *
 * @param firstMonth calendar month of month 0
 * @param months the horizon, month by month (24 by custom)
 * @param ashoreAtStart the boat already stands ashore, its lift paid, when month 0 begins
 * @param tariff fixed costs of visits and lifts
 * @param servicePoints places to open up
 * @param works the works
 * @param followOns works that follow other works, without a ring
 * @param demands what is asked of the plan besides
 */
public record VisitProblem(
        YearMonth firstMonth,
        List<BoatMonth> months,
        boolean ashoreAtStart,
        VisitTariff tariff,
        List<ServicePoint> servicePoints,
        List<Work> works,
        List<FollowOn> followOns,
        VisitDemands demands) {
    public VisitProblem {
        months = List.copyOf(months);
        servicePoints = List.copyOf(servicePoints);
        works = List.copyOf(works);
        followOns = List.copyOf(followOns);
        if (months.isEmpty()) {
            throw new IllegalArgumentException("the horizon is empty: expected at least one month");
        }
        for (Work work : works) {
            if (work.servicePoint() < -1 || work.servicePoint() >= servicePoints.size()) {
                throw new IllegalArgumentException(work.name() + ": service point " + work.servicePoint() + " of "
                        + servicePoints.size() + " does not exist");
            }
            if (work.life().use().hoursPerMonth().size() < months.size()) {
                throw new IllegalArgumentException(work.name() + ": running hours are given for "
                        + work.life().use().hoursPerMonth().size() + " months, expected " + months.size());
            }
        }
        for (FollowOn f : followOns) {
            checkFollowOn(f, works);
        }
        for (LeftUntil l : demands.left()) {
            if (l.work() < 0 || l.work() >= works.size()) {
                throw new IllegalArgumentException("work " + l.work() + " of " + works.size() + " does not exist");
            }
        }
    }

    private static void checkFollowOn(FollowOn f, List<Work> works) {
        if (f.trigger() < 0 || f.trigger() >= works.size() || f.follower() < 0 || f.follower() >= works.size()) {
            throw new IllegalArgumentException("follow-on names a work that does not exist: " + f);
        }
        int cycle = works.get(f.trigger()).phases().size();
        if (f.phases().stream().anyMatch(k -> k < 0 || k >= cycle)) {
            throw new IllegalArgumentException("follow-on names phases " + f.phases() + " of a cycle of " + cycle);
        }
        Work follower = works.get(f.follower());
        if (follower.rules().earliestFraction() > 0) {
            throw new IllegalArgumentException(
                    follower.name() + " follows " + works.get(f.trigger()).name()
                            + ": expected an earliest fraction of 0, since it may fall due at any time");
        }
    }

    /** Number of months in the horizon. */
    public int horizon() {
        return months.size();
    }

    /** Calendar month of a month of the horizon. */
    public Month calendarMonth(int month) {
        return firstMonth.plusMonths(month).getMonth();
    }

    /** A month of the horizon in words: October 2026. */
    public String monthName(int month) {
        YearMonth named = firstMonth.plusMonths(month);
        return named.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + named.getYear();
    }

    /** The same question under other demands. */
    public VisitProblem with(VisitDemands other) {
        return new VisitProblem(firstMonth, months, ashoreAtStart, tariff, servicePoints, works, followOns, other);
    }

    /** The same question with other works and rules between them. */
    public VisitProblem withWorks(List<Work> otherWorks, List<FollowOn> otherFollowOns) {
        return new VisitProblem(
                firstMonth, months, ashoreAtStart, tariff, servicePoints, otherWorks, otherFollowOns, demands);
    }
}
