package sternwright.app.command.papers;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import sternwright.app.command.text.Json;
import sternwright.app.desk.visits.VisitPapers;
import sternwright.job.JobCard;
import sternwright.visit.planned.PlannedVisit;

/** The job card of a visit. */
@Command(
        name = "card",
        description = {
            "Write the job card of a planned visit, as PDF and as a page.",
            "Works in working order with steps, quantities, cautions and readings; boxes to fill on board."
        },
        sortOptions = false)
public final class CardCommand extends PaperDeed {
    /** What other programs get. */
    record Answer(VisitPapers.Written written, JobCard card) {}

    @Override
    void write(VisitPapers papers, PlannedVisit visit, Path folder) throws IOException {
        JobCard card = papers.card(visit);
        VisitPapers.Written written = papers.write(card, folder);
        if (program().json()) {
            Json.print(new Answer(written, card), out());
        } else {
            tell("Job card " + card.boat().name(), visit, written);
        }
    }
}
