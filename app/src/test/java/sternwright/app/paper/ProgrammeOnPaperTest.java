package sternwright.app.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sternwright.boat.Arrangement;
import sternwright.job.CardWork;
import sternwright.job.JobCard;
import sternwright.job.JobCards;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.Estimates;
import sternwright.service.Half;
import sternwright.visit.planned.PlannedVisit;

/** Every work of the shipped programme can stand on a card and an estimate: nothing missing, nothing unsaid. */
class ProgrammeOnPaperTest {
    @ParameterizedTest
    @CsvSource({"SAILDRIVE, false", "SHAFT, false", "STERNDRIVE, true", "POD, false", "JET, false"})
    void layUpAndRecommission(Arrangement arrangement, boolean twin) throws IOException {
        RoughVisit rough = new RoughVisit(arrangement, twin);
        for (Half half : List.of(Half.LAY_UP, Half.RECOMMISSION)) {
            PlannedVisit visit = rough.visit(half);
            JobCard card = JobCards.of(visit, rough.facts());
            Estimate estimate = Estimates.of(visit, rough.facts(), 30);
            assertEquals(List.of(), estimate.warnings());
            assertTrue(card.toSettle().stream().noneMatch(s -> s.contains("has no text")), card.toSettle()::toString);
            assertTrue(card.toSettle().stream().noneMatch(s -> s.contains("has no steps")), card.toSettle()::toString);
            assertTrue(card.works().size() > 8, () -> card.works().size() + " works");
            String page = Paper.of(card, Figures.of(Locale.UK)).printable();
            assertFalse(page.contains("Not drawn"), "every part worked on has its shape");
            assertFalse(page.contains("(1 yes, 0 no)"), "boxes are printed instead");
            for (CardWork w : card.works()) {
                assertFalse(w.planned().inForce().rule().why().isBlank());
            }
            if (half == Half.LAY_UP && (twin || arrangement == Arrangement.SHAFT)) {
                look(Paper.of(card, Figures.of(Locale.UK)), half, 3, 24);
                look(Paper.of(estimate, Figures.of(Locale.UK)), half, 2, 9);
            }
        }
    }

    private static void look(Paper paper, Half half, int fewest, int most) throws IOException {
        byte[] bytes = paper.pdf();
        Path dir = Files.createDirectories(Path.of("target/paper"));
        Files.write(dir.resolve(paper.fileName() + "-" + half + ".pdf"), bytes);
        Files.writeString(dir.resolve(paper.fileName() + "-" + half + ".html"), paper.html());
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            int pages = pdf.getNumberOfPages();
            assertTrue(pages >= fewest && pages <= most, () -> paper.fileName() + ": " + pages + " pages");
        }
    }
}
