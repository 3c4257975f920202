package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.due.DueLine;
import sternwright.app.desk.find.BoatIndex;
import sternwright.app.desk.find.BoatQuery;
import sternwright.app.desk.find.BoatRow;
import sternwright.app.files.YardFolder;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Writing;
import sternwright.boat.Boat;
import sternwright.due.Reasons;
import sternwright.history.BoatHistory;

/** Boats: found, read, and changed as the text of their file. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class BoatsApi {
    private static final String YAML = "application/yaml";

    private final Asked asked;
    private final AuditTrail audit;

    BoatsApi(Asked asked, AuditTrail audit) {
        this.asked = asked;
        this.audit = audit;
    }

    /** Boats by the words of name, id, owner, berth, arrangement and engine. */
    @GetMapping("/api/boats")
    Stretch<BoatRow> find(
            @RequestParam(name = "find", defaultValue = "") String find,
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        BoatIndex index = BoatIndex.of(asked.yard().files(), asked.yard().dues());
        return Stretch.of(index.find(BoatQuery.of(find)), page, size, row -> row);
    }

    /** One boat as she is registered. */
    @GetMapping("/api/boats/{id}")
    Boat one(@PathVariable("id") String id) {
        return asked.boat(id);
    }

    /** What is written down of her. */
    @GetMapping("/api/boats/{id}/history")
    BoatHistory history(@PathVariable("id") String id) {
        return asked.yard().files().history(asked.boat(id).id());
    }

    /** What is due on her today. */
    @GetMapping("/api/boats/{id}/due")
    List<DueLine> due(@PathVariable("id") String id, Locale reader) {
        Reasons reasons = new Reasons(reader);
        return asked.yard().dues(asked.boat(id).id()).stream()
                .map(d -> DueLine.of(d, reasons))
                .toList();
    }

    /** Her file, with its version as an entity tag. */
    @GetMapping(value = "/api/boats/{id}/file", produces = YAML)
    ResponseEntity<String> file(@PathVariable("id") String id) throws IOException {
        Kept kept = asked.shelf().kept(name(asked.boat(id))).orElseThrow();
        return ResponseEntity.ok().eTag(tag(kept.version())).body(kept.text());
    }

    /** Her file anew, proved before it is written; only if nobody changed it since the version in If-Match. */
    @PutMapping(value = "/api/boats/{id}/file", consumes = YAML)
    @RolesAllowed({"MANAGER", "OFFICE"})
    ResponseEntity<?> change(
            @PathVariable("id") String id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String version,
            @RequestBody String text)
            throws IOException {
        Boat boat = asked.boat(id);
        if (version == null) {
            return ResponseEntity.of(
                            ProblemDetail.forStatusAndDetail(
                                    HttpStatus.PRECONDITION_REQUIRED,
                                    "Send the entity tag of the version you read as If-Match, so that nobody's change is lost."))
                    .build();
        }
        YardFolder.proveBoat(asked.yard().files(), id, text, asked.yard().today());
        try (Writing writing = asked.shelf().write("changed by another program")) {
            writing.put(name(boat), text, bare(version));
            writing.commit();
        }
        asked.yard().changed();
        audit.note("boat.changed", id, "");
        Kept kept = asked.shelf().kept(name(boat)).orElseThrow();
        return ResponseEntity.noContent().eTag(tag(kept.version())).build();
    }

    private static String name(Boat boat) {
        return "boats/" + boat.id() + ".yaml";
    }

    private static String tag(String version) {
        return '"' + version + '"';
    }

    private static String bare(String tag) {
        String plain = tag.startsWith("W/") ? tag.substring(2) : tag;
        return plain.replace("\"", "");
    }
}
