package sternwright.app.desk.visits;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.safe.SafeFile;
import sternwright.app.paper.Figures;
import sternwright.app.paper.Paper;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.finding.Caution;
import sternwright.job.CardFacts;
import sternwright.job.JobCard;
import sternwright.job.JobCards;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.Estimates;
import sternwright.visit.planned.PlannedVisit;

/** Writes job card and estimate of a planned visit as HTML and PDF. */
public final class VisitPapers {
    private final CardFacts facts;
    private final Figures figures;

    /**
     * A paper that was written.
     *
     * @param html the page
     * @param pdf the same as PDF
     * @param remarks what a person should look at before the paper goes out
     */
    public record Written(Path html, Path pdf, List<String> remarks) {
        /** Copies the list. */
        public Written {
            remarks = List.copyOf(remarks);
        }
    }

    private VisitPapers(CardFacts facts, Figures figures) {
        this.facts = facts;
        this.figures = figures;
    }

    /**
     * Papers of one boat.
     *
     * @param files what the yard's folder says
     * @param boat the boat
     * @param today the day on which the papers are written
     * @param reader whose formats of dates and numbers to use
     * @return the papers, nothing written yet
     */
    public static VisitPapers of(YardFiles files, Boat boat, LocalDate today, Locale reader) {
        List<Caution> cautions = new ArrayList<>(files.generic().cautions());
        files.programmes().forEach(p -> cautions.addAll(p.cautions()));
        Berth berth = Optional.ofNullable(files.berths().get(boat.berthId()))
                .orElseThrow(() -> new IllegalStateException(boat.berthId() + " was checked and is not there"));
        return new VisitPapers(
                new CardFacts(files.yard(), boat, berth, files.catalogue(), cautions, files.history(boat.id()), today),
                Figures.of(reader).in(files.yard().units()));
    }

    /**
     * The job card of a visit.
     *
     * @param visit the visit as planned
     * @return the card
     */
    public JobCard card(PlannedVisit visit) {
        return JobCards.of(visit, facts);
    }

    /**
     * The estimate of a visit.
     *
     * @param visit the visit as planned
     * @param validDays days for which the prices hold
     * @param declined numbers of the lines the owner does not want; empty if there is no answer yet
     * @return the estimate
     * @throws BadInput if the days are below 1 or there is no line of a number
     */
    public Estimate estimate(PlannedVisit visit, int validDays, Collection<Integer> declined) {
        if (validDays < 1) {
            throw BadInput.of("--valid", validDays + " days", "1 day or more", "");
        }
        Estimate estimate = Estimates.of(visit, facts, validDays);
        if (declined.isEmpty()) {
            return estimate;
        }
        int lines = estimate.lines().size();
        for (int number : declined) {
            if (number < 1 || number > lines) {
                throw BadInput.of("--decline", "there is no line " + number, "a line from 1 to " + lines, "");
            }
        }
        return estimate.answered(declined);
    }

    /**
     * Writes a job card.
     *
     * @param card the card
     * @param folder where to; made if missing
     * @return the files, with what is still to settle
     * @throws IOException if the disk refuses
     */
    public Written write(JobCard card, Path folder) throws IOException {
        return write(Paper.of(card, figures), folder, card.toSettle());
    }

    /**
     * Writes an estimate.
     *
     * @param estimate the estimate
     * @param folder where to; made if missing
     * @return the files, with what the yard should look at
     * @throws IOException if the disk refuses
     */
    public Written write(Estimate estimate, Path folder) throws IOException {
        return write(Paper.of(estimate, figures), folder, estimate.warnings());
    }

    /** Both are laid out before either is written, so that a fault leaves nothing behind. */
    private static Written write(Paper paper, Path folder, List<String> remarks) throws IOException {
        byte[] pdf = paper.pdf();
        Path page = folder.resolve(paper.fileName() + ".html");
        Path print = folder.resolve(paper.fileName() + ".pdf");
        SafeFile.write(page, paper.html());
        SafeFile.write(print, pdf);
        return new Written(page, print, remarks);
    }
}
