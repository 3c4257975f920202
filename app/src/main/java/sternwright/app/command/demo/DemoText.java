package sternwright.app.command.demo;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import sternwright.app.command.text.Counted;
import sternwright.app.command.text.PeopleDates;
import sternwright.app.command.text.TextTable;
import sternwright.app.desk.demo.ShowDemo;
import sternwright.app.files.YardFiles;
import sternwright.app.paper.Figures;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.due.Reasons;
import sternwright.measure.Money;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.service.Place;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.planned.PlannedVisit;

/** What the demo says for people. */
public final class DemoText {
    private static final int PRESSING = 5;

    /** A boat is called proven within one per cent. */
    private static final double PROVEN = 0.01;

    private final PrintWriter out;
    private final Figures figures;
    private final Reasons reasons;
    private final DateTimeFormatter dates;
    private final DateTimeFormatter month;

    DemoText(PrintWriter out, Locale locale) {
        this.out = out;
        this.figures = Figures.of(locale);
        this.reasons = new Reasons(locale);
        this.dates = PeopleDates.of(locale);
        this.month = DateTimeFormatter.ofPattern("MMM yyyy", locale);
    }

    void yard(YardFiles files, Path folder, LocalDate today) {
        int entries = files.histories().values().stream()
                .mapToInt(h -> h.entries().size())
                .sum();
        long engines = files.boats().values().stream()
                .mapToLong(b -> b.installations().size())
                .sum();
        out.println(files.yard().name() + ", written to " + folder + ": everything in it is made up.");
        out.println(Counted.of(files.boats().size(), "boat") + ", " + Counted.of(engines, "engine") + ", "
                + Counted.of(files.berths().size(), "berth") + ", " + figures.number(entries)
                + " lines of history up to "
                + dates.format(today) + ".");
        out.flush();
    }

    void dues(List<Due> dues) {
        out.println();
        out.println("What is due");
        TextTable table = new TextTable("", "works", "safety items", "boats");
        for (DueState state :
                List.of(DueState.OVERDUE, DueState.UNKNOWN, DueState.DUE, DueState.COMING, DueState.REFUSED)) {
            List<Due> here = dues.stream().filter(d -> d.state() == state).toList();
            table.row(
                    state.words(),
                    figures.number(here.size()),
                    figures.number(here.stream().filter(d -> d.rule().safety()).count()),
                    figures.number(here.stream().map(Due::boatId).distinct().count()));
        }
        table.print(out);
        out.println();
        out.println("Most pressing");
        dues.stream()
                .filter(d -> d.state() == DueState.OVERDUE && d.rule().safety())
                .sorted(Comparator.comparing(Due::dueOn))
                .limit(PRESSING)
                .forEach(d -> {
                    out.println(
                            "  " + d.boatId() + " " + d.part() + ", " + d.rule().work() + ".");
                    out.println("    " + reasons.sentence(d) + " Source: "
                            + d.inForce().source().line() + ".");
                });
        out.flush();
    }

    void visits(List<BoatAnswer> answers, Currency currency) {
        List<BoatPlan> plans = answers.stream()
                .flatMap(a ->
                        a instanceof BoatPlan plan ? java.util.stream.Stream.of(plan) : java.util.stream.Stream.of())
                .toList();
        out.println();
        out.println("Visits that do it, each boat for itself, over " + ShowDemo.MONTHS + " months");
        Map<YearMonth, List<PlannedVisit>> byMonth = plans.stream()
                .flatMap(p -> p.visits().stream())
                .collect(Collectors.groupingBy(v -> YearMonth.from(v.from()), TreeMap::new, Collectors.toList()));
        TextTable table =
                new TextTable("month", "afloat", "ashore", "lifts", "works", "working time", "price without tax");
        byMonth.entrySet().stream().limit(12).forEach(e -> row(table, e.getKey(), e.getValue(), currency));
        table.print(out);
        List<PlannedVisit> all =
                plans.stream().flatMap(p -> p.visits().stream()).toList();
        Money saved = sum(all.stream().map(PlannedVisit::savedByBundling).toList(), currency);
        long proven = plans.stream().filter(p -> p.gap() <= PROVEN).count();
        out.println("The first 12 months are shown. All " + figures.number(all.size()) + " visits of " + ShowDemo.MONTHS
                + " months save " + figures.money(saved) + " against giving every work a visit of its own.");
        out.println("Every plan passed a check that shares no code with the planner. " + proven + " of " + plans.size()
                + " boats are proven within 1 % of the cheapest plan there is"
                + plans.stream()
                        .max(Comparator.comparingDouble(BoatPlan::gap))
                        .filter(p -> p.gap() > PROVEN)
                        .map(p -> "; the widest gap is " + figures.number(Math.rint(1000 * p.gap()) / 10) + " %, "
                                + p.boatId())
                        .orElse("")
                + ".");
        answers.stream()
                .filter(BoatAnswer.NoPlan.class::isInstance)
                .map(BoatAnswer.NoPlan.class::cast)
                .forEach(n -> out.println("No plan for " + n.boatId() + ": " + String.join("; ", n.clash())));
        out.flush();
    }

