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
 */
public record SeasonBoard(DatedSeason season, LocalDate today, Locale locale) {
    /** Boats of one panel: so many fit on a sheet. */
    static final int ROWS = 40;

    static final double LABELS = 132;
    static final double CHART = 850;
    static final double WORDS = 198;
    static final double AXIS = 24;
    static final double BOAT_ROW = 15;
    static final double LOAD_ROW = 20;
    /** Width of a sheet across, in px of 1/96 inch. */
    private static final double SHEET = 976;

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
        List<Load> shown = season.loads().stream()
                .filter(l -> l.kind() != Load.Kind.PERSON || l.weeks().stream().anyMatch(w -> w.used() > 0))
                .toList();
        List<Panel> panels = new ArrayList<>();
        for (int at = 0; at < shown.size(); at += ROWS - 10) {
            List<Load> some = shown.subList(at, Math.min(shown.size(), at + ROWS - 10));
            double height = AXIS + some.size() * LOAD_ROW + 4;
            Svg names = new Svg();
            Svg chart = new Svg();
            new LoadRows(this, scale(), names, chart).draw(some, height);
            panels.add(panel("How full hoists, places and people are, week by week", names, chart, height));
        }
        return panels;
    }

    /** Boats as bars, those that come first above. */
    public List<Panel> boats() {
        Map<String, List<DatedVisit>> byBoat = season.visits().stream()
                .sorted(Comparator.comparing(DatedVisit::from))
                .collect(Collectors.groupingBy(DatedVisit::boatId, LinkedHashMap::new, Collectors.toList()));
        List<List<DatedVisit>> rows = new ArrayList<>(byBoat.values());
        List<Panel> panels = new ArrayList<>();
        for (int at = 0; at < rows.size(); at += ROWS) {
            List<List<DatedVisit>> some = rows.subList(at, Math.min(rows.size(), at + ROWS));
            double height = AXIS + some.size() * BOAT_ROW + 4;
            Svg names = new Svg();
            Svg chart = new Svg();
            new BoatRows(this, scale(), names, chart).draw(some, height);
            String title = "Boats " + (at + 1) + " to " + (at + some.size()) + " of " + rows.size();
            panels.add(panel(title, names, chart, height));
        }
        return panels;
    }

    private Panel panel(String title, Svg names, Svg chart, double height) {
        double right = CHART + WORDS;
        Svg whole = new Svg();
        whole.raw(names).raw(chart);
        return new Panel(
                title,
                names.framed(0, LABELS, height, LABELS, title + ": names"),
                chart.framed(LABELS, right, height, right, title),
                whole.printed(LABELS + right, height, SHEET, title));
    }

    private TimeScale scale() {
        return new TimeScale(season.from(), season.to(), season.weeks(), LABELS, CHART);
    }

    /** The stretches in which a resource is full. */
    List<Binding> binds(Load load) {
        return season.binds().stream()
                .filter(b -> b.kind() == load.kind() && b.name().equals(load.name()))
                .toList();
    }
}
