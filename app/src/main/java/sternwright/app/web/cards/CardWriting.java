package sternwright.app.web.cards;

import java.io.IOException;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SignedIn;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.working.CardFields;
import sternwright.app.desk.working.FinishCard;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.issued.IssuedCard;
import sternwright.app.issued.IssuedCards;
import sternwright.app.web.access.ForCrew;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.job.CardWork;
import sternwright.job.JobCard;

/** Writing on a job card: field by field as it is typed, all at once without script, and recording it in the end. */
@Controller
@ForCrew
public class CardWriting {
    private static final int LONGEST = 2000;

    private final OpenYard yard;
    private final IssuedCards cards;
    private final AuditTrail audit;
    private final Clock clock;
    private final CardPapers papers;
    private final ReentrantLock recording = new ReentrantLock();

    CardWriting(OpenYard yard, IssuedCards cards, AuditTrail audit, Clock clock, CardPapers papers) {
        this.papers = papers;
        this.yard = yard;
        this.cards = cards;
        this.audit = audit;
        this.clock = clock;
    }

    /** One field as it is typed; a reading is answered with its verdict. */
    @PostMapping("/cards/{id}/note")
    ModelAndView note(
            Page page,
            @PathVariable("id") String id,
            @RequestParam("field") String field,
            @RequestParam Map<String, String> typed) {
        JobCard card = card(id);
        String says = typed.getOrDefault(field, "");
        if (!CardFields.of(card).contains(field) || says.length() > LONGEST) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
        }
        if (!cards.write(id, Map.of(field, says), who(page))) {
            throw new ResponseStatusException(HttpStatus.CONFLICT);
        }
        return page.show(Section.CARDS, "cards/verdict", verdict(page, card, field, says));
    }

    private static CardView.Verdict verdict(Page page, JobCard card, String field, String says) {
        CardWorks works = new CardWorks(page, card, Map.of());
        for (CardWork w : card.works()) {
            for (int i = 0; i < w.readings().size(); i++) {
                if (CardFields.reading(w.number(), i).equals(field)) {
                    return works.verdict(w, w.readings().get(i), says);
                }
            }
        }
        return CardWorks.NOTHING;
    }

    /** Everything on the page at once: keeps it and shows the verdicts. */
    @PostMapping("/cards/{id}")
    ModelAndView keep(Page page, @PathVariable("id") String id, @RequestParam Map<String, String> typed) {
        Map<String, String> all = all(card(id), typed);
        return cards.write(id, all, who(page))
                ? page.go("/cards/" + id, "cards.kept")
                : page.go("/cards/" + id, "cards.already");
    }

    @PostMapping("/cards/{id}/finish")
    ModelAndView finish(Page page, @PathVariable("id") String id, @RequestParam Map<String, String> typed)
            throws IOException {
        JobCard card = card(id);
        Map<String, String> all = all(card, typed);
        recording.lock();
        try {
            if (!cards.write(id, all, who(page))) {
                return page.go("/cards/" + id, "cards.already");
            }
            FinishCard.Ready ready =
                    FinishCard.of(card, all, yard.today(), yard.files().yard().units());
            if (!ready.lacks().isEmpty()) {
                return again(page, id, card, all, ready.lacks(), List.of());
            }
            FinishCard.record(
                    yard.shelf(who(page)), card, ready, yard.today(), "true".equals(all.get(CardFields.AS_READ)));
            yard.changed();
            cards.finish(id, who(page), ready.minutes());
        } catch (BadInput bad) {
            return again(page, id, card, all, List.of(), bad.problems());
        } finally {
            recording.unlock();
        }
        audit.note("card.recorded", card.boat().id(), id);
        return page.go("/cards/" + id, "cards.done", card.boat().name());
    }

    private ModelAndView again(
            Page page,
            String id,
            JobCard card,
            Map<String, String> typed,
            List<FinishCard.Lack> lacks,
            List<Problem> problems) {
        IssuedCard issued = cards.find(id).orElseThrow(() -> new Missing("cards.one"));
        CardText text = new CardText(page, clock.getZone(), card, typed);
        return page.wrong(
                Section.CARDS,
                "cards/card",
                text.view(issued, yard.today(), lacks, problems, papers.of(page, issued, List.of())));
    }

    /** What a form sent, field by field; a box that is not ticked is not sent, and so is empty. */
    private static Map<String, String> all(JobCard card, Map<String, String> typed) {
        Map<String, String> all = new HashMap<>();
        Set<String> fields = CardFields.of(card);
        fields.forEach(f -> all.put(f, cut(typed.get(f))));
        return all;
    }

    private static String cut(@Nullable String says) {
        String text = Optional.ofNullable(says).orElse("");
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST);
    }

    private JobCard card(String id) {
        return cards.content(id).orElseThrow(() -> new Missing("cards.one"));
    }

    private static String who(Page page) {
        return page.person().map(SignedIn::fullName).orElse("");
    }
}
