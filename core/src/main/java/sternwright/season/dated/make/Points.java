package sternwright.season.dated.make;

import org.jspecify.annotations.Nullable;
import sternwright.season.Promise;
import sternwright.season.Weights;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.WorkingTime;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.SeasonPrices;

/**
 * The yard's prices as whole points. A point is a sixtieth of one extra person for a week, so that the search, whose temperature is
 * in points, works at the same heat for every yard and currency.
 */
record Points(int frost, int late, int early, Weights weights, double value) {
    private static final double POINTS_PER_HAND_WEEK = 60;

    /** Dearer than this is as good as never, and sums stay within what the search can count. */
    private static final long MOST = 1_000_000;

    static Points of(SeasonRequest request) {
        SeasonPrices prices = request.resources().prices();
        double week = handWeek(request);
        double value = week / POINTS_PER_HAND_WEEK;
        return new Points(
                perQuarter(prices.frostLatePerDay(), value),
                perQuarter(prices.latePerDay(), value),
                perQuarter(prices.earlyPerDay(), value),
                new Weights(
                        (int) Math.round(POINTS_PER_HAND_WEEK),
                        whole(prices.unevenPerHand() / value),
                        whole(prices.promiseMoved() / value),
                        perQuarter(prices.promisePerDay(), value)),
                value);
    }

    /** One extra person for a week: overtime at the mean price, or half the labour price where nobody works overtime. */
    private static double handWeek(SeasonRequest request) {
        Double given = request.resources().prices().overtimePerHandWeek();
        if (given != null && given > 0) {
            return given;
        }
        double hours = request.resources().times().hoursADay()
                * request.yard().calendar().workingDays().size();
        double perHour = request.resources().crew().stream()
                .filter(c -> c.overtimeHoursAWeek() > 0 && c.overtimePerHour() > 0)
                .mapToDouble(CrewMember::overtimePerHour)
                .average()
                .orElse(request.yard().labourPerHour() / 2);
        return Math.max(1, perHour * hours);
    }

    /** Points of what it costs to move one promise. */
    int moved(@Nullable Double price) {
        return price == null ? Promise.USUAL : whole(price / value);
    }

    private static int perQuarter(double perDay, double value) {
        return whole(perDay / WorkingTime.QUARTERS_PER_DAY / value);
    }

    /** What has a price never becomes free by rounding. */
    private static int whole(double points) {
        return points <= 0 ? 0 : (int) Math.max(1, Math.min(MOST, Math.round(points)));
    }
}
