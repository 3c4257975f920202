package sternwright.app.web.cards;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.Role;
import sternwright.app.desk.documents.BoatDocuments;
import sternwright.app.desk.documents.Document;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.issued.IssuedCard;
import sternwright.app.issued.IssuedCards;
import sternwright.app.web.access.ForCrew;
import sternwright.app.web.boat.DocumentsPage;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** Photos and documents put on a job card: they stand with the card and among those of its boat, also after it was recorded. */
@Controller
public class CardPapers {
    private final OpenYard yard;
    private final IssuedCards cards;
    private final BoatDocuments documents;
    private final AuditTrail audit;
    private final Clock clock;

    CardPapers(OpenYard yard, IssuedCards cards, BoatDocuments documents, AuditTrail audit, Clock clock) {
        this.yard = yard;
        this.cards = cards;
        this.documents = documents;
        this.audit = audit;
        this.clock = clock;
    }

    /**
     * What is put on a card.
     *
     * @param page the page
     * @param card the card
     * @param problems what is wrong with the file that was sent
     * @return for the page of the card
     */
    public CardView.Papers of(Page page, IssuedCard card, List<Problem> problems) {
        List<DocumentsPage.Line> lines = documents.ofCard(card.boatId(), card.id()).stream()
                .map(d -> DocumentsPage.line(page, clock, card.boatId(), d))
                .toList();
        return new CardView.Papers(lines, problems, page.may(Role.MANAGER, Role.OFFICE, Role.TECHNICIAN));
    }

    @ForCrew
    @PostMapping("/cards/{id}/documents")
    ModelAndView put(Page page, @PathVariable("id") String id, @RequestParam("file") MultipartFile file)
            throws IOException {
        IssuedCard card = cards.find(id).orElseThrow(() -> new Missing("cards.one"));
        try {
            String called = Optional.ofNullable(file.getOriginalFilename()).orElse("");
            Document kept = documents.put(card.boatId(), card.id(), called, file.getBytes(), page.who());
            audit.note("document.added", card.boatId(), kept.name());
            return page.go("/cards/" + id + "#papers", "cards.papers.done", kept.name());
        } catch (BadInput bad) {
            CardText text = new CardText(
                    page,
                    clock.getZone(),
                    cards.content(id).orElseThrow(() -> new Missing("cards.one")),
                    cards.notes(id));
            return page.wrong(
                    Section.CARDS,
                    "cards/card",
                    text.view(card, yard.today(), List.of(), List.of(), of(page, card, bad.problems())));
        }
    }
}
