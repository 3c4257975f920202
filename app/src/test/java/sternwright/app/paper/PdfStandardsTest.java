package sternwright.app.paper;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;
import sternwright.finding.Caution;
import sternwright.job.InventedVisits;
import sternwright.job.JobCards;
import sternwright.job.estimate.Estimates;

/**
 * An independent judge of the PDFs: veraPDF's profiles of ISO 19005-3 (PDF/A-3a, kept for years) and ISO 14289-1 (PDF/UA-1,
 * read aloud).
 */
class PdfStandardsTest {
    /** The two standards. */
    enum Standard {
        ARCHIVE(PDFAFlavour.PDFA_3_A),
        ACCESS(PDFAFlavour.PDFUA_1);

        final PDFAFlavour flavour;

        Standard(PDFAFlavour flavour) {
            this.flavour = flavour;
        }
    }

    private static final Figures UK = Figures.of(Locale.UK);
    private static final byte[] CARD = Paper.of(JobCards.of(InventedVisits.layUp(), InventedVisits.facts()), UK)
            .pdf();
    private static final byte[] ESTIMATE = Paper.of(
                    Estimates.of(InventedVisits.layUp(), InventedVisits.facts(), 30), UK)
            .pdf();

    private static final byte[] LETTERS = letters();

    /** Two owners, one of them with two boats and a safety item. */
    private static byte[] letters() {
        OwnerLetters.Item seal = new OwnerLetters.Item(
                "Heron",
                "Outer pontoon",
                "diaphragm seal",
                "renew diaphragm seal",
                "fitted or renewed 1 Mar 2016, 10 years ago",
                "due on 1 March 2023",
                "It keeps the water out",
                "The boat can sink",
                true,
                true);
        OwnerLetters.Item belt = new OwnerLetters.Item(
                "Sheldrake",
                "Inner pontoon",
                "belts",
                "renew belts",
                "age not known to us",
                "not known",
                "",
                "",
                false,
                false);
        List<Caution> cautions = List.of(new Caution("hull-openings", "This opens the hull below water."));
        return new OwnerLetters(
                        InventedVisits.facts().yard(),
                        LocalDate.of(2026, 10, 5),
                        LocalDate.of(2026, 11, 2),
                        "seals and belts",
                        List.of(
                                new OwnerLetters.Letter("A. Owner", "", List.of(seal, belt), cautions),
                                new OwnerLetters.Letter("B. Owner", "b@example.invalid", List.of(belt), List.of())))
                .paper(UK)
                .pdf();
    }

    @BeforeAll
    static void open() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    @ParameterizedTest
    @EnumSource(Standard.class)
    void papersComply(Standard standard) throws Exception {
        judge("card", CARD, standard);
        judge("estimate", ESTIMATE, standard);
        judge("letters", LETTERS, standard);
    }

    private static void judge(String name, byte[] pdf, Standard standard) throws Exception {
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), standard.flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(standard.flavour, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> faults = result.getTestAssertions().stream()
                    .map(a -> a.getRuleId().getClause() + ": " + a.getMessage() + " at "
                            + a.getLocation().getContext())
                    .distinct()
                    .limit(12)
                    .collect(Collectors.toList());
            assertTrue(result.isCompliant(), () -> name + " " + standard + "\n" + String.join("\n", faults));
            assertTrue(result.getTotalAssertions() > 1000, "something was judged");
        }
    }
}
