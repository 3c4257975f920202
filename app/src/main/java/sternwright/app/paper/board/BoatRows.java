package sternwright.app.paper.board;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import sternwright.app.paper.Figures;
import sternwright.season.dated.Step;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedOperation.State;
import sternwright.season.dated.answer.DatedVisit;

/** Rows of boats: a bar while she stands ashore, marks for the works, words where something is not as wished. */
final class BoatRows {
    private static final double BAR = 10;
    private static final double LEAST_MARK = 2.2;

    private final SeasonBoard board;
    private final Figures figures;
    private final TimeScale scale;
    private final Svg names;
    private final Svg chart;

    BoatRows(SeasonBoard board, TimeScale scale, Svg names, Svg chart) {
        this.board = board;
        this.figures = Figures.of(board.locale());
        this.scale = scale;
        this.names = names;
        this.chart = chart;
    }

    void draw(List<List<DatedVisit>> rows, double height) {
        Frame frame = board.frame();
        double row = frame.boatRow();
        scale.axis(chart, height, board.locale(), frame.wide());
        double y = frame.axis();
        double right = frame.labels() + frame.chart();
        for (List<DatedVisit> visits : rows) {
            chart.shape("line", "b-hair", Look.HAIR, "x1", frame.labels(), "x2", right, "y1", y + row, "y2", y + row);
            name(visits.get(0), y + row / 2 + 3.5);
            for (DatedVisit visit : visits) {
                visit(visit, y + (row - BAR) / 2);
            }
            words(visits, right + 8, y + row / 2 + 3.5);
            y += row;
        }
        if (board.today().isAfter(frame.from()) && !board.today().isAfter(frame.to())) {
            double x = scale.x(board.today());
            chart.shape("line", "b-today", Look.TODAY, "x1", x, "x2", x, "y1", frame.axis() - 6, "y2", height);
        }
    }

    private void name(DatedVisit visit, double y) {
        String name = cut(visit.boatName(), 24);
        String address = board.frame().hold().boat(visit.boatId());
        if (address.isEmpty()) {
            names.words(0, y, "b-name", Look.NAME, name);
        } else {
            names.link(address, 0, y, "b-name", Look.NAME, name);
        }
    }

    private void visit(DatedVisit visit, double y) {
        LocalDateTime from = visit.ashoreFrom();
        LocalDateTime until = visit.ashoreUntil();
        if (from != null && until != null && scale.shows(from.toLocalDate(), until.toLocalDate())) {
            double x = scale.x(from);
            chart.titled(
                    "rect",
                    "b-ashore",
                    Look.ASHORE,
                    visit.boatName() + ", " + figures.dated(visit.visit()) + ": ashore "
                            + figures.shortDate(from.toLocalDate()) + " to " + figures.shortDate(until.toLocalDate()),
                    "x",
                    x,
                    "y",
                    y,
                    "width",
                    Math.max(LEAST_MARK, scale.x(until) - x),
                    "height",
                    BAR);
        }
        List<DatedOperation> shown = visit.operations().stream()
                .filter(o -> scale.shows(o.from().toLocalDate(), o.until().toLocalDate()))
                .toList();
        boolean held = shown.stream().anyMatch(this::held);
        if (held) {
            chart.open(visit);
        }
        shown.forEach(o -> operation(o, y));
        if (held) {
            chart.close();
        }
    }

    private boolean held(DatedOperation o) {
        return o.meaning().step() != Step.STANDS && board.frame().hold().operation(o);
    }

    private void operation(DatedOperation o, double y) {
        boolean held = held(o);
        if (held) {
            chart.open(o);
        }
        draw(o, y);
        if (held) {
            chart.close();
        }
    }

    private void draw(DatedOperation o, double y) {
        double x = scale.x(o.from());
        double width = Math.max(LEAST_MARK, scale.x(o.until()) - x);
        boolean bad = o.state() == State.LATE || o.state() == State.UNSAFE || o.state() == State.MOVED;
        String title = o.meaning().boatName() + ": " + o.meaning().operation() + ", "
                + figures.shortDate(o.from().toLocalDate()) + ", " + o.state().words() + ". "
                + figures.dated(o.reason());
        Step step = o.meaning().step();
        switch (step) {
            case STANDS -> {}
            case LIFT, LAUNCH -> {
                String css = bad ? "b-bad" : "b-hoist";
                String look = bad ? Look.BAD : Look.HOIST;
                chart.titled("line", css, look, title, "x1", x, "x2", x, "y1", y - 1.5, "y2", y + BAR + 1.5);
            }
            case RECOMMISSION, SETTLED, TRIAL ->
                mark(bad ? "b-bad" : "b-spring", bad ? Look.BAD : Look.SPRING, title, x, y + 2.5, width, BAR - 5);
            default -> mark(bad ? "b-bad" : "b-layup", bad ? Look.BAD : Look.LAY_UP, title, x, y + 1.5, width, BAR - 3);
        }
    }

    private void mark(String css, String look, String title, double x, double y, double width, double height) {
        chart.titled("rect", css, look, title, "x", x, "y", y, "width", width, "height", height);
    }

    private void words(List<DatedVisit> visits, double x, double y) {
        Optional<DatedOperation> worst = visits.stream()
                .flatMap(v -> v.operations().stream())
                .filter(o -> o.state() != State.IN_TIME && o.state() != State.PROMISED)
                .max(java.util.Comparator.comparing(DatedOperation::state).thenComparing(DatedOperation::daysLate));
        if (worst.isPresent()) {
            chart.words(x, y, "b-strong", Look.STRONG, cut(words(worst.get()), 38));
            return;
        }
        String place = visits.stream()
                .map(DatedVisit::placeClass)
                .filter(p -> !p.isEmpty())
                .findFirst()
                .orElse("afloat");
        boolean promised =
                visits.stream().flatMap(v -> v.operations().stream()).anyMatch(o -> o.state() == State.PROMISED);
        chart.words(x, y, "b-soft", Look.SOFT, cut(place + (promised ? ", as promised" : ""), 40));
    }

    private static String words(DatedOperation o) {
        String days = o.daysLate() == 1 ? "1 day" : o.daysLate() + " days";
        return switch (o.state()) {
            case UNSAFE -> "unsafe: frost";
            case LATE -> o.meaning().operation() + " late " + days;
            default -> o.meaning().operation() + " moved";
        };
    }

    static String cut(String words, int most) {
        return words.length() <= most ? words : words.substring(0, most - 1) + "\u2026";
    }
}
