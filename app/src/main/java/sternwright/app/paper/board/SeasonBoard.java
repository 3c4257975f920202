package sternwright.app.paper.board;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import sternwright.season.dated.answer.Binding;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;
import sternwright.season.dated.answer.Load;

/**
 * The season's drawing in panels.
 *
 * @param season the season
 * @param today the day called today
 * @param locale language of month names
 * @param frame how large it is drawn, and which days
 */
public record SeasonBoard(DatedSeason season, LocalDate today, Locale locale, Frame frame) {
    /** Width of a sheet across, in px of 1/96 inch. */
    private static final double SHEET = 976;

    /** The whole season on sheets of paper. */
    public SeasonBoard(DatedSeason season, LocalDate today, Locale locale) {
        this(season, today, locale, Frame.sheet(season));
    }

    /**
     * One panel, in the forms for screen and paper.
     *
     * @param title what it shows
     * @param names the column of names, which stays when the rest is scrolled
     * @param chart the rest
     * @param whole both together, for paper
     */
    public record Panel(String title, String names, String chart, String whole) {}

    /** How full everything is. */
    public List<Panel> loads() {
        List<Load> shown = used(season.loads());
        List<Panel> panels = new ArrayList<>();
        for (int at = 0; at < shown.size(); at += frame.loads()) {
            panels.add(
                    loads(
                            shown.subList(at, Math.min(shown.size(), at + frame.loads())),
                            "How full hoists, places and people are, week by week: lifts and launches, boats, quarter days of work"));
        }
        return panels;
    }

    /**
     * Those of which there is something to show: whoever has no work is left out.
     *
     * @param loads hoists, places, people
     * @return the same without people who have no work
     */
    public static List<Load> used(List<Load> loads) {
        return loads.stream()
                .filter(l -> l.kind() != Load.Kind.PERSON || l.weeks().stream().anyMatch(w -> w.used() > 0))
                .toList();
    }

    /**
     * How full some of them are.
     *
     * @param some hoists, places, people
     * @param title what they are
     * @return the panel
     */
    public Panel loads(List<Load> some, String title) {
        double height = frame.axis() + some.size() * frame.loadRow() + 4;
        Svg names = new Svg(!frame.wide());
        Svg chart = new Svg(!frame.wide());
        new LoadRows(this, scale(), names, chart).draw(some, height);
        return panel(title, names, chart, height);
    }

    /** Boats as bars, those that come first above. */
    public List<Panel> boats() {
        List<List<DatedVisit>> rows = rows(season.visits());
        List<Panel> panels = new ArrayList<>();
        for (int at = 0; at < rows.size(); at += frame.boats()) {
            List<List<DatedVisit>> some = rows.subList(at, Math.min(rows.size(), at + frame.boats()));
            String title = "Boats " + (at + 1) + " to " + (at + some.size()) + " of " + rows.size();
            panels.add(boats(some, title));
        }
        return panels;
    }

    /**
     * Some boats.
     *
     * @param rows each boat's visits
     * @param title what they are
     * @return the panel
     */
    public Panel boats(List<List<DatedVisit>> rows, String title) {
        double height = frame.axis() + rows.size() * frame.boatRow() + 4;
        Svg names = new Svg(!frame.wide());
        Svg chart = new Svg(!frame.wide());
        new BoatRows(this, scale(), names, chart).draw(rows, height);
        return panel(title, names, chart, height);
    }

    /**
     * Visits put together by boat.
     *
     * @param visits visits in any order
     * @return each boat's visits, the boat that comes first above
     */
    public static List<List<DatedVisit>> rows(List<DatedVisit> visits) {
        Map<String, List<DatedVisit>> byBoat = visits.stream()
                .sorted(Comparator.comparing(DatedVisit::from))
                .collect(Collectors.groupingBy(DatedVisit::boatId, LinkedHashMap::new, Collectors.toList()));
        return List.copyOf(byBoat.values());
    }

    private Panel panel(String title, Svg names, Svg chart, double height) {
        double labels = frame.labels();
        double right = frame.chart() + frame.words();
        if (frame.wide()) {
            String days = String.format(
                    Locale.ROOT,
                    " data-from=\"%s\" data-to=\"%s\" data-left=\"%.1f\" data-width=\"%.1f\"",
                    frame.from(),
                    frame.to(),
                    labels,
                    frame.chart());
            return new Panel(
                    title,
                    names.held(0, labels, height, title + ": names", " preserveAspectRatio=\"xMinYMin slice\""),
                    chart.held(labels, right, height, title, days),
                    "");
        }
        Svg whole = new Svg();
        whole.raw(names).raw(chart);
        return new Panel(
                title,
                names.framed(0, labels, height, labels, title + ": names"),
                chart.framed(labels, right, height, right, title),
                whole.printed(labels + right, height, SHEET, title));
    }

    private TimeScale scale() {
        return new TimeScale(frame.from(), frame.to(), season.weeks(), frame.labels(), frame.chart());
    }

    /** The stretches in which a resource is full. */
    List<Binding> binds(Load load) {
        return season.binds().stream()
                .filter(b -> b.kind() == load.kind() && b.name().equals(load.name()))
                .toList();
    }
}
