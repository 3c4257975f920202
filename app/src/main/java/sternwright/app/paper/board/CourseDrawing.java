package sternwright.app.paper.board;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * How a plan got better while it was searched: its cost falling in steps, the bound rising towards it, the time across.
 *
 * @param points in order of time
 * @param spentS how long was searched so far, s; both lines go on level until then
 * @param seconds the whole time, s
 * @param money words for an amount
 */
public record CourseDrawing(List<Point> points, double spentS, double seconds, DoubleFunction<String> money) {
    private static final double LEFT = 72;
    private static final double RIGHT = 316;
    private static final double TOP = 14;
    private static final double BOTTOM = 150;
    private static final double WIDTH = 420;
    private static final double HEIGHT = 182;
    private static final double LEAST_APART = 14;
    /** Less than this share of the amount is drawn as no difference. */
    private static final double LEVEL = 0.005;

    /** Copies the list. */
    public CourseDrawing {
        points = List.copyOf(points);
    }

    /**
     * How good the best plan was at one time.
     *
     * @param second seconds of search
     * @param cost of the best plan
     * @param bound no plan can cost less
     */
    public record Point(double second, double cost, double bound) {}

    /**
     * The drawing.
     *
     * @param title what it shows
     * @param cost the word for the cost
     * @param bound the word for the bound
     * @param begin the word under the begin of the time
     * @param end the word under its end
     * @return SVG that takes its inks from the page; empty without points
     */
    public String svg(String title, String cost, String bound, String begin, String end) {
        if (points.isEmpty()) {
            return "";
        }
        Svg svg = new Svg();
        for (double share : new double[] {0, 0.5, 1}) {
            double y = BOTTOM - share * (BOTTOM - TOP);
            svg.shape("line", "b-hair", "", "x1", LEFT, "x2", RIGHT, "y1", y, "y2", y);
            svg.words(LEFT - 8, y + 4, "b-axis b-end", "", money.apply(low() + share * (high() - low())));
        }
        svg.words(LEFT, HEIGHT - 10, "b-axis", "", begin);
        svg.words(RIGHT, HEIGHT - 10, "b-axis b-end", "", end);
        svg.shape("path", "b-bound", "fill=\"none\"", "d", steps(false));
        svg.shape("path", "b-course", "fill=\"none\"", "d", steps(true));
        Point last = points.get(points.size() - 1);
        double boundY = Math.min(BOTTOM, Math.max(y(last.bound), y(last.cost) + LEAST_APART));
        double costY = Math.min(y(last.cost), boundY - LEAST_APART);
        svg.words(end() + 6, costY + 4, "b-name", "", cost);
        svg.words(end() + 6, boundY + 4, "b-soft", "", bound);
        return svg.picture(WIDTH, HEIGHT, title);
    }

    private String steps(boolean cost) {
        StringBuilder path = new StringBuilder();
        for (Point p : points) {
            double y = y(cost ? p.cost : p.bound);
            path.append(
                    path.isEmpty()
                            ? String.format(Locale.ROOT, "M%.1f %.1f", x(p.second), y)
                            : String.format(Locale.ROOT, "H%.1fV%.1f", x(p.second), y));
        }
        return path.append(String.format(Locale.ROOT, "H%.1f", end())).toString();
    }

    /** Where both lines end. */
    private double end() {
        return x(Math.max(spentS, points.get(points.size() - 1).second)) + 3;
    }

    private double x(double second) {
        return LEFT + (RIGHT - LEFT) * Math.max(0, Math.min(1, second / Math.max(0.001, seconds)));
    }

    private double y(double amount) {
        double share = (amount - low()) / Math.max(1e-9, high() - low());
        return BOTTOM - Math.max(0, Math.min(1, share)) * (BOTTOM - TOP);
    }

    private double high() {
        return Math.max(1, points.stream().mapToDouble(Point::cost).max().orElse(1));
    }

    /** The axis begins at nought unless that would squeeze two lines into its upper half; one level line needs no close look. */
    private double low() {
        double least = points.stream().mapToDouble(Point::bound).min().orElse(0);
        double spread = high() - least;
        return least > high() / 2 && spread > LEVEL * high() ? least - spread / 4 : 0;
    }
}
