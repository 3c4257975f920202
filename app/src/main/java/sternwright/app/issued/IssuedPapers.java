package sternwright.app.issued;

import org.springframework.stereotype.Component;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.files.packed.ProgramMark;
import sternwright.app.paper.Figures;
import sternwright.app.paper.Paper;
import sternwright.job.JobCard;
import sternwright.job.estimate.Estimate;

/** Cards and estimates as PDF: what was issued does not change, so that the same one is laid out once. */
@Component
public class IssuedPapers {
    private final MadeOnce made;

    IssuedPapers(MadeOnce made) {
        this.made = made;
    }

    /**
     * A job card.
     *
     * @param card as it was issued
     * @param figures formats of the reader
     * @return PDF
     */
    public byte[] pdf(JobCard card, Figures figures) {
        return made.of(
                what("card", card, figures), () -> Paper.of(card, figures).pdf());
    }

    /**
     * An estimate.
     *
     * @param estimate as it was offered or answered
     * @param figures formats of the reader
     * @return PDF
     */
    public byte[] pdf(Estimate estimate, Figures figures) {
        return made.of(
                what("estimate", estimate, figures),
                () -> Paper.of(estimate, figures).pdf());
    }

    private static String what(String kind, Record content, Figures figures) {
        return kind + " " + figures.mark() + " " + ProgramMark.sha256(IssuedText.of(content));
    }
}
