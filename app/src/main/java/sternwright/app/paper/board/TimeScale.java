package sternwright.app.paper.board;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;

/** Days across a drawing. */
record TimeScale(LocalDate from, LocalDate to, List<LocalDate> weeks, double left, double width) {
    /** A day of two figures and a little air. */
    private static final double DAY_LABEL_PX = 13;

    double x(LocalDateTime at) {
        double days = ChronoUnit.DAYS.between(from, at.toLocalDate()) + at.getHour() / 24.0;
        double all = ChronoUnit.DAYS.between(from, to) + 1;
        return left + width * Math.max(0, Math.min(1, days / all));
    }

    double x(LocalDate day) {
        return x(day.atStartOfDay());
    }

    /** End of a week: begin of the next, or of the day after the last. */
    double weekEnd(int week) {
        return week + 1 < weeks.size() ? x(weeks.get(week + 1)) : left + width;
    }

    /** Months with their names above a hairline for each, through {@code height}. */
    void axis(Svg svg, double height, Locale locale, boolean days) {
        DateTimeFormatter name = DateTimeFormatter.ofPattern("LLL", locale);
        double ticks = days ? 29 : 18;
        LocalDate month = from.withDayOfMonth(1);
        while (!month.isAfter(to)) {
            double x = month.isBefore(from) ? left : x(month);
            if (month.isAfter(from)) {
                svg.shape("line", "b-month", Look.MONTH, "x1", x, "x2", x, "y1", 4.0, "y2", height);
            }
            boolean january = month.getMonthValue() == 1;
            double end = month.plusMonths(1).isAfter(to) ? left + width : x(month.plusMonths(1));
            if (end - x > 26) {
                svg.words(
                        x + 3,
                        13,
                        "b-axis",
                        Look.AXIS,
                        name.format(month) + (january || end - left < 90 ? " " + month.getYear() : ""));
            }
            month = month.plusMonths(1);
        }
        for (int w = 0; w < weeks.size(); w++) {
            LocalDate week = weeks.get(w);
            if (week.isBefore(from) || week.isAfter(to)) {
                continue;
            }
            double x = x(week);
            svg.shape("line", "b-week", Look.WEEK, "x1", x, "x2", x, "y1", ticks, "y2", ticks + 3);
            double label = Math.max(x, left + 7);
            boolean roomBeforeNext = w + 1 == weeks.size() || x(weeks.get(w + 1)) - label >= DAY_LABEL_PX;
            if (days && weekPx() >= DAY_LABEL_PX && roomBeforeNext) {
                svg.words(label, 26, "b-day", Look.DAY, Integer.toString(week.getDayOfMonth()));
            }
        }
    }

    private double weekPx() {
        return width * 7 / (ChronoUnit.DAYS.between(from, to) + 1);
    }

    /** Whether any of these days is shown. */
    boolean shows(LocalDate first, LocalDate last) {
        return !last.isBefore(from) && !first.isAfter(to);
    }
}
