package sternwright.app.command.papers;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sternwright.app.command.text.Counted;
import sternwright.app.command.text.Json;
import sternwright.app.desk.visits.VisitPapers;
import sternwright.app.files.problem.BadInput;
import sternwright.app.paper.Figures;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.EstimateLine;
import sternwright.measure.Money;
import sternwright.service.Rule;
import sternwright.visit.planned.PlannedVisit;

/** The estimate of a visit. */
@Command(
        name = "estimate",
        description = {
            "Write the estimate of a planned visit for the owner, as PDF and as a page.",
            "Per line why, what happens if it is left, and the price; yes and no to tick."
        },
        sortOptions = false)
public final class EstimateCommand extends PaperDeed {
    @Option(
            names = "--valid",
            paramLabel = "DAYS",
            defaultValue = "30",
            description = "Days for which the prices hold; left out: 30.")
    int validDays = 30;

    @Option(
            names = "--decline",
            paramLabel = "LINE",
            split = ",",
            description = "Lines the owner has declined; every other line is then accepted.")
    List<Integer> declined = new ArrayList<>();

    @Option(names = "--signed-by", paramLabel = "NAME", description = "With --decline: who signed the answer.")
    String signedBy = "";

    /** What other programs get. */
    record Answer(
            VisitPapers.Written written, Money net, Money tax, Money gross, boolean complete, Estimate estimate) {}

    @Override
    void write(VisitPapers papers, PlannedVisit visit, Path folder) throws IOException {
        if (!signedBy.isBlank() && declined.isEmpty()) {
            throw BadInput.of("--signed-by", "nothing is declined", "", "Say which lines with --decline.");
        }
        Estimate estimate = papers.estimate(visit, validDays, declined);
        VisitPapers.Written written = papers.write(estimate, folder);
        if (program().json()) {
            Json.print(
                    new Answer(
                            written, estimate.net(), estimate.tax(), estimate.gross(), estimate.complete(), estimate),
                    out());
            return;
        }
        Figures figures = Figures.of(program().reader());
        tell(
                "Estimate " + estimate.boat().name() + ", " + figures.money(estimate.gross()) + " with "
                        + estimate.taxName(),
                visit,
                written);
        if (estimate.anyDeclined()) {
            declined(estimate, figures);
        }
    }

    /** What the owner does not want, and how it gets on record. */
    private void declined(Estimate estimate, Figures figures) {
        List<EstimateLine> lines =
                estimate.lines().stream().filter(l -> !l.counts()).toList();
        out().println("Declined, " + lines.size() + " of "
                + Counted.of(estimate.lines().size(), "work") + ", "
                + (signedBy.isBlank() ? "not signed yet:" : "signed by " + signedBy + ":"));
        for (EstimateLine line : lines) {
            Rule rule = line.planned().inForce().rule();
            out().println("  " + line.number() + "  " + rule.work() + ", "
                    + line.planned().partName() + ", " + figures.money(line.price())
                    + (rule.safety() ? "  [safety item]" : ""));
            if (!rule.ifDeclined().isEmpty()) {
                out().println("     " + rule.ifDeclined());
            }
        }
        String who = signedBy.isBlank() ? "NAME" : signedBy;
        out().println("Once signed, keep it on record:");
        lines.forEach(l -> out().println("  sternwright --yard " + program().yard() + " record "
                + estimate.boat().id() + " --work "
                + l.planned().inForce().rule().id() + " --part "
                + l.planned().part() + " --refused-by \"" + who + "\""));
    }
}
