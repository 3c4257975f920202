package sternwright.app.web.season;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SentOnce;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.MoveVisit;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.PublishSeason;
import sternwright.app.desk.season.board.MoveTo;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.ShownSeason;
import sternwright.app.desk.season.board.TriedMoves;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.paper.Words;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.TypedDay;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.answer.DatedOperation;

/** An operation set on another day: what moves, what it costs, what clashes; kept or left. */
@Controller
@ForOffice
public class MovePage {
    static final String PATH = SeasonPage.PATH + "/move";
    private static final int MOST = 60;

    private final OpenYard yard;
    private final SeasonBoards boards;
    private final TriedMoves tried;
    private final SentOnce sent;
    private final AuditTrail audit;

    MovePage(OpenYard yard, SeasonBoards boards, TriedMoves tried, SentOnce sent, AuditTrail audit) {
        this.yard = yard;
        this.boards = boards;
        this.tried = tried;
        this.sent = sent;
        this.audit = audit;
    }

    /** An operation of the published plan as an address names it. */
    private record Asked(ShownSeason shown, DatedOperation operation, String to) {
        OperationName name() {
            return operation.meaning().name();
        }
    }

    /**
     * What the page shows.
     *
     * @param boat the boat
     * @param visit the visit
     * @param operation the operation
     * @param name her name
     * @param lead what is to be moved and where it stands
     * @param day the field for the day
     * @param asked whether a day was asked for
     * @param running whether the answer is being worked out
     * @param answer what it comes to, in a sentence; empty before
     * @param moves what moves
     * @param moreMoves how many more
     * @param clash why there is no such season
     * @param possible whether it can be kept
     */
    public record View(
            String boat,
            String visit,
            String operation,
            String name,
            String lead,
            Field day,
            boolean asked,
            boolean running,
            String answer,
            List<RunView.Move> moves,
            int moreMoves,
            List<Problem> clash,
            boolean possible) {
        /** Copies the lists. */
        public View {
            moves = List.copyOf(moves);
            clash = List.copyOf(clash);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(
            Page page,
            @RequestParam("boat") String boat,
            @RequestParam("visit") String visit,
            @RequestParam("operation") String operation,
            @RequestParam(name = "to", defaultValue = "") String to) {
        Asked asked = asked(new OperationName(boat, visit, operation), to);
        if (to.isBlank()) {
            return page.show(Section.SEASON, "season/move", view(page, asked, false, "", Optional.empty()));
        }
        Optional<LocalDate> day = TypedDay.of(to);
        if (day.isEmpty()) {
            return page.wrong(
                    Section.SEASON,
                    "season/move",
                    view(page, asked, false, page.say("season.move.unread"), Optional.empty()));
        }
        return page.show(Section.SEASON, "season/move", answered(page, asked, day.get()));
    }

    private Asked asked(OperationName name, String to) {
        ShownSeason shown = boards.published().orElseThrow(() -> new Missing("season.move.one"));
        DatedOperation operation = shown.dated().visits().stream()
                .filter(v -> v.boatId().equals(name.boatId()))
                .flatMap(v -> v.operations().stream())
                .filter(o -> o.meaning().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new Missing("season.move.one"));
        return new Asked(shown, operation, to);
    }

    private View answered(Page page, Asked asked, LocalDate day) {
        try {
            Optional<MoveVisit.Moved> moved = tried.move(asked.shown(), new MoveTo(asked.name(), day));
            return view(page, asked, moved.isEmpty(), "", moved);
        } catch (BadInput begun) {
            return view(page, asked, begun.problems());
        }
    }

    private View view(Page page, Asked asked, boolean running, String error, Optional<MoveVisit.Moved> moved) {
        List<MoveVisit.Move> moves = moved.map(MoveVisit.Moved::moves).orElse(List.of());
        RunText text = new RunText(page, yard.files().yard().currency(), java.time.ZoneOffset.UTC);
        return new View(
                asked.name().boatId(),
                asked.name().visit(),
                asked.name().operation(),
                asked.operation().meaning().boatName(),
                lead(page, asked),
                day(page, asked, error),
                !asked.to().isBlank() && error.isEmpty(),
                running,
                moved.filter(MoveVisit.Moved::possible)
                        .map(m -> answer(page, m, text.sums()))
                        .orElse(""),
                moves.stream().limit(MOST).map(text::move).toList(),
                Math.max(0, moves.size() - MOST),
                moved.map(MoveVisit.Moved::clash).orElse(List.of()),
                moved.map(MoveVisit.Moved::possible).orElse(false));
    }

    private static View view(Page page, Asked asked, List<Problem> clash) {
        return new View(
                asked.name().boatId(),
                asked.name().visit(),
                asked.name().operation(),
                asked.operation().meaning().boatName(),
                lead(page, asked),
                day(page, asked, ""),
                true,
                false,
                "",
                List.of(),
                0,
                clash,
                false);
    }

    private static String lead(Page page, Asked asked) {
        DatedOperation o = asked.operation();
        return page.say(
                "season.move.lead",
                Words.sentence(asked.name().operation()),
                page.figures().dated(asked.name().visit()),
                page.figures().date(o.from().toLocalDate()),
                page.figures().dated(o.reason()));
    }

    private static Field day(Page page, Asked asked, String error) {
        String value =
                asked.to().isBlank() ? asked.operation().from().toLocalDate().toString() : asked.to();
        return new Field("to", page.say("season.move.to"), "", value, error, "date", true, "", "", List.of());
    }

    private static String answer(Page page, MoveVisit.Moved moved, SumsText sums) {
        long promises = moved.moves().stream()
                .filter(m -> m.promised() && !m.name().equals(moved.name()))
                .count();
        String day = page.figures().date(moved.to());
        double price = Math.rint(moved.price());
        String costs = price == 0
                ? page.say("season.move.same")
                : page.say(price > 0 ? "season.move.dearer" : "season.move.cheaper", sums.money(Math.abs(price)));
        return page.say(
                "season.move.answer", day, costs, promises, moved.moves().size() - 1);
    }

    /** Publishes the plan with the operation on its new day, as it was shown. */
    @PostMapping(PATH)
    ModelAndView keep(
            Page page,
            @RequestParam("boat") String boat,
            @RequestParam("visit") String visit,
            @RequestParam("operation") String operation,
            @RequestParam("to") String to,
            @RequestParam(name = "once", defaultValue = "") String once)
            throws IOException {
        Asked asked = asked(new OperationName(boat, visit, operation), to);
        LocalDate day = TypedDay.of(to).orElseThrow(() -> new Missing("season.move.one"));
        Optional<MoveVisit.Moved> moved = tried.move(asked.shown(), new MoveTo(asked.name(), day));
        PlannedSeason after = moved.map(MoveVisit.Moved::after).orElse(null);
        if (after == null) {
            return page.show(Section.SEASON, "season/move", answered(page, asked, day));
        }
        try {
            Optional<LocalDate> done = sent.take(once, page.whoId(), () -> {
                keep(page, asked, day, after);
                return day;
            });
            if (done.isEmpty()) {
                return page.go(SeasonPage.PATH, "season.published.twice");
            }
        } catch (EditConflict theirs) {
            return page.conflict(Section.SEASON, SeasonPage.PATH, page.say("season.this"));
        }
        return page.go(
                SeasonPage.PATH + "/boats/" + boat,
                "season.move.kept",
                page.figures().date(day));
    }

    private void keep(Page page, Asked asked, LocalDate day, PlannedSeason after) throws IOException {
        LocalDate basis = after.visitsOf().orElse(yard.today());
        PublishSeason.write(
                yard.shelf(page.who()),
                after,
                after.dated().published(basis),
                List.of(MoveVisit.event(asked.name(), day)),
                asked.shown().version());
        boards.publishedFrom(after);
        yard.changed();
        audit.note("season.moved", asked.name().boatId(), asked.name().operation() + " " + day);
    }
}
