package sternwright.app.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import sternwright.job.CardWork;
import sternwright.job.InventedVisits;
import sternwright.job.JobCard;
import sternwright.job.JobCards;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.Estimates;

/** The PDF as another program reads it; written to target/paper so that a person can look at it too. */
class PdfTest {
    private static final Path DIR = Path.of("target/paper");

    private final JobCard card = JobCards.of(InventedVisits.layUp(), InventedVisits.facts());
    private final Estimate estimate = Estimates.of(InventedVisits.layUp(), InventedVisits.facts(), 30);

    @Test
    void theCardIsTaggedHasItsFontsAndAllItsWorks() throws IOException {
        try (PDDocument pdf = written(Paper.of(card, Figures.of(Locale.UK)))) {
            sound(pdf, "Job card Grey Plover 2026-10-05", 4, 7);
            String text = text(pdf);
            for (CardWork w : card.works()) {
                assertTrue(text.contains(Words.sentence(w.order())), w.order());
            }
            assertTrue(text.contains("page 1 of " + pdf.getNumberOfPages()));
        }
    }

    @Test
    void theEstimateRepeatsItsHeadingOnTheNextPage() throws IOException {
        try (PDDocument pdf = written(Paper.of(estimate, Figures.of(Locale.UK)))) {
            sound(pdf, "Estimate Grey Plover 2026-10-05", 2, 4);
            PDFTextStripper second = new PDFTextStripper();
            second.setStartPage(2);
            second.setEndPage(2);
            String text = second.getText(pdf).replace('\u00a0', ' ');
            assertTrue(text.contains("Your answer"), "the table's heading is repeated");
            assertTrue(text(pdf).contains("€2,795.07"));
        }
    }

    private static PDDocument written(Paper paper) throws IOException {
        Files.createDirectories(DIR);
        byte[] bytes = paper.pdf();
        Files.write(DIR.resolve(paper.fileName() + ".pdf"), bytes);
        Files.writeString(DIR.resolve(paper.fileName() + ".html"), paper.html());
        return Loader.loadPDF(bytes);
    }

    private static void sound(PDDocument pdf, String title, int fewest, int most) throws IOException {
        assertEquals(title, pdf.getDocumentInformation().getTitle());
        assertEquals("en-GB", pdf.getDocumentCatalog().getLanguage());
        assertTrue(pdf.getDocumentCatalog().getMarkInfo().isMarked(), "tagged");
        assertNotNull(pdf.getDocumentCatalog().getStructureTreeRoot());
        int pages = pdf.getNumberOfPages();
        assertTrue(pages >= fewest && pages <= most, pages + " pages");
        Set<String> names = new TreeSet<>();
        for (PDPage page : pdf.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                assertTrue(font.isEmbedded(), font.getName() + " is not in the file");
                names.add(font.getName().replaceAll("^[A-Z]{6}\\+", ""));
            }
        }
        assertEquals(Set.of("SourceSerif4-Regular", "SourceSerif4-Semibold", "SourceSerif4-It"), names);
    }

    private static String text(PDDocument pdf) throws IOException {
        return new PDFTextStripper().getText(pdf).replace('\u00a0', ' ').replaceAll("[ \\n]+", " ");
    }
}
