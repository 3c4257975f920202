package sternwright.app.desk.season.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How cost and bound of a run went while it was worked on.
 *
 * @param points in order of time, at most {@value #MOST}
 */
public record RunCourse(List<Point> points) {
    static final int MOST = 240;

    /** Copies the list. */
    public RunCourse {
        points = List.copyOf(points);
    }

    /**
     * How good the best plan was at one time.
     *
     * @param spentS seconds of search spent
     * @param cost of the best plan, in the yard's currency
     * @param bound no plan can cost less
     */
    public record Point(double spentS, double cost, double bound) {}

    /**
     * Reads what stands with the run.
     *
     * @param text as {@link #text} wrote it; null for none
     * @return the course
     */
    public static RunCourse of(@Nullable String text) {
        return text == null || text.isBlank()
                ? new RunCourse(List.of())
                : new RunCourse(text.lines().map(RunCourse::point).toList());
    }

    private static Point point(String line) {
        String[] figures = line.split(" ");
        return new Point(
                Double.parseDouble(figures[0]), Double.parseDouble(figures[1]), Double.parseDouble(figures[2]));
    }

    String text() {
        return points.stream()
                .map(p -> String.format(Locale.ROOT, "%.2f %.2f %.2f", p.spentS, p.cost, p.bound))
                .collect(Collectors.joining("\n"));
    }

    /** The course with one point more, if it says anything new; a long one is thinned out. */
    RunCourse with(Point next) {
        Point last = points.isEmpty() ? null : points.get(points.size() - 1);
        if (last != null && Math.abs(last.cost - next.cost) < 0.005 && Math.abs(last.bound - next.bound) < 0.005) {
            return this;
        }
        List<Point> more = new ArrayList<>(points);
        if (more.size() >= MOST) {
            List<Point> thin = new ArrayList<>();
            for (int i = 0; i < more.size(); i++) {
                if (i % 2 == 0 || i == more.size() - 1) {
                    thin.add(more.get(i));
                }
            }
            more = thin;
        }
        more.add(next);
        return new RunCourse(more);
    }
}
