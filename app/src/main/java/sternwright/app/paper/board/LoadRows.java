package sternwright.app.paper.board;

import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.Collectors;
import sternwright.season.dated.answer.Binding;
import sternwright.season.dated.answer.Load;

/** Rows of resources: a bar for each week, full weeks said beside the row. */
final class LoadRows {
    private static final double BAR = 14;
    private static final double DIGIT = 5;
    private static final double LEAST_WIDTH_FOR_COUNT = 11;
    private static final double LEAST_WIDTH_FOR_THREE_FIGURES = 19;

    /** Letters for which there is room at the end of a row. */
    private static final int ROOM = 31;

    private final SeasonBoard board;
    private final TimeScale scale;
    private final Svg names;
    private final Svg chart;

    LoadRows(SeasonBoard board, TimeScale scale, Svg names, Svg chart) {
        this.board = board;
        this.scale = scale;
        this.names = names;
        this.chart = chart;
    }

    void draw(List<Load> loads, double height) {
        scale.axis(chart, height, board.locale(), board.frame().wide());
        double y = board.frame().axis();
        for (Load load : loads) {
            names.words(0, y + middle(), "b-name", Look.NAME, BoatRows.cut(load.name(), 24));
            row(load, y);
            y += board.frame().loadRow();
        }
    }

    private double middle() {
        return board.frame().loadRow() / 2 + 3;
    }

    private void row(Load load, double y) {
        double base = y + (board.frame().loadRow() + BAR) / 2 - 1;
        double left = board.frame().labels();
        double right = left + board.frame().chart();
        chart.shape("line", "b-hair", Look.HAIR, "x1", left, "x2", right, "y1", base, "y2", base);
        for (int w = 0; w < load.weeks().size(); w++) {
            week(load, w, base);
        }
        List<Binding> full = board.binds(load);
        if (!full.isEmpty()) {
            chart.words(right + 8, y + middle(), "b-strong", Look.STRONG, words(full));
        } else {
            chart.words(right + 8, y + middle(), "b-soft", Look.SOFT, most(load));
        }
    }

    private void week(Load load, int w, double base) {
        Load.Week week = load.weeks().get(w);
        if (week.used() == 0) {
            return;
        }
        double x = scale.x(scale.weeks().get(w)) + 0.5;
        if (scale.weekEnd(w) - x < 1) {
            return;
        }
        double width = Math.max(1, scale.weekEnd(w) - x - 0.5);
        boolean full = load.full(w);
        double height = Math.max(1.5, BAR * Math.min(1, week.share()));
        chart.titled(
                "rect",
                full ? "b-full" : "b-fill",
                full ? Look.FULL : Look.FILL,
                load.name() + ", week of " + scale.weeks().get(w) + ": " + week.used() + " of " + week.there()
                        + (full ? ", full" : ""),
                "x",
                x,
                "y",
                base - height,
                "width",
                width,
                "height",
                height);
        if (width >= LEAST_WIDTH_FOR_COUNT
                && (week.used() < 100 || width >= LEAST_WIDTH_FOR_THREE_FIGURES || w % 2 == 0)
                && x + width / 2 - halfWidth(week.used()) >= board.frame().labels()) {
            boolean inside = full;
            chart.words(
                    x + width / 2,
                    inside || !board.frame().wide() ? base - 3 : base - height - 2,
                    inside ? "b-count-full" : "b-count",
                    inside ? Look.COUNT_FULL : Look.COUNT,
                    Integer.toString(week.used()));
        }
    }

    /** Half of what a count takes: where the first week is a short one, a long count would begin before the chart. */
    private static double halfWidth(int count) {
        return Integer.toString(count).length() * DIGIT / 2;
    }

    private String words(List<Binding> full) {
        int shown = full.size();
        while (shown > 1 && words(full, shown).length() > ROOM) {
            shown--;
        }
        return words(full, shown);
    }

    private String words(List<Binding> full, int shown) {
        String stretches = full.stream().limit(shown).map(this::days).collect(Collectors.joining(", "));
        return "full " + stretches + (full.size() > shown ? ", " + (full.size() - shown) + " more" : "");
    }

    private String days(Binding full) {
        DateTimeFormatter day = DateTimeFormatter.ofPattern("d MMM", board.locale());
        boolean oneMonth = YearMonth.from(full.from()).equals(YearMonth.from(full.to()));
        return (oneMonth ? full.from().getDayOfMonth() : day.format(full.from())) + "\u2013" + day.format(full.to());
    }

    private static String most(Load load) {
        Load.Week most = load.weeks().stream()
                .max(java.util.Comparator.comparingDouble(Load.Week::share))
                .orElse(new Load.Week(0, 0));
        return most.used() == 0 ? "not used" : "at most " + most.used() + " of " + most.there();
    }
}
