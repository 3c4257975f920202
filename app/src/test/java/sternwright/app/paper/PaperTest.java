package sternwright.app.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import sternwright.job.CardCaution;
import sternwright.job.CardWork;
import sternwright.job.InventedVisits;
import sternwright.job.JobCard;
import sternwright.job.JobCards;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.Estimates;
import sternwright.service.ReadingAsked;

/** What has to stand on the two papers, read back from the page as a reader sees it. */
class PaperTest {
    private static final Figures UK = Figures.of(Locale.UK);

    private final JobCard card = JobCards.of(InventedVisits.layUp(), InventedVisits.facts());
    private final Estimate estimate = Estimates.of(InventedVisits.layUp(), InventedVisits.facts(), 30);
    private final String cardText = text(Paper.of(card, UK).printable());
    private final String estimateText = text(Paper.of(estimate, UK).printable());

    @Test
    void everyWorkWithReasonStepsAndSourceStandsOnTheCard() {
        for (CardWork w : card.works()) {
            shows(cardText, Words.sentence(w.order()));
            shows(cardText, w.planned().partName());
            shows(cardText, Words.full(w.planned().reason()));
            shows(cardText, w.planned().inForce().source().line());
            w.steps().forEach(s -> shows(cardText, Words.full(s)));
        }
        assertEquals(card.works().size(), count(cardText, "☐ done ☐ not done ☐ refused by owner who"));
    }

    @Test
    void everyCautionStandsOnTheCardOnceInFull() {
        List<CardCaution> all = new java.util.ArrayList<>(card.cautions());
        card.points().forEach(p -> all.addAll(p.cautions()));
        all.forEach(c -> assertEquals(1, count(cardText, c.caution().text()), c.title()));
        shows(cardText, "▲ Caution C Waste, F Hot oil");
    }

    @Test
    void everyReadingStandsWithLimitUnitAndLastValue() {
        for (CardWork w : card.works()) {
            for (var r : w.readings()) {
                ReadingAsked asked = r.asked();
                shows(cardText, Words.sentence(asked.label()) + " " + UK.limit(asked));
            }
        }
        shows(cardText, "Freeze point of the coolant at most −25 °C −27 °C, 10 Oct 2025");
        shows(cardText, "Anode remaining at least 50 % 82 %, 10 Oct 2025");
        shows(cardText, "Resistance between leg and engine at least 10 kΩ");
    }

    @Test
    void suppliesOpeningsAndMeterAreAskedFor() {
        shows(cardText, "4.5 L Engine oil 15w 40");
        shows(cardText, "1 piece Impeller kit");
        shows(cardText, "Seacock ☐ open ☐ shut ☐ open ☐ shut");
        shows(cardText, "Diaphragm seal ☐ dry ☐ weeping");
        shows(cardText, "last 702 h on 20 Jun 2026; on arrival");
    }

    @Test
    void theEstimateTellsTheOwnerWhyWhatIfAndHowMuch() {
        estimate.lines().forEach(l -> {
            shows(estimateText, Words.full(l.why()));
            shows(estimateText, "If it is left: " + Words.full(l.ifDeclined()));
            shows(estimateText, UK.money(l.price()));
            shows(estimateText, l.planned().inForce().source().standing().words());
        });
        shows(estimateText, "Without VAT €2,348.80 VAT 19 % €446.27 To pay, with what is priced so far €2,795.07");
        shows(estimateText, "Done together these works cost €545.00 less, without VAT, than one by one.");
        shows(estimateText, "These prices hold until 14 October 2026.");
        assertEquals(10, count(estimateText, "☐ yes ☐ no"));
        estimate.refusals().forEach(r -> shows(estimateText, r.statement()));
    }

    @Test
    void aPriceThatIsNotKnownIsSaidOnThePaper() {
        shows(estimateText, "Price of impeller kit not known yet; it comes on top.");
        shows(estimateText, "Not every price is known yet.");
    }

    @Test
    void answersGivenAreShown() {
        String answered = text(Paper.of(estimate.answered(List.of(4)), UK).printable());
        assertEquals(9, count(answered, "☑ yes"));
        assertEquals(1, count(answered, "☑ no, declined"));
        assertEquals(1, count(answered, "I take this decision myself"));
    }

    @Test
    void demonstrationSaysSo() {
        shows(cardText, "are invented");
        shows(estimateText, "are invented");
    }

    @Test
    void noWordsOfTheProgramReachTheOwner() {
        for (String jargon : List.of("null", "rule", "clause", "override", "MONTHS", "kind", "servicePoint")) {
            assertFalse(estimateText.contains(jargon), jargon);
        }
    }

    @Test
    void thePageStandsAlone() {
        String html = Paper.of(card, UK).html();
        assertFalse(html.replaceAll("xmlns=\"[^\"]*\"", "").contains("http"), "a link outside");
        assertEquals(3, count(html, "data:font/woff2;base64,"));
    }

    @Test
    void whateverAnOwnerIsCalledStaysText() {
        InventedNames.boats().forEach(boat -> {
            Paper paper = Paper.of(JobCards.of(InventedVisits.layUp(), InventedNames.facts(boat)), UK);
            shows(text(paper.printable()), boat.name());
            assertTrue(paper.pdf().length > 10_000);
        });
    }

    private static void shows(String page, String words) {
        assertTrue(page.contains(plain(words)), () -> "missing: " + plain(words));
    }

    private static int count(String page, String words) {
        return page.split(java.util.regex.Pattern.quote(plain(words)), -1).length - 1;
    }

    /** The words of the page in reading order; also proves that it is well formed. */
    private static String text(String page) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
            StringBuilder words = new StringBuilder();
            gather(document.getElementsByTagName("body").item(0), words);
            return plain(words.toString());
        } catch (Exception e) {
            throw new AssertionError("the page is not well formed", e);
        }
    }

    private static void gather(org.w3c.dom.Node node, StringBuilder words) {
        if (node.getNodeType() == org.w3c.dom.Node.TEXT_NODE) {
            words.append(node.getNodeValue());
        }
        for (org.w3c.dom.Node c = node.getFirstChild(); c != null; c = c.getNextSibling()) {
            gather(c, words);
        }
        if (List.of("td", "th", "p", "li", "h4").contains(node.getNodeName())) {
            words.append(' ');
        }
    }

    private static String plain(String words) {
        return words.replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }
}
