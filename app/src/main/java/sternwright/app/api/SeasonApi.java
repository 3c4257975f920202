package sternwright.app.api;

import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.desk.derived.SeasonOfYard;
import sternwright.app.desk.season.MoveVisit;
import sternwright.app.desk.season.Onlooker;
import sternwright.app.desk.season.SeasonAsk;
import sternwright.app.desk.season.SeasonView;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.ShownSeason;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shelf.Kept;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import tools.jackson.databind.json.JsonMapper;

/** The plan the yard works by: its lines, its board, and what moves if an operation is set on another day. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class SeasonApi {
    private static final double MOST_SECONDS = 10;

    private final Asked asked;
    private final SeasonBoards boards;
    private final SeasonOfYard season;
    private final MadeOnce made;
    private final JsonMapper json;

    SeasonApi(Asked asked, SeasonBoards boards, SeasonOfYard season, MadeOnce made, JsonMapper json) {
        this.made = made;
        this.json = json;
        this.season = season;
        this.asked = asked;
        this.boards = boards;
    }

    /** The plan operation by operation, with its version as an entity tag; empty before one was published. */
    @GetMapping("/api/season")
    ResponseEntity<Stretch<Published>> season(
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size)
            throws IOException {
        Optional<String> version = asked.shelf().kept(SeasonFolder.PLAN).map(Kept::version);
        Stretch<Published> lines = Stretch.of(season.files().published(), page, size, p -> p);
        ResponseEntity.BodyBuilder answer = ResponseEntity.ok();
        version.ifPresent(v -> answer.eTag(EntityTag.of(v)));
        return answer.body(lines);
    }

    /** Dates given to owners. */
    @GetMapping("/api/season/promises")
    Stretch<PromisedDate> promises(
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        List<PromisedDate> all =
                season.files().promises().stream().map(r -> r.value()).toList();
        return Stretch.of(all, page, size, p -> p);
    }

    /**
     * The board.
     *
     * @param publishedBy who published it
     * @param publishedAt when
     * @param standing whether it is still being judged, holds, or is broken by what has changed in the yard since
     * @param wrong what stands against it
     * @param season the season; without costs and loads unless it holds, and with the operations of one stretch
     * @param page which stretch of operations, from 1
     * @param size how long a stretch is
     * @param total how many operations there are
     */
    public record Board(
            String publishedBy,
            Instant publishedAt,
            ShownSeason.Standing standing,
            List<Problem> wrong,
            SeasonView season,
            int page,
            int size,
            int total) {
        /** Copies the list. */
        public Board {
            wrong = List.copyOf(wrong);
        }

        static Board of(ShownSeason shown, String currency, int page, int size) {
            SeasonView all = SeasonView.of(shown.dated(), currency, shown.remarks());
            SeasonStretch some = SeasonStretch.of(all, page, size);
            return new Board(
                    shown.by(), shown.at(), shown.standing(), shown.wrong(), some.season(), page, size, some.total());
        }
    }

    /** The plan as a board, judged against the yard as it is now: weeks, visits, how full everything is, what binds, what it costs. */
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = Board.class)))
    @GetMapping(value = "/api/season/board", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> board(
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        Stretch.check(page, size);
        ShownSeason shown =
                boards.published().orElseThrow(() -> new NotThere("published season", SeasonFolder.PLAN, List.of()));
        String currency = asked.yard().files().yard().currency().getCurrencyCode();
        return ResponseEntity.ok()
                .eTag(EntityTag.of(shown.version()
                        + "." + shown.standing().name().charAt(0)
                        + Integer.toHexString(shown.ground().hashCode())))
                .body(made.of(
                        String.join(
                                " ",
                                "board for programs",
                                shown.ground(),
                                shown.standing().name(),
                                shown.at().toString(),
                                Integer.toString(page),
                                Integer.toString(size)),
                        () -> json.writeValueAsBytes(Board.of(shown, currency, page, size))));
    }

    /**
     * An operation on another day.
     *
     * @param boat id of the boat
     * @param visit name of the visit
     * @param operation name of the operation
     * @param to the day
     * @param seconds how long to search, 4 if missing
     */
    public record Move(
            @Nullable String boat,
            @Nullable String visit,
            @Nullable String operation,
            @Nullable LocalDate to,
            @Nullable Double seconds) {}

    /**
     * What it comes to.
     *
     * @param possible whether there is a season with it
     * @param price what it costs beside the season without it, in the yard's currency
     * @param moves every operation on another day, the asked one first
     * @param clash why there is no such season
     */
    public record Moved(boolean possible, double price, List<MoveVisit.Move> moves, List<Problem> clash) {
        /** Copies the lists. */
        public Moved {
            moves = List.copyOf(moves);
            clash = List.copyOf(clash);
        }
    }

    /** What moves if an operation is set on a day; nothing is written. To keep it, ask for a run after {@code set:…} and publish that. */
    @PostMapping("/api/season/moves")
    @RolesAllowed({"MANAGER", "OFFICE"})
    Moved move(@RequestBody Move said) {
        String boat = said.boat();
        String visit = said.visit();
        String operation = said.operation();
        LocalDate to = said.to();
        if (boat == null || visit == null || operation == null || to == null) {
            throw BadInput.of("body", "boat, visit, operation or to is missing", "all four", "");
        }
        double seconds = said.seconds() == null ? 4 : said.seconds();
        if (!(seconds > 0 && seconds <= MOST_SECONDS)) {
            throw BadInput.of("seconds", "found " + seconds, "more than 0, at most " + MOST_SECONDS, "");
        }
        LocalDate today = asked.yard().today();
        SeasonAsk ask =
                new SeasonAsk(asked.shelf(), today, today, null, false, List.of(), seconds, 1, System::nanoTime);
        MoveVisit.Moved moved =
                MoveVisit.of(ask, new OperationName(asked.boat(boat).id(), visit, operation), to, Onlooker.NOBODY);
        return new Moved(moved.possible(), moved.price(), moved.moves(), moved.clash());
    }
}
