package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.net.URI;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.due.DueLine;
import sternwright.app.desk.find.BoatQuery;
import sternwright.app.desk.find.BoatRow;
import sternwright.app.desk.find.BoatsOfYard;
import sternwright.app.desk.register.NewBoat;
import sternwright.app.desk.register.ShortName;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Writing;
import sternwright.app.files.template.BoatTemplate;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Owner;
import sternwright.boat.Winter;
import sternwright.due.Reasons;
import sternwright.history.BoatHistory;

/** Boats: found, read, and changed as the text of their file. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class BoatsApi {
    private static final String YAML = "application/yaml";
    private static final int LONGEST_NAME = 80;

    /** Words that stand in the place of a boat's id in addresses of the pages. */
    private static final Set<String> ADDRESSES = Set.of("new", "import", "find");

    private final Asked asked;
    private final BoatsOfYard boats;
    private final AuditTrail audit;

    BoatsApi(Asked asked, BoatsOfYard boats, AuditTrail audit) {
        this.asked = asked;
        this.boats = boats;
        this.audit = audit;
    }

    /** Boats by the words of name, id, owner, berth, arrangement and engine. */
    @GetMapping("/api/boats")
    Stretch<BoatRow> find(
            @RequestParam(name = "find", defaultValue = "") String find,
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        return Stretch.of(boats.index().find(BoatQuery.of(find)), page, size, row -> row);
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
        return ResponseEntity.ok().eTag(EntityTag.of(kept.version())).body(kept.text());
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
            writing.put(name(boat), text, EntityTag.version(version));
            writing.commit();
        }
        asked.yard().changed();
        audit.note("boat.changed", id, "");
        Kept kept = asked.shelf().kept(name(boat)).orElseThrow();
        return ResponseEntity.noContent().eTag(EntityTag.of(kept.version())).build();
    }

    /**
     * A boat to be registered by her arrangement; what is missing is taken as usual and said to be assumed in her file.
     *
     * @param name as painted on the stern
     * @param owner whose she is, null if not known
     * @param contact telephone or e-mail of the owner
     * @param berth id of the berth, the yard's first if missing
     * @param use her kind of use, the yard's first if missing
     * @param winter where she spends it, ashore if missing
     * @param arrangement how power gets to the water
     * @param cooling how the engine is cooled, by fresh water if missing
     * @param twin two engines
     * @param engineModel as on the plate
     * @param powerKw rated power of one engine, kW
     * @param lengthM length overall, m
     * @param beamM beam, m
     * @param draughtM draught, m
     * @param massKg mass as lifted, kg
     * @param material of the hull, grp if missing
     */
    public record NewOne(
            @Nullable String name,
            @Nullable String owner,
            @Nullable String contact,
            @Nullable String berth,
            @Nullable String use,
            @Nullable Winter winter,
            @Nullable Arrangement arrangement,
            @Nullable Cooling cooling,
            @Nullable Boolean twin,
            @Nullable String engineModel,
            @Nullable Double powerKw,
            @Nullable Double lengthM,
            @Nullable Double beamM,
            @Nullable Double draughtM,
            @Nullable Double massKg,
            @Nullable HullMaterial material) {
        BoatTemplate.Known known(YardFiles yard, String id) {
            return new BoatTemplate.Known(
                    id,
                    Objects.requireNonNull(name).strip(),
                    owner == null || owner.isBlank() ? null : new Owner(owner, contact),
                    Objects.requireNonNullElseGet(
                            berth,
                            () -> yard.berths().keySet().stream().findFirst().orElse("")),
                    Objects.requireNonNullElseGet(
                            use, () -> yard.yard().uses().get(0).id()),
                    Objects.requireNonNullElse(winter, Winter.ASHORE),
                    lengthM,
                    beamM,
                    draughtM,
                    massKg,
                    Objects.requireNonNullElse(material, HullMaterial.GRP),
                    Objects.requireNonNull(arrangement),
                    Objects.requireNonNullElse(cooling, Cooling.FRESH_WATER),
                    Boolean.TRUE.equals(twin),
                    engineModel,
                    powerKw);
        }
    }

    /** Registers a boat. */
    @PostMapping("/api/boats")
    @RolesAllowed({"MANAGER", "OFFICE"})
    ResponseEntity<Boat> register(@RequestBody NewOne said) throws IOException {
        String stern = Objects.requireNonNullElse(said.name(), "");
        if (stern.isBlank() || stern.length() > LONGEST_NAME || said.arrangement() == null) {
            throw BadInput.of(
                    "body",
                    "name or arrangement is missing or too long",
                    "both, the name of up to " + LONGEST_NAME + " signs",
                    "");
        }
        String[] id = new String[1];
        NewBoat.make(asked.shelf(), asked.yard().today(), yard -> {
            Set<String> taken = new HashSet<>(asked.yard().files().boats().keySet());
            taken.addAll(ADDRESSES);
            id[0] = ShortName.free(stern, taken);
            return said.known(yard, id[0]);
        });
        asked.yard().changed();
        audit.note("boat.registered", id[0], stern.strip());
        return ResponseEntity.created(URI.create("/api/boats/" + id[0])).body(asked.boat(id[0]));
    }

    private static String name(Boat boat) {
        return "boats/" + boat.id() + ".yaml";
    }
}
