package sternwright.app.web.cards;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SignedIn;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.proving.AgreedPlans;
import sternwright.app.desk.proving.ChosenVisit;
import sternwright.app.desk.visits.VisitPapers;
import sternwright.app.files.YardFiles;
import sternwright.app.issued.IssuedCard;
import sternwright.app.issued.IssuedCards;
import sternwright.app.issued.IssuedPapers;
import sternwright.app.paper.Paper;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.access.ForCrew;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.State;
import sternwright.boat.Boat;
import sternwright.job.JobCard;
import sternwright.visit.planned.PlannedVisit;

/** The job cards: listed, issued from a plan, shown and printed. */
@Controller
public class CardsPage {
    private static final String PATH = "/cards";
    private static final int LINES = 50;

    private final OpenYard yard;
    private final AgreedPlans plans;
    private final IssuedCards cards;
    private final AuditTrail audit;
    private final Clock clock;
    private final CardPapers papers;
    private final IssuedPapers printed;

    CardsPage(
            OpenYard yard,
            AgreedPlans plans,
            IssuedCards cards,
            AuditTrail audit,
            Clock clock,
            CardPapers papers,
            IssuedPapers printed) {
        this.printed = printed;
        this.papers = papers;
        this.yard = yard;
        this.plans = plans;
        this.cards = cards;
        this.audit = audit;
        this.clock = clock;
    }

    @GetMapping(PATH)
    @ForAll
    ModelAndView list(Page page, @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        Pager pager = new Pager(number, LINES, cards.count());
        List<CardView.Line> lines = cards.lines(pager.before(), LINES).stream()
                .map(c -> line(page, c))
                .toList();
        return page.show(Section.CARDS, "cards/list", new CardView.Lines(lines, pager));
    }

    private CardView.Line line(Page page, IssuedCard card) {
        LocalDate today = yard.today();
        State state = !card.open()
                ? new State(page.say("cards.state.recorded"), State.Mark.TICK, State.Tone.SOFT)
                : card.to().isBefore(today)
                        ? new State(page.say("cards.state.late"), State.Mark.TRIANGLE, State.Tone.ACT)
                        : new State(page.say("cards.state.open"), State.Mark.RING, State.Tone.PLAIN);
        return new CardView.Line(
                card.id(), card.boatName(), page.figures().dates(card.from(), card.to()), card.issuedBy(), state);
    }

    @PostMapping(PATH)
    @ForCrew
    ModelAndView issue(Page page, @RequestParam Map<String, String> typed) {
        ChosenVisit chosen = ChosenVisit.read(typed);
        YardFiles files = yard.files();
        Boat boat =
                Optional.ofNullable(files.boats().get(chosen.boatId())).orElseThrow(() -> new Missing("visits.one"));
        Optional<PlannedVisit> visit = plans.visit(chosen, boat, page.locale());
        if (visit.isEmpty()) {
            return page.conflict(Section.VISITS, "/visits/" + boat.id(), page.say("cards.plan", boat.name()));
        }
        JobCard card = VisitPapers.of(files, boat, yard.today(), page.locale()).card(visit.get());
        String id = cards.issue(card, page.person().map(SignedIn::fullName).orElse(""));
        audit.note("card.issued", boat.id(), id);
        return page.go(PATH + "/" + id, "");
    }

    @GetMapping(PATH + "/{id}")
    @ForAll
    ModelAndView one(Page page, @PathVariable("id") String id) {
        IssuedCard issued = cards.find(id).orElseThrow(() -> new Missing("cards.one"));
        JobCard card = cards.content(id).orElseThrow(() -> new Missing("cards.one"));
        CardText text = new CardText(page, clock.getZone(), card, cards.notes(id));
        return page.show(
                Section.CARDS,
                "cards/card",
                text.view(issued, yard.today(), List.of(), List.of(), papers.of(page, issued, List.of())));
    }

    @GetMapping(PATH + "/{id}/pdf")
    @ForAll
    ResponseEntity<byte[]> pdf(Page page, @PathVariable("id") String id) {
        JobCard card = cards.content(id).orElseThrow(() -> new Missing("cards.one"));
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .cacheControl(CacheControl.noStore())
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + Paper.name(card) + ".pdf\"")
                .body(printed.pdf(card, page.figures()));
    }
}
