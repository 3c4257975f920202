package sternwright.app.command.visits;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.entry.PlanReach;
import sternwright.app.command.text.Counted;
import sternwright.app.command.text.Json;
import sternwright.app.command.text.TextTable;
import sternwright.app.desk.visits.PlanView;
import sternwright.app.desk.visits.PlanVisits;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.paper.Figures;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatVisits;
import sternwright.visit.planned.PlannedVisit;

/** The cheapest sound set of visits. */
@Command(
        name = "visits",
        description = {
            "Plan the cheapest sound set of visits, with its proof.",
            "For one boat all works, prices, the best plan with one visit fewer and one more; for the yard one line a boat."
        },
        sortOptions = false)
public final class VisitsCommand extends Deed {
    @Parameters(paramLabel = "BOAT", arity = "0..*", description = "Boats; left out: all of them.")
    List<String> boats = new ArrayList<>();

    @Mixin
    PlanReach reach = new PlanReach();

    @Option(
            names = "--left",
            paramLabel = "INSTALLATION/PART:RULE=DATE",
            description =
                    "What if this work is left until DATE? \"due BOAT --csv\" names parts and rules. May be repeated.")
    Map<String, String> left = new LinkedHashMap<>();

    @Option(names = "--no-alternatives", description = "Leave out one visit fewer and one more.")
    boolean noAlternatives;

    private Figures figures = Figures.of(Locale.UK);

    @Override
    public Integer call() {
        reach.require();
        left.forEach(this::work);
        YardFiles files = boats.isEmpty()
                ? YardFolder.all(program().shelf(), program().latest())
                : YardFolder.only(program().shelf(), boats, program().latest());
        figures = Figures.of(program().reader()).in(files.yard().units());
        PlanVisits planning = new PlanVisits(
                files,
                SeasonFolder.read(program().shelf(), program().latest()),
                program().reader());
        List<Boat> all = List.copyOf(files.boats().values());
        if (program().json()) {
            Json.print(
                    planning.all(program().today(), reach.months(), reach.limits()).stream()
                            .map(VisitsCommand::view)
                            .toList(),
                    out());
            return ExitStatus.DONE;
        }
        if (boats.isEmpty()) {
            summary(planning, all.size());
            return ExitStatus.DONE;
        }
        int status = ExitStatus.DONE;
        for (Boat boat : all) {
            status = Math.max(status, tell(planning, boat));
        }
        return status;
    }

    private static Object view(BoatAnswer answer) {
        return answer instanceof BoatPlan plan ? PlanView.of(plan) : answer;
    }

    private int tell(PlanVisits planning, Boat boat) {
        VisitsText text = new VisitsText(out(), figures);
        BoatVisits visits = planning.of(boat, program().today(), reach.months());
        if (visits.first(reach.limits()) instanceof BoatPlan first) {
            out().println(boat.name() + " (" + boat.id() + "), " + Counted.of(reach.months(), "month") + " from "
                    + text.date(program().today()) + ": "
                    + Counted.of(first.visits().size(), "visit") + ".");
            out().println("A plan at once: " + text.money(first.planningCost()) + "; no plan can cost less than "
                    + text.money(first.bound()) + ". Proving ...");
            out().flush();
        }
        BoatAnswer answer = visits.plan(reach.limits());
        if (answer instanceof BoatAnswer.NoPlan none) {
            out().println(boat.name() + " (" + boat.id() + "): no plan keeps every demand. " + text.clash(none));
            return ExitStatus.COULD_NOT;
        }
        BoatPlan plan = (BoatPlan) answer;
        out().println(text.proof(plan));
        text.plan(plan);
        argue(visits, plan, text);
        return ExitStatus.DONE;
    }

    private void argue(BoatVisits visits, BoatPlan plan, VisitsText text) {
        out().println();
        if (!noAlternatives) {
            text.alternative("One visit fewer", plan, visits.withVisits(plan, -1, reach.limits()));
            text.alternative("One visit more", plan, visits.withVisits(plan, 1, reach.limits()));
        }
        left.forEach((work, date) -> leave(visits, plan, text, work, date));
    }

    private record Left(PartRef part, String rule, LocalDate until) {}

    private Left work(String work, String date) {
        int slash = work.indexOf('/');
        int colon = work.indexOf(':');
        @Nullable LocalDate until = date(date);
        if (slash < 1 || colon < slash || until == null) {
            throw BadInput.of(
                    "--left",
                    work + "=" + date + (until == null ? ", where \"" + date + "\" is no date such as 2027-10-01" : ""),
                    "INSTALLATION/PART:RULE=DATE",
                    "Such as --left main/diaphragm-seal:renew-diaphragm-seal=2027-10-01; \"sternwright due BOAT --csv\" names parts and"
                            + " rules.");
        }
        return new Left(
                new PartRef(work.substring(0, slash), work.substring(slash + 1, colon)),
                work.substring(colon + 1),
                until);
    }

    private void leave(BoatVisits visits, BoatPlan plan, VisitsText text, String work, String date) {
        Left asked = work(work, date);
        text.left(visits.leftUntil(plan, asked.part(), asked.rule(), asked.until(), reach.limits())
                .orElseThrow(() -> BadInput.of(
                        "--left",
                        "no work " + asked.rule() + " on " + asked.part() + " is planned within "
                                + Counted.of(reach.months(), "month"),
                        "a work of the plan",
                        "\"sternwright due BOAT --csv\" names parts and rules.")));
    }

    private static @Nullable LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            return null;
        }
    }

    private void summary(PlanVisits planning, int boats) {
        VisitsText text = new VisitsText(out(), figures);
        TextTable table = new TextTable("boat", "visits", "lifts", "next", "net", "bundling saves", "gap %");
        List<BoatAnswer> answers = planning.all(program().today(), reach.months(), reach.limits());
        int without = 0;
        for (BoatAnswer answer : answers) {
            if (answer instanceof BoatPlan plan) {
                row(table, text, plan);
            } else if (answer instanceof BoatAnswer.NoPlan none) {
                without++;
                out().println(none.boatId() + ": no plan keeps every demand. " + text.clash(none));
            }
        }
        table.print(out());
        out().println(Counted.of(boats, "boat") + ", " + (boats - without)
                + " planned. \"sternwright visits BOAT\" shows works, prices and reasons.");
    }

    private static void row(TextTable table, VisitsText text, BoatPlan plan) {
        List<PlannedVisit> visits = plan.visits();
        String saved = visits.isEmpty()
                ? ""
                : text.money(visits.stream()
                        .map(PlannedVisit::savedByBundling)
                        .reduce(visits.get(0).savedByBundling().times(0), (a, b) -> a.plus(b)));
        table.row(
                plan.boatId(),
                Integer.toString(visits.size()),
                Long.toString(visits.stream().filter(PlannedVisit::lifts).count()),
                visits.isEmpty()
                        ? ""
                        : text.date(visits.get(0).from()) + " "
                                + visits.get(0).place().words(),
                text.money(plan.net()),
                saved,
                text.percent(plan.gap()));
    }
}
