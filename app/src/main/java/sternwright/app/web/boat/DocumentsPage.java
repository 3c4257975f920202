package sternwright.app.web.boat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
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
import sternwright.app.web.access.ForAll;
import sternwright.app.web.access.ForCrew;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** Photos and documents of a boat, for people who are signed in. */
@Controller
@ForAll
public class DocumentsPage {
    private static final String PATH = "/boats/{id}/documents";
    private static final double KILO = 1000;

    private final OpenYard yard;
    private final BoatDocuments documents;
    private final AuditTrail audit;
    private final Clock clock;

    DocumentsPage(OpenYard yard, BoatDocuments documents, AuditTrail audit, Clock clock) {
        this.yard = yard;
        this.documents = documents;
        this.audit = audit;
        this.clock = clock;
    }

    /**
     * One that is kept.
     *
     * @param name what it is called
     * @param path where it is looked at
     * @param kind in words
     * @param size in words
     * @param day when it was put in
     * @param by who put it in
     * @param picture whether it can be shown
     * @param card where the job card is that it was put on; empty if it was put on none
     */
    public record Line(
            String name, String path, String kind, String size, String day, String by, boolean picture, String card) {}

    /**
     * The page.
     *
     * @param head head of the boat's pages
     * @param lines what is kept, the newest first
     * @param problems what is wrong with the file that was sent
     * @param writes whether the reader puts some in
     * @param takesAway whether the reader takes some away
     */
    public record View(
            BoatSheet.Head head, List<Line> lines, List<Problem> problems, boolean writes, boolean takesAway) {}

    @GetMapping(PATH)
    ModelAndView show(Page page, @PathVariable("id") String id) {
        return page.show(Section.BOATS, "boat/documents", view(page, id, List.of()));
    }

    private View view(Page page, String id, List<Problem> problems) {
        OneBoat one = OneBoat.of(yard.files(), id);
        List<Line> lines =
                documents.list(id).stream().map(d -> line(page, id, d)).toList();
        return new View(
                one.head(page, "documents"),
                lines,
                problems,
                page.may(Role.MANAGER, Role.OFFICE, Role.TECHNICIAN),
                page.may(Role.MANAGER, Role.OFFICE));
    }

    private Line line(Page page, String id, Document d) {
        return line(page, clock, id, d);
    }

    /**
     * One that is kept, in the words of its reader.
     *
     * @param page the page
     * @param clock its zone tells the day
     * @param boatId the boat
     * @param d the document
     * @return the line
     */
    public static Line line(Page page, Clock clock, String boatId, Document d) {
        String size = d.size() < KILO * KILO
                ? page.figures().quantity(Math.max(1, Math.rint(d.size() / KILO)), "kB")
                : page.figures().quantity(Math.rint(d.size() / KILO / KILO * 10) / 10, "MB");
        return new Line(
                d.name(),
                "/boats/" + boatId + "/documents/" + d.id(),
                page.say("documents.kind." + d.kind().name().toLowerCase(Locale.ROOT)),
                size,
                page.figures().shortDate(LocalDate.ofInstant(d.at(), clock.getZone())),
                d.by(),
                d.kind().shown(),
                d.cardId().isEmpty() ? "" : "/cards/" + d.cardId());
    }

    @ForCrew
    @PostMapping(PATH)
    ModelAndView put(Page page, @PathVariable("id") String id, @RequestParam("file") MultipartFile file)
            throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        try {
            String called = Optional.ofNullable(file.getOriginalFilename()).orElse("");
            Document kept = documents.put(one.boat().id(), "", called, file.getBytes(), page.who());
            audit.note("document.added", id, kept.name());
            return page.go("/boats/" + id + "/documents", "documents.done", kept.name());
        } catch (BadInput bad) {
            return page.wrong(Section.BOATS, "boat/documents", view(page, id, bad.problems()));
        }
    }

    @GetMapping(PATH + "/{document}")
    ResponseEntity<byte[]> content(@PathVariable("id") String id, @PathVariable("document") String documentId) {
        Document document = document(id, documentId);
        byte[] content = documents.content(document).orElseThrow(() -> new Missing("documents.one"));
        ContentDisposition how = (document.kind().shown()
                        ? ContentDisposition.inline()
                        : ContentDisposition.attachment())
                .filename(document.name(), StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(document.kind().contentType()))
                .cacheControl(CacheControl.noCache().cachePrivate())
                .header("Content-Disposition", how.toString())
                .header("Content-Security-Policy", "default-src 'none'; sandbox")
                .body(content);
    }

    private Document document(String id, String documentId) {
        OneBoat one = OneBoat.of(yard.files(), id);
        return documents.one(one.boat().id(), documentId).orElseThrow(() -> new Missing("documents.one"));
    }

    @ForOffice
    @PostMapping(PATH + "/{document}/take-away")
    ModelAndView takeAway(Page page, @PathVariable("id") String id, @PathVariable("document") String documentId)
            throws IOException {
        Document document = document(id, documentId);
        documents.takeAway(document, page.who());
        audit.note("document.taken-away", id, document.name());
        return page.go("/boats/" + id + "/documents", "documents.away", document.name());
    }
}
