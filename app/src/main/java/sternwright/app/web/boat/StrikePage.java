package sternwright.app.web.boat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SentOnce;
import sternwright.app.desk.derived.EachOfYard;
import sternwright.app.desk.due.DueMove;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.recording.StrikeEntry;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.TrialShelf;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.history.HistoryLine;
import sternwright.history.ServiceEntry;
import sternwright.history.Strike;

/** A wrong line of the history is struck, once it is seen what that moves; who, when and why stay beside it. */
@Controller
@ForOffice
public class StrikePage {
    private static final String PATH = "/boats/{id}/history/strike/{key}";
    private static final int LONGEST = 500;

    /** How many lines that somebody looks at are tried once. */
    private static final int TRIED = 32;

    private final OpenYard yard;
    private final AuditTrail audit;
    private final SentOnce once;
    private final EachOfYard<Line, List<DueMove>> moves;

    /** A line of a boat's history. */
    private record Line(String boatId, String key) {}

    StrikePage(OpenYard yard, AuditTrail audit, SentOnce once) {
        this.yard = yard;
        this.audit = audit;
        this.once = once;
        this.moves = new EachOfYard<>(yard, TRIED);
    }

    /**
     * The page.
     *
     * @param head head of the boat's pages
     * @param line the line
     * @param moves what of the due list moves
     * @param why the field for the reason
     */
    public record View(BoatSheet.Head head, HistoryPage.Line line, List<Moved> moves, Field why) {
        /** Copies the list. */
        public View {
            moves = List.copyOf(moves);
        }
    }

    @GetMapping(PATH)
    ModelAndView look(Page page, @PathVariable("id") String id, @PathVariable("key") String key) throws IOException {
        return page.show(Section.BOATS, "boat/strike", view(page, id, key, "", ""));
    }

    private View view(Page page, String id, String key, String typed, String error) throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        ServiceEntry entry = entry(one, key);
        List<DueMove> moved = moves.of(new Line(id, key), () -> trial(page, id, entry));
        Field why = new Field(
                "why",
                page.say("history.strike.why"),
                page.say("history.strike.why.hint"),
                typed,
                error,
                "text",
                true,
                "",
                "",
                List.of());
        return new View(
                one.head(page, "history"),
                HistoryPage.line(page, one, HistoryPage.rules(one).get(entry.ruleId()), HistoryLine.of(entry)),
                Moved.of(page, yard.files(), moved),
                why);
    }

    private List<DueMove> trial(Page page, String id, ServiceEntry entry) throws IOException {
        Strike trial = new Strike(yard.today(), page.who(), page.say("history.strike.trial"));
        StrikeEntry.Struck struck = strike(new TrialShelf(yard.shelf(page.who())), id, entry, trial);
        return DueMove.between(struck.before(), struck.after());
    }

    private static ServiceEntry entry(OneBoat one, String key) {
        return one.files().history(one.boat().id()).entries().stream()
                .filter(e -> StrikeEntry.key(e).equals(key))
                .findFirst()
                .orElseThrow(() -> new Missing("history.one"));
    }

    private StrikeEntry.Struck strike(Shelf shelf, String id, ServiceEntry entry, Strike strike) throws IOException {
        return StrikeEntry.strike(shelf, id, entry::equals, strike, yard.today());
    }

    @PostMapping(PATH)
    ModelAndView strike(
            Page page,
            @PathVariable("id") String id,
            @PathVariable("key") String key,
            @RequestParam(name = "why", defaultValue = "") String why,
            @RequestParam(name = "once", defaultValue = "") String sent)
            throws IOException {
        if (why.isBlank() || why.length() > LONGEST) {
            String error = why.isBlank() ? page.say("field.NotBlank") : page.say("field.Size", LONGEST);
            return page.wrong(Section.BOATS, "boat/strike", view(page, id, key, why, error));
        }
        Strike strike = new Strike(yard.today(), page.who(), why.strip());
        Optional<StrikeEntry.Struck> struck = once.take(sent, page.whoId(), () -> {
            ServiceEntry entry = entry(OneBoat.of(yard.files(), id), key);
            return strike(yard.shelf(page.who()), id, entry, strike);
        });
        struck.ifPresent(s -> {
            yard.changed();
            ServiceEntry e = s.struck().entry();
            audit.note("history.struck", id, e.date() + " " + e.part() + " " + e.ruleId() + ": " + strike.why());
        });
        return page.go("/boats/" + id + "/history", struck.isEmpty() ? "record.again" : "history.strike.done");
    }
}