    private void row(TextTable table, YearMonth at, List<PlannedVisit> visits, Currency currency) {
        table.row(
                month.format(at),
                count(visits.stream().filter(v -> v.place() == Place.AFLOAT).count()),
                count(visits.stream().filter(v -> v.place() == Place.ASHORE).count()),
                count(visits.stream().filter(PlannedVisit::lifts).count()),
                count(visits.stream().mapToLong(v -> v.works().size()).sum()),
                figures.time(visits.stream().mapToDouble(PlannedVisit::minutes).sum()),
                figures.money(sum(visits.stream().map(PlannedVisit::net).toList(), currency)));
    }

    private String count(long n) {
        return figures.number(n);
    }

    private static Money sum(List<Money> amounts, Currency currency) {
        return amounts.stream().reduce(Money.zero(currency), Money::plus);
    }

    void papers(ShowDemo.Papers papers) {
        out.println();
        out.println("Job card and estimate of one visit: " + papers.boat().name() + ", "
                + figures.dates(papers.visit().from(), papers.visit().to()) + ", "
                + Counted.of(papers.visit().works().size(), "work") + ", "
                + figures.money(papers.visit().net()) + " without tax");
        for (Path file : List.of(
                papers.card().html(),
                papers.card().pdf(),
                papers.estimate().html(),
                papers.estimate().pdf())) {
            out.println("  " + file);
        }
    }

    void season(ShowDemo.Season made) {
        DatedSeason season = made.season().dated();
        Currency currency = made.season().yard().yard().currency();
        out.println();
        out.println("The season, " + dates.format(season.from()) + " to " + dates.format(season.to()));
        long unsafe = standing(season, DatedOperation.State.UNSAFE);
        long late = standing(season, DatedOperation.State.LATE);
        out.println("  " + season.operations().size() + " operations of "
                + season.visits().size() + " visits on days, with hoist, place and people; two judges passed it.");
        out.println("  "
                + (unsafe == 0
                        ? "Every boat safe against frost in time"
                        : Counted.of(unsafe, "boat") + " not safe against frost in time")
                + ", " + (late == 0 ? "none late." : late + " with something late."));
        out.println("  Cost " + figures.about(season.cost().total(), currency) + ", no plan below "
                + figures.about(season.bound(), currency) + ": at most "
                + figures.about(Math.max(0, season.cost().total() - season.bound()), currency) + " better is possible ("
                + figures.number(Math.rint(100 * season.gap())) + " % of it).");
        out.println("  Board: " + made.board());
    }

    private static long standing(DatedSeason season, DatedOperation.State state) {
        return season.operations().stream()
                .filter(o -> o.state() == state)
                .map(o -> o.meaning().boatId())
                .distinct()
                .count();
    }

    void next(Path folder, String boatId) {
        out.println();
        out.println("What to try next");
        String yard = "sternwright --yard " + folder + " ";
        TextTable table = new TextTable("", "");
        table.row("  " + yard + "due " + boatId, "what is due on one boat, and why");
        table.row("  " + yard + "visits " + boatId, "its visits, with the proof");
        table.row("  " + yard + "card " + boatId, "the job card of its next visit");
        table.row(
                "  " + yard + "record " + boatId + " --work change-engine-oil --who \"A. Name\"",
                "work done; due moves");
        table.row("  " + yard + "season", "the season, planned on from the published one");
        table.row("  " + yard + "protect " + boatId, "potentials and anodes");
        table.row("  " + yard + "serve", "the yard in your browser, with a page for each of these");
        table.row("  " + yard + "new boat --arrangement saildrive --name \"Her Name\"", "register a boat of your own");
        table.print(out);
        out.println("  The yard is a folder of text files: open "
                + folder.resolve("boats").resolve(boatId + ".yaml") + ".");
    }
}
