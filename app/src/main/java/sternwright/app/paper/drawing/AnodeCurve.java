package sternwright.app.paper.drawing;

import static sternwright.app.paper.drawing.PotentialScale.escape;
import static sternwright.app.paper.drawing.PotentialScale.format;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import sternwright.protection.anode.AnodeForecast;

/** What is left of an anode over time: the median, its 80 % band, the half at which it is renewed, the rest that cannot be used. */
public final class AnodeCurve {
    private static final int WIDTH = 340;
    private static final int HEIGHT = 178;
    private static final int LEFT = 38;
    private static final int RIGHT = 328;
    private static final int TOP = 30;
    private static final int BOTTOM = 148;
    private static final String INK = "#544d44";
    private static final String ACCENT = "#86291a";

    private final AnodeForecast forecast;
    private final int months;
    private final StringBuilder out = new StringBuilder();

    private AnodeCurve(AnodeForecast forecast) {
        this.forecast = forecast;
        months = horizon(forecast);
    }

    /**
     * Draws the course of one anode.
     *
     * @param forecast the forecast
     * @return the drawing, ready to stand in a page
     */
    public static String of(AnodeForecast forecast) {
        return new AnodeCurve(forecast).draw();
    }

    /** As far as the slow course needs to half, in whole years, at least one. */
    private static int horizon(AnodeForecast f) {
        int n = 0;
        while (n < f.slow().size() - 1 && f.slow().get(n) > 0.5) {
            n++;
        }
        return Math.min(f.slow().size() - 1, 12 * (int) Math.max(1, Math.ceil((n + 2) / 12.0)));
    }

    private String draw() {
        out.append(format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"anode\" viewBox=\"0 0 %d %d\" width=\"306\" height=\"160\""
                        + " font-family=\"SourceSerifDrawing, 'Source Serif 4'\" font-size=\"10.5\" role=\"img\" aria-label=\"%s\" alt=\"%s\">",
                WIDTH, HEIGHT, escape(words()), escape(words())));
        out.append(format(
                "<text class=\"ink\" fill=\"#1c1813\" font-size=\"12\" x=\"0\" y=\"14\">%s</text>",
                escape(forecast.body().name())));
        axes();
        out.append(format("<path class=\"spread\" fill=\"#e9ddcf\" d=\"%sz\"/>", outline()));
        out.append(format(
                "<path class=\"limit\" stroke=\"%s\" stroke-dasharray=\"4 3\" stroke-width=\"1\" d=\"M%d,%.1f H%d\"/>",
                ACCENT, LEFT, y(0.5), RIGHT));
        out.append(format(
                "<text class=\"wrong\" fill=\"%s\" x=\"%d\" y=\"%.1f\" text-anchor=\"end\">renew at half</text>",
                ACCENT, RIGHT, y(0.5) - 4));
        out.append(format(
                "<path class=\"course\" fill=\"none\" stroke=\"#1c1813\" stroke-width=\"1.6\" d=\"%s\"/>",
                line(forecast.median(), true)));
        return out.append("</svg>").toString();
    }

    private void axes() {
        for (int percent = 0; percent <= 100; percent += 25) {
            double at = y(percent / 100.0);
            out.append(format(
                    "<path class=\"rule\" stroke=\"#d5ccbd\" stroke-width=\"0.6\" d=\"M%d,%.1f H%d\"/>",
                    LEFT, at, RIGHT));
            out.append(format(
                    "<text class=\"soft\" fill=\"%s\" text-anchor=\"end\" x=\"%d\" y=\"%.1f\">%d %%</text>",
                    INK, LEFT - 5, at + 3.5, percent));
        }
        int step = months <= 12 ? 3 : months <= 24 ? 6 : 12;
        for (int m = 0; m <= months; m += step) {
            LocalDate day = forecast.from().plusMonths(m);
            String anchor = m == 0 ? "start" : m + step > months ? "end" : "middle";
            out.append(format(
                    "<text class=\"soft\" fill=\"%s\" text-anchor=\"%s\" x=\"%.1f\" y=\"%d\">%s</text>",
                    INK,
                    anchor,
                    x(m),
                    BOTTOM + 16,
                    step == 12 && m > 0 ? Integer.toString(day.getYear()) : month(day)));
        }
    }

    private static String month(LocalDate day) {
        return day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + day.getYear();
    }

    private double x(double month) {
        return LEFT + month / months * (RIGHT - LEFT);
    }

    private static double y(double left) {
        return BOTTOM - Math.max(0, Math.min(1, left)) * (BOTTOM - TOP);
    }

    private String line(List<Double> left, boolean start) {
        StringBuilder path = new StringBuilder();
        for (int m = 0; m <= months; m++) {
            path.append(format("%s%.1f,%.1f ", m == 0 && start ? "M" : "L", x(m), y(left.get(m))));
        }
        return path.toString();
    }

    private String outline() {
        StringBuilder path = new StringBuilder(line(forecast.slow(), true));
        for (int m = months; m >= 0; m--) {
            path.append(format("L%.1f,%.1f ", x(m), y(forecast.fast().get(m))));
        }
        return path.toString();
    }

    private String words() {
        return forecast.body().name() + ": " + Math.round(100 * forecast.remainingNow()) + " % left on "
                + forecast.from()
                + ", half gone "
                + (forecast.halfGone() == null ? "later than five years ahead" : "about " + forecast.halfGone());
    }
}
