package sternwright.due;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.gamma.RegularizedBeta;
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
    private static final double BRACKET = 1.4;

    /** The 90 % point of the standard normal distribution. */
    private static final double NORMAL_90 = 1.2815515655446004;

    private static final double FAR_OFF = 0.03;

    private final MonthlyShare months;
    private final double shape;
    private final double scaleHours;
    private final Map<Double, double[]> cache = new HashMap<>();

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
        Optional<RunningHours.Point> last = hours.latest();
        double run = 0;
        double share = 0;
        if (last.isPresent()) {
            LocalDate since = last.get().date().minusYears(YEARS_BACK);
            RunningHours.Point first = hours.points().stream()
                    .filter(p -> !p.date().isBefore(since))
                    .findFirst()
                    .orElse(last.get());
            run = last.get().hours() - first.hours();
            share = months.between(first.date(), last.get().date());
        }
        this.shape = a + SHAPE_PER_YEAR * share;
        this.scaleHours = b + run;
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
        double[] years = cache.computeIfAbsent(hours, this::quantiles);
        return new Range(months.after(from, years[0]), months.after(from, years[1]), months.after(from, years[2]));
    }

    double[] quantiles(double hours) {
        double median = quantile(hours, 0.5, 0, hours / annualHours());
        return new double[] {
            quantile(hours, 0.1, -NORMAL_90, 0.7 * median), median, quantile(hours, 0.9, NORMAL_90, 1.4 * median)
        };
    }

    /**
     * Years until a chance is reached: the cube-root normal approximation of the F distribution (Paulson 1942, from memory) gives
     * the place, one exact evaluation corrects it. Where the correction is not small the exact equation is solved.
     */
    private double quantile(double hours, double target, double normal, double guess) {
        double years = approximate(hours, normal, Math.min(Math.max(guess, 1e-3), FARTHEST_YEARS));
        double off = target - chance(hours, years);
        if (Math.abs(off) > FAR_OFF || years >= FARTHEST_YEARS || years <= 1e-3) {
            return solve(hours, target, guess);
        }
        double density = Math.exp(-normal * normal / 2) / Math.sqrt(2 * Math.PI);
        return years * Math.exp(off / density / slope(hours, years));
    }

    private double approximate(double hours, double normal, double guess) {
        double logYears = Math.log(guess);
        for (int i = 0; i < 12; i++) {
            double years = Math.exp(logYears);
            double step = (normal - normalScore(hours, years)) / slope(hours, years);
            logYears += Math.max(-1, Math.min(1, step));
            if (Math.abs(step) < 1e-4) {
                break;
            }
        }
        return Math.exp(Math.min(logYears, Math.log(FARTHEST_YEARS)));
    }

    /** Normal score of the chance, rising with the years. */
    private double normalScore(double hours, double years) {
        double a = 2.0 / (9 * 2 * SHAPE_PER_YEAR * years);
        double b = 2.0 / (9 * 2 * shape);
        double root = Math.cbrt(hours * shape / (SHAPE_PER_YEAR * years * scaleHours));
        return -((1 - b) * root - (1 - a)) / Math.sqrt(b * root * root + a);
    }

    private double slope(double hours, double years) {
        double d = 1e-4;
        return (normalScore(hours, years * (1 + d)) - normalScore(hours, years)) / d;
    }

    /**
     * The chance that the engine has run the hours within a share of use.
     *
     * @param hours hours to run
     * @param years share of use, years
     * @return 0 to 1
     */
    double chance(double hours, double years) {
        return RegularizedBeta.complement(hours / (hours + scaleHours), SHAPE_PER_YEAR * years, shape);
    }

    /**
     * Years until the chance is reached, to a part in a thousand: the Illinois form of regula falsi in log(years), on a bracket
     * widened from the guess. The chance rises with the years, so there is one answer.
     */
    private double solve(double hours, double target, double guess) {
        double low = Math.min(Math.max(guess, 1e-4), FARTHEST_YEARS);
        double atLow = chance(hours, low) - target;
        double high = low;
        double atHigh = atLow;
        while (atLow > 0 && low > 1e-6) {
            high = low;
            atHigh = atLow;
            low /= BRACKET;
            atLow = chance(hours, low) - target;
        }
        while (atHigh < 0 && high < FARTHEST_YEARS) {
            low = high;
            atLow = atHigh;
            high *= BRACKET;
            atHigh = chance(hours, high) - target;
        }
        return atHigh < 0 ? FARTHEST_YEARS : illinois(hours, target, Math.log(low), atLow, Math.log(high), atHigh);
    }

    private double illinois(double hours, double target, double x0, double y0, double x1, double y1) {
        double low = x0;
        double atLow = y0;
        double high = x1;
        double atHigh = y1;
        double x = high;
        for (int i = 0; i < 30 && high - low > 1e-3 && atHigh != atLow; i++) {
            x = high - atHigh * (high - low) / (atHigh - atLow);
            double y = chance(hours, Math.exp(x)) - target;
            if (Math.abs(y) < 1e-4) {
                break;
            }
            if (y < 0) {
                low = x;
                atLow = y;
                atHigh /= 2;
            } else {
                high = x;
                atHigh = y;
                atLow /= 2;
            }
        }
        return Math.exp(x);
    }
}
