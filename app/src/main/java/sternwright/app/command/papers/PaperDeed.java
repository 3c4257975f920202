package sternwright.app.command.papers;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.entry.PlanReach;
import sternwright.app.command.text.Counted;
import sternwright.app.desk.visits.PlanVisits;
import sternwright.app.desk.visits.VisitPapers;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.paper.Figures;
import sternwright.boat.Boat;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.planned.PlannedVisit;

/** A command that writes a paper of one planned visit. */
public abstract class PaperDeed extends Deed {
    @Parameters(paramLabel = "BOAT", description = "The boat.")
    String boatId = "";

    @Option(
            names = "--visit",
            paramLabel = "N",
            defaultValue = "1",
            description = "Which of its planned visits; left out: 1, the next.")
    int number = 1;

    @Mixin
    PlanReach reach = new PlanReach();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where to write; left out: papers in the yard's folder.")
    @Nullable
    Path out;

    @Override
    public boolean writes() {
        return true;
    }

    @Override
    public final Integer call() throws IOException {
        reach.require();
        YardFiles files =
                YardFolder.only(program().shelf(), List.of(boatId), program().latest());
        Boat boat = files.boats().values().iterator().next();
        PlannedVisit visit = chosen(boat, visits(files, boat));
        VisitPapers papers =
                VisitPapers.of(files, boat, program().today(), program().reader());
        Path folder = out == null ? program().yard().resolve("papers") : out;
        write(papers, visit, folder);
        return ExitStatus.DONE;
    }

    /** Writes the paper and tells about it. */
    abstract void write(VisitPapers papers, PlannedVisit visit, Path folder) throws IOException;

    private List<PlannedVisit> visits(YardFiles files, Boat boat) {
        BoatAnswer answer = new PlanVisits(
                        files,
                        SeasonFolder.read(program().shelf(), program().latest()),
                        Figures.of(program().reader()).locale())
                .of(boat, program().today(), reach.months())
                .plan(reach.limits());
        if (answer instanceof BoatPlan plan) {
            return plan.visits();
        }
        throw new BadInput(((BoatAnswer.NoPlan) answer)
                .clash().stream()
                        .map(c -> new Problem(boat.id(), 0, "", "no visits can be planned: " + c, "", ""))
                        .toList());
    }

    private PlannedVisit chosen(Boat boat, List<PlannedVisit> visits) {
        if (visits.isEmpty()) {
            throw BadInput.of(
                    boat.id(),
                    "no visit is planned in the next " + Counted.of(reach.months(), "month"),
                    "",
                    "Look further with --months.");
        }
        if (number < 1 || number > visits.size()) {
            Figures figures = Figures.of(program().reader());
            String known = IntStream.range(0, visits.size())
                    .mapToObj(i -> (i + 1) + " "
                            + figures.dates(visits.get(i).from(), visits.get(i).to()))
                    .collect(Collectors.joining("; "));
            throw BadInput.of("--visit", boat.id() + " has no visit " + number, "one of " + known, "");
        }
        return visits.get(number - 1);
    }

    /** What was written, and what to look at before it goes out. */
    final void tell(String what, PlannedVisit visit, VisitPapers.Written written) {
        Figures figures = Figures.of(program().reader());
        out().println(what + ", " + figures.dates(visit.from(), visit.to()) + ", "
                + visit.place().words() + ", " + Counted.of(visit.works().size(), "work") + ":");
        out().println("  " + written.pdf());
        out().println("  " + written.html());
        if (!written.remarks().isEmpty()) {
            out().println("To look at before it goes out:");
            written.remarks().forEach(r -> out().println("  " + r));
        }
    }
}
