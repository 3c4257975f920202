package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.desk.tables.ExportTable;
import sternwright.app.desk.tables.ImportBoats;
import sternwright.app.desk.tables.ImportTable;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.sheet.TableFile;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.TrialShelf;

/** Register, hours and history as tables (CSV, RFC 4180), out and in; a table comes in whole or not at all. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE"})
public class TablesApi {
    private static final String CSV = "text/csv;charset=UTF-8";
    private static final int LARGEST = 4_000_000;

    private final Asked asked;
    private final AuditTrail audit;
    private final MadeOnce made;

    TablesApi(Asked asked, AuditTrail audit, MadeOnce made) {
        this.made = made;
        this.asked = asked;
        this.audit = audit;
    }

    /** The register, a row for each installation. */
    @GetMapping(value = "/api/tables/boats", produces = CSV)
    byte[] boats() {
        return made.of(
                "boats " + asked.now(),
                () -> bytes(ExportTable.boats(asked.yard().files())));
    }

    /** The meter readings of all boats. */
    @GetMapping(value = "/api/tables/hours", produces = CSV)
    byte[] hours() {
        return made.of(
                "hours " + asked.now(),
                () -> bytes(ExportTable.hours(asked.yard().files())));
    }

    private static byte[] bytes(String table) {
        return table.getBytes(StandardCharsets.UTF_8);
    }

    /** The history of all boats; it is sent while it is written, for it is long. */
    @GetMapping(value = "/api/tables/history", produces = CSV)
    void history(HttpServletResponse response) throws IOException {
        YardFiles files = asked.yard().files();
        response.setContentType(CSV);
        Writer text = new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8);
        ExportTable.history(files, text);
        text.flush();
    }

    /** Takes boats in; {@code look} only says what would come of it. */
    @PostMapping(value = "/api/tables/boats", consumes = "text/csv")
    ImportBoats.Imported takeBoats(
            @RequestParam(name = "look", defaultValue = "false") boolean look,
            @RequestParam(name = "update", defaultValue = "false") boolean update,
            @RequestBody String table)
            throws IOException {
        return done(look, ImportBoats.take(shelf(look), table(table), update, latest()));
    }

    /** Takes meter readings in; {@code look} only says what would come of it. */
    @PostMapping(value = "/api/tables/hours", consumes = "text/csv")
    ImportTable.Imported takeHours(
            @RequestParam(name = "look", defaultValue = "false") boolean look,
            @RequestParam(name = "as-read", defaultValue = "false") boolean asRead,
            @RequestBody String table)
            throws IOException {
        return done(look, ImportTable.hours(shelf(look), table(table), latest(), asRead));
    }

    /** Takes history in; {@code look} only says what would come of it. */
    @PostMapping(value = "/api/tables/history", consumes = "text/csv")
    ImportTable.Imported takeHistory(
            @RequestParam(name = "look", defaultValue = "false") boolean look,
            @RequestParam(name = "as-read", defaultValue = "false") boolean asRead,
            @RequestBody String table)
            throws IOException {
        return done(look, ImportTable.history(shelf(look), table(table), latest(), asRead));
    }

    private <T> T done(boolean look, T came) {
        if (!look) {
            asked.yard().changed();
            audit.note("table.imported", "body", "");
        }
        return came;
    }

    private Shelf shelf(boolean look) {
        return look ? new TrialShelf(asked.shelf()) : asked.shelf();
    }

    private LocalDate latest() {
        return asked.yard().today();
    }

    private static TableFile table(String text) {
        if (text.length() > LARGEST) {
            throw BadInput.of("body", "the table is too large", "up to 4 MB", "Send it in parts.");
        }
        return new TableFile("body", text);
    }
}
