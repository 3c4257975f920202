package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.net.URI;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PatchMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.proving.AgreedPlans;
import sternwright.app.desk.visits.VisitPapers;
import sternwright.app.desk.working.CardFields;
import sternwright.app.desk.working.FinishCard;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.issued.IssuedCard;
import sternwright.app.issued.IssuedCards;
import sternwright.app.issued.IssuedPapers;
import sternwright.app.paper.Figures;
import sternwright.boat.Boat;
import sternwright.job.JobCard;

/** Job cards: issued from a visit, written on, recorded. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class CardsApi {
    private static final int LONGEST = 2000;

    private final Asked asked;
    private final AgreedPlans plans;
    private final IssuedCards cards;
    private final AuditTrail audit;
    private final IssuedPapers printed;

    CardsApi(Asked asked, AgreedPlans plans, IssuedCards cards, AuditTrail audit, IssuedPapers printed) {
        this.printed = printed;
        this.asked = asked;
        this.plans = plans;
        this.cards = cards;
        this.audit = audit;
    }

    /**
     * A work of a card.
     *
     * @param number its number; fields begin with w and it
     * @param order what is to be done
     * @param part installation/part
     * @param rule id of the rule
     */
    public record Work(int number, String order, String part, String rule) {}

    /**
     * A card with what has been written on it.
     *
     * @param card as in the list
     * @param works its works
     * @param fields every field that can be written, in the order of the card
     * @param notes what stands in them
     */
    public record Whole(IssuedCard card, List<Work> works, List<String> fields, Map<String, String> notes) {}

    /** The cards, the open ones first. */
    @GetMapping("/api/cards")
    Stretch<IssuedCard> list(
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        Stretch.check(page, size);
        return new Stretch<>(cards.lines(Stretch.before(page, size), size), page, size, (int) cards.count());
    }

    /** One card. */
    @GetMapping("/api/cards/{card}")
    Whole one(@PathVariable("card") String id) {
        JobCard content = content(id);
        IssuedCard card = cards.find(id).orElseThrow(() -> missing(id));
        return new Whole(
                card,
                content.works().stream()
                        .map(w -> new Work(
                                w.number(),
                                w.order(),
                                w.planned().part().toString(),
                                w.planned().inForce().rule().id()))
                        .toList(),
                CardFields.of(content).stream().sorted().toList(),
                cards.notes(id));
    }

    /** Issues a card of a visit; one that is open for it already is named again. */
    @PostMapping("/api/cards")
    @RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN"})
    ResponseEntity<Whole> issue(@RequestBody VisitNamed said, Locale reader) {
        Boat boat = asked.boat(said.chosen().boatId());
        JobCard card = VisitPapers.of(asked.yard().files(), boat, asked.yard().today(), reader)
                .card(EstimatesApi.visit(plans, said, boat, reader));
        String id = cards.issue(card, Asked.person().fullName());
        audit.note("card.issued", boat.id(), id);
        return ResponseEntity.created(URI.create("/api/cards/" + id)).body(one(id));
    }

    /** Writes on an open card: texts by field; what is not named stays. */
    @PatchMapping("/api/cards/{card}/notes")
    @RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN"})
    Whole write(@PathVariable("card") String id, @RequestBody Map<String, String> notes) {
        known(content(id), notes);
        if (!cards.write(id, notes, Asked.person().fullName())) {
            throw new ResponseStatusException(HttpStatus.CONFLICT, "This card is recorded already.");
        }
        return one(id);
    }

    private static void known(JobCard card, Map<String, String> notes) {
        Set<String> fields = CardFields.of(card);
        notes.forEach((field, says) -> {
            if (!fields.contains(field)) {
                throw BadInput.of(field, "the card has no such field", "", KnownNames.advice(field, fields));
            }
            if (says == null || says.length() > LONGEST) {
                throw BadInput.of(field, "it cannot be kept", "a text of up to " + LONGEST + " signs", "");
            }
        });
    }

    /** Records what stands on a card in the boat's history, and closes it. */
    @PostMapping("/api/cards/{card}/finish")
    @RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN"})
    Whole finish(@PathVariable("card") String id) throws IOException {
        JobCard card = content(id);
        if (!cards.find(id).orElseThrow(() -> missing(id)).open()) {
            throw new ResponseStatusException(HttpStatus.CONFLICT, "This card is recorded already.");
        }
        Map<String, String> notes = new HashMap<>(cards.notes(id));
        FinishCard.Ready ready = FinishCard.of(
                card, notes, asked.yard().today(), asked.yard().files().yard().units());
        if (!ready.lacks().isEmpty()) {
            throw new BadInput(ready.lacks().stream().map(CardsApi::lack).toList());
        }
        FinishCard.record(
                asked.shelf(), card, ready, asked.yard().today(), "true".equals(notes.get(CardFields.AS_READ)));
        asked.yard().changed();
        cards.finish(id, Asked.person().fullName(), ready.minutes());
        audit.note("card.recorded", card.boat().id(), id);
        return one(id);
    }

    private static Problem lack(FinishCard.Lack lack) {
        String found = switch (lack.kind()) {
            case DAY -> "the day is missing, no day, or still to come";
            case WHO -> "nobody is named";
            case SPENT -> "the time spent is no number of hours";
            case METER -> "the meter of " + lack.label() + " shows no number";
            case ANSWER -> "work " + lack.work() + " is not answered: done, not-done or refused";
            case READING -> "the reading \"" + lack.label() + "\" is missing and the remark does not say why";
            case FIGURE -> "the reading \"" + lack.label() + "\" cannot be read";
            case SIGNED -> "nobody signed for leaving work " + lack.work();
            case REMARK -> "work " + lack.work() + " was not done and the remark does not say why";
        };
        return new Problem("card", 0, lack.field(), found, "", "");
    }

    /** The card on paper. */
    @GetMapping(value = "/api/cards/{card}/pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    byte[] pdf(@PathVariable("card") String id, Locale reader) {
        return printed.pdf(
                content(id), Figures.of(reader).in(asked.yard().files().yard().units()));
    }

    private JobCard content(String id) {
        return cards.content(id).orElseThrow(() -> missing(id));
    }

    private static NotThere missing(String id) {
        return new NotThere("card", id, List.of());
    }
}
