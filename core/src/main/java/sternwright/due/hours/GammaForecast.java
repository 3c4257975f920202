package sternwright.due.hours;

import java.time.LocalDate;
import java.util.List;
import sternwright.history.RunningHours;
import sternwright.measure.MonthlyShare;
import sternwright.yard.Use;

/**
 * Hours as a gamma process whose rate is learnt from the meter.
 *
 * <p>With {@code X(u) | λ ~ Gamma(ν u, λ)} and {@code λ ~ Gamma(a, b)}, hours {@code x} run over the share {@code U} of use give
 * {@code λ ~ Gamma(a + ν U, b + x)}, and the hours to come obey {@code X/(X + b') ~ Beta(ν u, a')}. So the chance that {@code h}
 * hours are reached within {@code u} is {@code 1 − I_z(ν u, a')} with {@code z = h/(h + b')}, {@code I} the regularised incomplete
 * beta function. The quantiles of the date follow by solving for {@code u}. (Conjugacy: Gelman et al., Bayesian Data Analysis,
 * from memory; the compound is the beta-prime distribution.)
 */
public final class GammaForecast implements HoursForecast {
    /**
     * Shape of one year's hours: year to year the hours of one boat vary by {@code 1/sqrt(8)}, 35 %. Common practice, no source.
     */
    static final double SHAPE_PER_YEAR = 8;

    /** How far back the meter is believed to tell today's use, years. Common practice, no source. */
    private static final int YEARS_BACK = 5;

    private static final double FARTHEST_YEARS = 60;

    /** One for all engines: what it holds depends on nothing but the shape of a year. */
    private static final GammaQuantiles QUANTILES = new GammaQuantiles(SHAPE_PER_YEAR);

    private final MonthlyShare months;
    private final double shape;
    private final double scaleHours;

    /**
     * A forecast for one engine.
     *
     * @param use what the yard expects of this kind of use
     * @param months how use spreads over the year, already turned round south of the equator
     * @param hours what the meters told
     */
    public GammaForecast(Use use, MonthlyShare months, RunningHours hours) {
        this.months = months;
        double a = 2 + 1 / (use.variation() * use.variation());
        double b = use.annualHours() * (a - 1) / SHAPE_PER_YEAR;
        double run = 0;
        double share = 0;
        List<RunningHours.Point> points = hours.points();
        if (!points.isEmpty()) {
            RunningHours.Point last = points.get(points.size() - 1);
            RunningHours.Point first = firstSince(points, last.date().minusYears(YEARS_BACK));
            run = last.hours() - first.hours();
            share = months.between(first.date(), last.date());
        }
        this.shape = a + SHAPE_PER_YEAR * share;
        this.scaleHours = b + run;
    }

    private static RunningHours.Point firstSince(List<RunningHours.Point> points, LocalDate since) {
        int i = points.size() - 1;
        while (i > 0 && !points.get(i - 1).date().isBefore(since)) {
            i--;
        }
        return points.get(i);
    }

    /**
     * The hours expected in a year.
     *
     * @return posterior mean, hours a year
     */
    public double annualHours() {
        return SHAPE_PER_YEAR * scaleHours / (shape - 1);
    }

    @Override
    public Range reach(LocalDate from, double hours) {
        double[] years = quantiles(hours);
        return new Range(months.after(from, years[0]), months.after(from, years[1]), months.after(from, years[2]));
    }

    /** Years of use by which the hours are run with 10, 50 and 90 % chance. */
    double[] quantiles(double hours) {
        double[] years = QUANTILES.years(hours / scaleHours, shape);
        for (int i = 0; i < years.length; i++) {
            years[i] = Math.min(years[i], FARTHEST_YEARS);
        }
        return years;
    }

    /**
     * The chance that the engine has run the hours within a share of use.
     *
     * @param hours hours to run
     * @param years share of use, years
     * @return 0 to 1
     */
    double chance(double hours, double years) {
        return QUANTILES.chance(hours / scaleHours, shape, years);
    }
}
