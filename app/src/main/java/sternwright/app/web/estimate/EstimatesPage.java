package sternwright.app.web.estimate;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SecretWords;
import sternwright.app.account.SignedIn;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.proving.AgreedPlans;
import sternwright.app.desk.proving.ChosenVisit;
import sternwright.app.desk.recording.RefusalsOnRecord;
import sternwright.app.desk.visits.VisitPapers;
import sternwright.app.files.YardFiles;
import sternwright.app.issued.IssuedEstimate;
import sternwright.app.issued.IssuedEstimates;
import sternwright.app.issued.IssuedPapers;
import sternwright.app.issued.OfferedEstimate;
import sternwright.app.paper.Paper;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;
import sternwright.boat.Boat;
import sternwright.finding.Caution;
import sternwright.job.estimate.Estimate;
import sternwright.visit.planned.PlannedVisit;

/** The yard's side of estimates. */
@Controller
@ForOffice
public class EstimatesPage {
    private static final String PATH = "/estimates";
    private static final int LINES = 50;
    private static final int VALID_DAYS = 30;

    private final OpenYard yard;
    private final AgreedPlans plans;
    private final IssuedEstimates estimates;
    private final AuditTrail audit;
    private final Clock clock;
    private final IssuedPapers printed;

    EstimatesPage(
            OpenYard yard,
            AgreedPlans plans,
            IssuedEstimates estimates,
            AuditTrail audit,
            Clock clock,
            IssuedPapers printed) {
        this.printed = printed;
        this.yard = yard;
        this.plans = plans;
        this.estimates = estimates;
        this.audit = audit;
        this.clock = clock;
    }

    @GetMapping(PATH)
    ModelAndView list(Page page, @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        Pager pager = new Pager(number, LINES, estimates.count());
        EstimateText text = new EstimateText(page, clock.getZone());
        List<EstimateView.Entry> entries = estimates.lines(null, pager.before(), LINES).stream()
                .map(e -> entry(page, text, e))
                .toList();
        return page.show(Section.VISITS, "estimate/list", new EstimateView.Entries(entries, pager));
    }

    private EstimateView.Entry entry(Page page, EstimateText text, IssuedEstimate issued) {
        Estimate e = issued.estimate();
        return new EstimateView.Entry(
                issued.id(),
                e.boat().name(),
                e.boat().owner().name(),
                page.figures().dates(e.from(), e.to()),
                page.figures().money(e.gross()),
                page.figures().shortDate(text.day(issued.madeAt())),
                text.state(issued, clock.instant()));
    }

    @PostMapping(PATH)
    ModelAndView make(Page page, @RequestParam Map<String, String> typed) {
        ChosenVisit chosen = ChosenVisit.read(typed);
        YardFiles files = yard.files();
        Boat boat =
                Optional.ofNullable(files.boats().get(chosen.boatId())).orElseThrow(() -> new Missing("visits.one"));
        Optional<PlannedVisit> visit = plans.visit(chosen, boat, page.locale());
        if (visit.isEmpty()) {
            return page.conflict(Section.VISITS, "/visits/" + boat.id(), page.say("estimate.plan", boat.name()));
        }
        Estimate estimate =
                VisitPapers.of(files, boat, yard.today(), page.locale()).estimate(visit.get(), VALID_DAYS, List.of());
        String id = estimates.keep(new OfferedEstimate(estimate, cautions(files)), who(page));
        audit.note("estimate.made", boat.id(), estimate.number());
        return page.go(PATH + "/" + id, "estimate.made", boat.name());
    }

    private static List<Caution> cautions(YardFiles files) {
        List<Caution> all = new ArrayList<>(files.generic().cautions());
        files.programmes().forEach(p -> all.addAll(p.cautions()));
        return all;
    }

    @GetMapping(PATH + "/{id}")
    ModelAndView one(Page page, @PathVariable("id") String id) {
        return page.show(Section.VISITS, "estimate/office", office(page, one(id)));
    }

