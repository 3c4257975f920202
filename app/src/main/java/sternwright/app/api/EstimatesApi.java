package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SecretWords;
import sternwright.app.desk.proving.AgreedPlans;
import sternwright.app.desk.recording.RefusalsOnRecord;
import sternwright.app.desk.visits.VisitPapers;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.issued.IssuedEstimate;
import sternwright.app.issued.IssuedEstimates;
import sternwright.app.issued.IssuedPapers;
import sternwright.app.issued.OfferedEstimate;
import sternwright.app.paper.Figures;
import sternwright.boat.Boat;
import sternwright.finding.Caution;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.EstimateLine;
import sternwright.visit.planned.PlannedVisit;

/** Estimates: made from a visit, sent by a link, answered by the owner. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE"})
public class EstimatesApi {
    private static final int VALID_DAYS = 30;

    private final Asked asked;
    private final AgreedPlans plans;
    private final IssuedEstimates estimates;
    private final AuditTrail audit;
    private final Clock clock;
    private final IssuedPapers printed;

    EstimatesApi(
            Asked asked,
            AgreedPlans plans,
            IssuedEstimates estimates,
            AuditTrail audit,
            Clock clock,
            IssuedPapers printed) {
        this.printed = printed;
        this.asked = asked;
        this.plans = plans;
        this.estimates = estimates;
        this.audit = audit;
        this.clock = clock;
    }

    /**
     * An estimate as a list shows it.
     *
     * @param id its id
     * @param number as on paper
     * @param boat id of the boat
     * @param from first day of the visit
     * @param to its last day
     * @param currency ISO 4217
     * @param gross what the owner pays, with tax
     * @param link how the owner's link stands
     * @param validUntil last day of the prices
     * @param answeredBy the name the owner wrote, null if not answered
     * @param answeredAt when, null if not answered
     * @param owesRecord whether refusals of safety items still have to go on record
     */
    public record Line(
            String id,
            String number,
            String boat,
            LocalDate from,
            LocalDate to,
            String currency,
            BigDecimal gross,
            IssuedEstimate.Link link,
            LocalDate validUntil,
            @Nullable String answeredBy,
            @Nullable Instant answeredAt,
            boolean owesRecord) {}

    /**
     * One work of an estimate.
     *
     * @param line number of the line
     * @param rule id of the rule
     * @param part installation/part
     * @param work what is done
     * @param safety whether refusing it goes on record
     * @param accepted the owner's answer, null if not answered
     */
    public record Work(
            int line,
            String rule,
            String part,
            String work,
            boolean safety,
            @Nullable Boolean accepted) {}

    /**
     * An estimate with its works.
     *
     * @param estimate as in the list
     * @param works each with the owner's answer
     */
    public record Whole(Line estimate, List<Work> works) {}

    /**
     * A link for the owner, shown this once.
     *
     * @param address what the owner opens
     * @param until last day on which it works
     */
    public record Link(String address, LocalDate until) {
        /** Never with the address, which opens the estimate. */
        @Override
        public String toString() {
            return "link until " + until;
        }
    }

    /** The estimates, the newest first. */
    @GetMapping("/api/estimates")
    Stretch<Line> list(
            @RequestParam(name = "boat", required = false) @Nullable String boat,
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        Stretch.check(page, size);
        String of = boat == null ? null : asked.boat(boat).id();
        List<Line> lines = estimates.lines(of, Stretch.before(page, size), size).stream()
                .map(this::line)
                .toList();
        return new Stretch<>(lines, page, size, (int)
                (of == null
                        ? estimates.count()
                        : estimates.lines(of, 0, Integer.MAX_VALUE).size()));
    }

    private Line line(IssuedEstimate issued) {
        Estimate e = issued.estimate();
        return new Line(
                issued.id(),
                e.number(),
                e.boat().id(),
                e.from(),
                e.to(),
                e.gross().currency().getCurrencyCode(),
                e.gross().amount(),
                issued.link(clock.instant()),
                e.validUntil(),
                issued.answeredBy(),
                issued.answeredAt(),
                issued.owesRecord());
    }

    /** One estimate with its works and the owner's answers. */
    @GetMapping("/api/estimates/{estimate}")
    Whole one(@PathVariable("estimate") String id) {
        IssuedEstimate issued = issued(id);
        return new Whole(
                line(issued),
                issued.offered().estimate().lines().stream()
                        .map(l -> work(l, issued))
                        .toList());
    }

    private static Work work(EstimateLine line, IssuedEstimate issued) {
        return new Work(
                line.number(),
                line.planned().inForce().rule().id(),
                line.planned().part().toString(),
                line.planned().inForce().rule().work(),
                line.safety(),
                issued.answeredAt() == null ? null : issued.accepted().get(line.number()));
    }

    /** Makes an estimate of a visit. */
    @PostMapping("/api/estimates")
    ResponseEntity<Whole> make(@RequestBody VisitNamed said, Locale reader) {
        YardFiles files = asked.yard().files();
        Boat boat = asked.boat(said.chosen().boatId());
        PlannedVisit visit = visit(plans, said, boat, reader);
        Estimate estimate =
                VisitPapers.of(files, boat, asked.yard().today(), reader).estimate(visit, VALID_DAYS, List.of());
        List<Caution> cautions = new ArrayList<>(files.generic().cautions());
        files.programmes().forEach(p -> cautions.addAll(p.cautions()));
        String id = estimates.keep(
                new OfferedEstimate(estimate, cautions), Asked.person().fullName());
        audit.note("estimate.made", boat.id(), estimate.number());
        return ResponseEntity.created(URI.create("/api/estimates/" + id)).body(one(id));
    }

    static PlannedVisit visit(AgreedPlans plans, VisitNamed said, Boat boat, Locale reader) {
        return plans.visit(said.chosen(), boat, reader)
                .orElseThrow(() -> BadInput.of(
                        "visit",
                        "the plan of " + boat.name() + " has no such visit",
                        "a visit as GET /api/boats/" + boat.id() + "/visits shows it",
                        ""));
    }

    /** Makes a link for the owner; one made before stops working. */
    @PostMapping("/api/estimates/{estimate}/link")
    ResponseEntity<Link> link(@PathVariable("estimate") String id) {
        Estimate e = issued(id).offered().estimate();
        String secret = SecretWords.make();
        Instant until = e.validUntil().plusDays(1).atStartOfDay(clock.getZone()).toInstant();
        if (until.isBefore(clock.instant()) || !estimates.link(id, SecretWords.hash(secret), until)) {
            throw new ResponseStatusException(
                    HttpStatus.CONFLICT, "It is answered, or its prices hold no longer: make a new estimate.");
        }
        audit.note("estimate.linked", e.boat().id(), e.number());
        String address = ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/estimate/" + secret)
                .toUriString();
        return ResponseEntity.status(HttpStatus.CREATED).body(new Link(address, e.validUntil()));
    }

    /** Withdraws the owner's link. */
    @DeleteMapping("/api/estimates/{estimate}/link")
    ResponseEntity<Void> withdraw(@PathVariable("estimate") String id) {
        Estimate e = issued(id).offered().estimate();
        if (!estimates.withdraw(id)) {
            throw new ResponseStatusException(HttpStatus.CONFLICT, "There is no open link to withdraw.");
        }
        audit.note("estimate.withdrawn", e.boat().id(), e.number());
        return ResponseEntity.noContent().build();
    }

    /** Puts refusals on record that could not be written when the owner answered. */
    @PostMapping("/api/estimates/{estimate}/record")
    ResponseEntity<Void> record(@PathVariable("estimate") String id) throws IOException {
        IssuedEstimate issued = issued(id);
        String owner = issued.answeredBy();
        Instant at = issued.answeredAt();
        if (issued.owesRecord() && owner != null && at != null) {
            RefusalsOnRecord.write(asked.shelf(), issued.estimate(), owner, LocalDate.ofInstant(at, clock.getZone()));
            asked.yard().changed();
            estimates.recorded(id);
            Estimate e = issued.offered().estimate();
            audit.note("estimate.recorded", e.boat().id(), e.number());
        }
        return ResponseEntity.noContent().build();
    }

    /** The estimate on paper. */
    @GetMapping(value = "/api/estimates/{estimate}/pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    byte[] pdf(@PathVariable("estimate") String id, Locale reader) {
        return printed.pdf(
                issued(id).estimate(),
                Figures.of(reader).in(asked.yard().files().yard().units()));
    }

    private IssuedEstimate issued(String id) {
        return estimates.find(id).orElseThrow(() -> new NotThere("estimate", id, List.of()));
    }
}
