package sternwright.app.web.estimate;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SecretWords;
import sternwright.app.account.SignInLimit;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.recording.RefusalsOnRecord;
import sternwright.app.files.problem.BadInput;
import sternwright.app.issued.IssuedEstimate;
import sternwright.app.issued.IssuedEstimates;
import sternwright.app.issued.IssuedPapers;
import sternwright.app.web.access.OpenToAnyone;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.TooSoon;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.EstimateLine;

/** What an owner sees who was sent a link: that one estimate, and nothing else of the yard. */
@Controller
@OpenToAnyone
public class OwnerPage {
    private static final Logger LOG = LoggerFactory.getLogger(OwnerPage.class);
    private static final int LONGEST_NAME = 100;
    private static final String PATH = "/estimate/{secret}";

    private final IssuedEstimates estimates;
    private final SignInLimit limit;
    private final OpenYard yard;
    private final AuditTrail audit;
    private final Clock clock;
    private final IssuedPapers printed;

    OwnerPage(
            IssuedEstimates estimates,
            SignInLimit limit,
            OpenYard yard,
            AuditTrail audit,
            Clock clock,
            IssuedPapers printed) {
        this.printed = printed;
        this.estimates = estimates;
        this.limit = limit;
        this.yard = yard;
        this.audit = audit;
        this.clock = clock;
    }

    @GetMapping(PATH)
    ModelAndView show(Page page, HttpServletRequest request, @PathVariable("secret") String secret) {
        IssuedEstimate issued = issued(request, secret);
        return dead(issued)
                .map(link -> gone(page, issued, link))
                .orElseGet(() -> page.show(
                        Section.NONE, "estimate/owner", view(page, secret, issued, Map.of(), false, List.of())));
    }

    @PostMapping(PATH)
    ModelAndView answer(
            Page page,
            HttpServletRequest request,
            @PathVariable("secret") String secret,
            @RequestParam Map<String, String> typed) {
        IssuedEstimate issued = issued(request, secret);
        Optional<IssuedEstimate.Link> dead = dead(issued);
        if (dead.isPresent()) {
            return gone(page, issued, dead.get());
        }
        if (issued.answeredAt() != null) {
            return again(page, secret, issued);
        }
        Map<String, String> said = new HashMap<>(typed);
        Estimate offered = issued.offered().estimate();
        if (said.containsKey("all")) {
            offered.lines().forEach(l -> said.putIfAbsent("line." + l.number(), "yes"));
        }
        List<EstimateView.Wrong> wrong = wrong(page, offered, said);
        if (!wrong.isEmpty()) {
            return page.wrong(Section.NONE, "estimate/owner", view(page, secret, issued, said, false, wrong));
        }
        Map<Integer, Boolean> accepted = new HashMap<>();
        offered.lines().forEach(l -> accepted.put(l.number(), "yes".equals(said.get("line." + l.number()))));
        String name = said.getOrDefault("name", "").strip();
        if (!estimates.answer(issued.id(), name, accepted)) {
            return again(page, secret, issued(request, secret));
        }
        audit.note("estimate.answered", offered.boat().id(), offered.number());
        record(issued.id(), name);
        return page.go("/estimate/" + secret, "estimate.thanks", name);
    }

    private ModelAndView again(Page page, String secret, IssuedEstimate issued) {
        ModelAndView shown =
                page.show(Section.NONE, "estimate/owner", view(page, secret, issued, Map.of(), true, List.of()));
        shown.setStatus(HttpStatus.CONFLICT);
        return shown;
    }

    /** The owner's answer is kept already; if the yard cannot take it now, the office sees that it is still owed. */
    private void record(String id, String owner) {
        IssuedEstimate answered = estimates.find(id).orElseThrow();
        if (!answered.owesRecord()) {
            return;
        }
        try {
            RefusalsOnRecord.write(yard.shelf(owner), answered.estimate(), owner, yard.today());
            yard.changed();
            estimates.recorded(id);
        } catch (IOException | BadInput e) {
            LOG.warn("refusals of estimate {} are not on record yet: {}", id, e.getMessage());
        }
    }

    @GetMapping(PATH + "/pdf")
    ResponseEntity<byte[]> pdf(Page page, HttpServletRequest request, @PathVariable("secret") String secret) {
        IssuedEstimate issued = issued(request, secret);
        if (dead(issued).isPresent()) {
            throw new ResponseStatusException(HttpStatus.GONE);
        }
        return EstimatesPage.pdf(issued.estimate(), page, printed);
    }

    private IssuedEstimate issued(HttpServletRequest request, String secret) {
        String address = request.getRemoteAddr();
        TooSoon.check(limit.wait(address));
        Optional<IssuedEstimate> issued = estimates.bySecret(SecretWords.hash(secret));
        if (issued.isEmpty()) {
            limit.failed(address);
            throw new Missing("estimate.one");
        }
        return issued.get();
    }

    /** Why a link shows nothing any more; empty as long as it does. */
    private Optional<IssuedEstimate.Link> dead(IssuedEstimate issued) {
        Instant now = clock.instant();
        IssuedEstimate.Link link = issued.link(now);
        boolean over = !now.isBefore(issued.expiresAt());
        return link == IssuedEstimate.Link.WITHDRAWN
                ? Optional.of(link)
                : over ? Optional.of(IssuedEstimate.Link.EXPIRED) : Optional.empty();
    }

    private ModelAndView gone(Page page, IssuedEstimate issued, IssuedEstimate.Link link) {
        boolean expired = link == IssuedEstimate.Link.EXPIRED;
        String day = expired ? new EstimateText(page, clock.getZone()).lastDay(issued) : "";
        ModelAndView shown = page.show(
                Section.NONE,
                "estimate/dead",
                new EstimateView.Dead(expired ? "estimate.dead.expired" : "estimate.dead.withdrawn", day));
        shown.setStatus(HttpStatus.GONE);
        return shown;
    }

    private EstimateView.Owner view(
            Page page,
            String secret,
            IssuedEstimate issued,
            Map<String, String> typed,
            boolean again,
            List<EstimateView.Wrong> wrong) {
        EstimateText text = new EstimateText(page, clock.getZone());
        String by = issued.answeredBy();
        Instant at = issued.answeredAt();
        return new EstimateView.Owner(
                secret,
                text.paper(issued, typed),
                by == null || at == null ? "" : text.answered(by, at),
                again,
                typed.getOrDefault("name", ""),
                wrong);
    }

    private static List<EstimateView.Wrong> wrong(Page page, Estimate offered, Map<String, String> said) {
        List<EstimateView.Wrong> wrong = new ArrayList<>();
        for (EstimateLine l : offered.lines()) {
            String answer = said.getOrDefault("line." + l.number(), "");
            String work = l.planned().inForce().rule().work();
            if (!answer.equals("yes") && !answer.equals("no")) {
                wrong.add(new EstimateView.Wrong(
                        "line-" + l.number(), page.say("estimate.wrong.line", l.number(), work)));
            } else if (answer.equals("no") && l.safety() && !"true".equals(said.get("told." + l.number()))) {
                wrong.add(new EstimateView.Wrong(
                        "told-" + l.number(), page.say("estimate.wrong.told", l.number(), work)));
            }
        }
        String name = said.getOrDefault("name", "").strip();
        if (name.isEmpty() || name.length() > LONGEST_NAME || name.matches(".*\\p{Cntrl}.*")) {
            wrong.add(new EstimateView.Wrong("name", page.say("estimate.wrong.name", LONGEST_NAME)));
        }
        return wrong;
    }
}