    private EstimateView.Office office(Page page, IssuedEstimate issued) {
        EstimateText text = new EstimateText(page, clock.getZone());
        Instant now = clock.instant();
        IssuedEstimate.Link link = issued.link(now);
        String made =
                page.say("estimate.made.by", issued.madeBy(), page.figures().date(text.day(issued.madeAt())));
        return new EstimateView.Office(
                issued.id(),
                issued.offered().estimate().boat().id(),
                text.paper(issued, Map.of()),
                made,
                text.state(issued, now),
                text.stands(issued, now),
                issued.answeredAt() == null && !lastMoment(issued).isBefore(now),
                link == IssuedEstimate.Link.OPEN || link == IssuedEstimate.Link.ANSWERED,
                issued.owesRecord(),
                issued.offered().estimate().warnings());
    }

    /** A link works as long as the prices hold, the last day included. */
    private Instant lastMoment(IssuedEstimate issued) {
        return issued.offered()
                .estimate()
                .validUntil()
                .plusDays(1)
                .atStartOfDay(clock.getZone())
                .toInstant();
    }

    /** The link is shown once, on the answer itself; it is in no address of the yard's own and in no log. */
    @PostMapping(PATH + "/{id}/link")
    ModelAndView link(Page page, @PathVariable("id") String id) {
        IssuedEstimate issued = one(id);
        String secret = SecretWords.make();
        Instant until = lastMoment(issued);
        if (until.isBefore(clock.instant()) || !estimates.link(id, SecretWords.hash(secret), until)) {
            return page.conflict(Section.VISITS, PATH + "/" + id, page.say("estimate.this"));
        }
        Estimate e = issued.offered().estimate();
        audit.note("estimate.linked", e.boat().id(), e.number());
        String link = ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/estimate/" + secret)
                .toUriString();
        return page.show(
                Section.VISITS,
                "estimate/link",
                new EstimateView.Link(
                        id,
                        e.boat().name(),
                        e.boat().owner().name(),
                        link,
                        page.figures().date(e.validUntil())));
    }

    @PostMapping(PATH + "/{id}/withdraw")
    ModelAndView withdraw(Page page, @PathVariable("id") String id) {
        Estimate e = one(id).offered().estimate();
        if (!estimates.withdraw(id)) {
            return page.go(PATH + "/" + id, "estimate.withdraw.none");
        }
        audit.note("estimate.withdrawn", e.boat().id(), e.number());
        return page.go(PATH + "/" + id, "estimate.withdrawn");
    }

    /** For refusals that could not be written when the owner answered. */
    @PostMapping(PATH + "/{id}/record")
    ModelAndView record(Page page, @PathVariable("id") String id) throws IOException {
        IssuedEstimate issued = one(id);
        String owner = issued.answeredBy();
        Instant at = issued.answeredAt();
        if (!issued.owesRecord() || owner == null || at == null) {
            return page.go(PATH + "/" + id, "estimate.record.none");
        }
        LocalDate day = LocalDate.ofInstant(at, clock.getZone());
        RefusalsOnRecord.write(yard.shelf(who(page)), issued.estimate(), owner, day);
        yard.changed();
        estimates.recorded(id);
        audit.note(
                "estimate.recorded",
                issued.offered().estimate().boat().id(),
                issued.offered().estimate().number());
        return page.go(PATH + "/" + id, "estimate.recorded");
    }

    @GetMapping(PATH + "/{id}/pdf")
    ResponseEntity<byte[]> pdf(Page page, @PathVariable("id") String id) {
        return pdf(one(id).estimate(), page, printed);
    }

    static ResponseEntity<byte[]> pdf(Estimate estimate, Page page, IssuedPapers printed) {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .cacheControl(CacheControl.noStore())
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + Paper.name(estimate) + ".pdf\"")
                .body(printed.pdf(estimate, page.figures()));
    }

    private IssuedEstimate one(String id) {
        return estimates.find(id).orElseThrow(() -> new Missing("estimate.one"));
    }

    private static String who(Page page) {
        return page.person().map(SignedIn::fullName).orElse("");
    }
}
