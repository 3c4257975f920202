package sternwright.app.desk.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.job.InventedVisits;
import sternwright.service.Programme;

class VisitPapersTest {
    @TempDir
    Path folder;

    private final VisitPapers papers = VisitPapers.of(files(), InventedVisits.boat(), InventedVisits.ISSUED, Locale.UK);

    @Test
    void bothFilesOfAPaperAreWrittenAndNothingElse() throws IOException {
        Path out = folder.resolve("papers");
        VisitPapers.Written card = papers.write(papers.card(InventedVisits.layUp()), out);
        VisitPapers.Written estimate = papers.write(papers.estimate(InventedVisits.layUp(), 30, List.of()), out);
        assertTrue(Files.readString(card.html()).contains("Grey Plover"));
        assertEquals("%PDF-", new String(Files.readAllBytes(estimate.pdf()), 0, 5, StandardCharsets.US_ASCII));
        assertTrue(card.remarks().stream().anyMatch(r -> r.contains("model not known")));
        assertTrue(estimate.remarks().stream().anyMatch(r -> r.contains("no price for impeller kit")));
        try (var all = Files.list(out)) {
            assertEquals(4, all.count());
        }
    }

    @Test
    void declinedLinesLeaveTheTotal() {
        assertEquals(
                InventedVisits.eur(2348.80 - 126.70),
                papers.estimate(InventedVisits.layUp(), 30, List.of(1)).net());
    }

    @Test
    void aLineThatIsNotThereIsSaid() {
        BadInput e = assertThrows(BadInput.class, () -> papers.estimate(InventedVisits.layUp(), 30, List.of(12)));
        assertEquals("--decline: there is no line 12; expected a line from 1 to 10.", e.getMessage());
        assertThrows(BadInput.class, () -> papers.estimate(InventedVisits.layUp(), 0, List.of()));
    }

    private static YardFiles files() {
        return new YardFiles(
                InventedVisits.yard(),
                Map.of("inner-basin", InventedVisits.berth()),
                InventedVisits.catalogue(),
                new Programme("generic", "generic", false, List.of(), List.of(), InventedVisits.cautions()),
                List.of(),
                Map.of("grey-plover", InventedVisits.boat()),
                Map.of("grey-plover", InventedVisits.history()),
                List.of());
    }
}
