package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.documents.BoatDocuments;
import sternwright.app.desk.documents.Document;
import sternwright.app.issued.IssuedCards;

/** Photos and documents of a boat, known by their content. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class DocumentsApi {
    private final Asked asked;
    private final BoatDocuments documents;
    private final IssuedCards cards;
    private final AuditTrail audit;

    DocumentsApi(Asked asked, BoatDocuments documents, IssuedCards cards, AuditTrail audit) {
        this.cards = cards;
        this.asked = asked;
        this.documents = documents;
        this.audit = audit;
    }

    /** What is kept of a boat, the newest first. */
    @GetMapping("/api/boats/{id}/documents")
    Stretch<Document> list(
            @PathVariable("id") String id,
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        return Stretch.of(documents.list(asked.boat(id).id()), page, size, d -> d);
    }

    /** Puts one in, on a job card of hers if one is named: the bytes as they are, up to 20 MB; which kind they are is seen from them. */
    @PostMapping(value = "/api/boats/{id}/documents", consumes = MediaType.APPLICATION_OCTET_STREAM_VALUE)
    @RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN"})
    ResponseEntity<Document> put(
            @PathVariable("id") String id,
            @RequestParam("name") String name,
            @RequestParam(name = "card", defaultValue = "") String card,
            @RequestBody byte[] content)
            throws IOException {
        String boat = asked.boat(id).id();
        if (!card.isEmpty()
                && cards.find(card).filter(c -> c.boatId().equals(boat)).isEmpty()) {
            throw new NotThere("job card of this boat", card, List.of());
        }
        Document kept = documents.put(boat, card, name, content, Asked.person().fullName());
        audit.note("document.added", id, kept.name());
        return ResponseEntity.created(URI.create("/api/boats/" + id + "/documents/" + kept.id()))
                .body(kept);
    }

    /** The content of one. */
    @GetMapping("/api/boats/{id}/documents/{document}")
    ResponseEntity<byte[]> content(@PathVariable("id") String id, @PathVariable("document") String documentId) {
        Document document = document(id, documentId);
        byte[] content = documents.content(document).orElseThrow(() -> new NotThere("document", documentId, List.of()));
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(document.kind().contentType()))
                .cacheControl(CacheControl.noStore())
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(document.name(), StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(content);
    }

    /** Takes one away from the list; the store still keeps it. */
    @DeleteMapping("/api/boats/{id}/documents/{document}")
    @RolesAllowed({"MANAGER", "OFFICE"})
    ResponseEntity<Void> takeAway(@PathVariable("id") String id, @PathVariable("document") String documentId)
            throws IOException {
        Document document = document(id, documentId);
        documents.takeAway(document, Asked.person().fullName());
        audit.note("document.taken-away", id, document.name());
        return ResponseEntity.noContent().build();
    }

    private Document document(String id, String documentId) {
        return documents
                .one(asked.boat(id).id(), documentId)
                .orElseThrow(() -> new NotThere("document", documentId, List.of()));
    }
}
