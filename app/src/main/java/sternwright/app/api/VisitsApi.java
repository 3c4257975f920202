package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.proving.AgreedPlans;
import sternwright.app.desk.proving.PlanRun;
import sternwright.app.desk.visits.AgreeVisits;
import sternwright.app.desk.visits.PlanView;
import sternwright.app.files.problem.BadInput;
import sternwright.boat.Boat;
import sternwright.visit.BoatPlan;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.AgreedWork;

/** Plans of visits changed by hand, and agreed. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class VisitsApi {
    private static final int MOST_MONTHS = 60;
    private static final int MOST_CHANGES = 100;

    private final Asked asked;
    private final AgreedPlans plans;
    private final AuditTrail audit;

    VisitsApi(Asked asked, AgreedPlans plans, AuditTrail audit) {
        this.asked = asked;
        this.plans = plans;
        this.audit = audit;
    }

    /**
     * A plan changed by hand.
     *
     * @param months how far to plan, 24 if missing
     * @param agreed true to start from what is agreed, else from what is proposed
     * @param changes one after the other
     */
    public record Changes(
            @Nullable Integer months,
            @Nullable Boolean agreed,
            @Nullable List<PlanChange> changes) {}

    /**
     * What a change costs.
     *
     * @param what kind of cost
     * @param proposed in the proposed plan
     * @param byHand in the changed plan
     */
    public record Cost(String what, BigDecimal proposed, BigDecimal byHand) {}

    /**
     * The changed plan beside the proposed one.
     *
     * @param plan the changed plan
     * @param costs both plans by kind of cost
     * @param broken rules it breaks that the proposed plan keeps
     * @param said what was done besides what was asked
     * @param allowed whether it can be agreed
     */
    public record Changed(
            PlanView plan, List<Cost> costs, List<HandPlan.Broken> broken, List<String> said, boolean allowed) {
        static Changed of(HandPlan hand) {
            return new Changed(
                    PlanView.of(hand.plan()),
                    hand.costs().stream()
                            .map(c -> new Cost(
                                    c.what(), c.proposed().amount(), c.byHand().amount()))
                            .toList(),
                    hand.broken(),
                    hand.said(),
                    hand.allowed());
        }
    }

    /** Works agreed for a boat, from today on. */
    @GetMapping("/api/boats/{id}/visits/agreed")
    Stretch<AgreedWork> agreed(
            @PathVariable("id") String id,
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        return Stretch.of(plans.of(asked.boat(id).id()), page, size, a -> a);
    }

    /**
     * Shows what changes cost and which rules they break; nothing is written. With If-Match they are made to the plan that was read,
     * also if its proof has found a better one since.
     */
    @PostMapping("/api/boats/{id}/visits/change")
    Changed change(
            @PathVariable("id") String id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String read,
            @RequestBody Changes said,
            Locale reader) {
        return Changed.of(hand(asked.boat(id), read, said, reader));
    }

    /**
     * Agrees a plan, changed or not; one that breaks what must not be broken is refused with reasons. With If-Match it is the plan that
     * was read, or none.
     */
    @PostMapping("/api/boats/{id}/visits/agree")
    @RolesAllowed({"MANAGER", "OFFICE"})
    Changed agree(
            @PathVariable("id") String id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String read,
            @RequestBody Changes said,
            Locale reader)
            throws IOException {
        HandPlan hand = hand(asked.boat(id), read, said, reader);
        String who = Asked.person().fullName();
        AgreeVisits.write(
                asked.shelf(),
                AgreeVisits.of(hand, List.of(), List.of(), asked.yard().today(), who));
        asked.yard().changed();
        audit.note("visits.agreed", id, Integer.toString(hand.plan().visits().size()));
        return Changed.of(hand);
    }

    private HandPlan hand(Boat boat, @Nullable String read, Changes said, Locale reader) {
        int months = Objects.requireNonNullElse(said.months(), 24);
        List<PlanChange> changes = Objects.requireNonNullElse(said.changes(), List.of());
        if (months < 1 || months > MOST_MONTHS) {
            throw BadInput.of("months", "found " + months, "1 to " + MOST_MONTHS, "");
        }
        if (changes.size() > MOST_CHANGES || changes.stream().anyMatch(Objects::isNull)) {
            throw BadInput.of(
                    "changes", "found " + changes.size(), "up to " + MOST_CHANGES + ", none of them null", "");
        }
        PlanRun run = plans.proposed(boat, months, reader);
        BoatPlan base =
                base(run, boat, Boolean.TRUE.equals(said.agreed()), read == null ? "" : EntityTag.version(read));
        try {
            return run.visits()
                    .byHand(base, changes.stream().map(PlanChange::change).toList());
        } catch (IllegalArgumentException cannot) {
            throw BadInput.of("changes", String.valueOf(cannot.getMessage()), "", "Read the plan again.");
        }
    }

    private BoatPlan base(PlanRun run, Boat boat, boolean agreed, String read) {
        if (agreed && plans.of(boat.id()).isEmpty()) {
            throw BadInput.of("agreed", "nothing is agreed for " + boat.name(), "", "");
        }
        if (!(run.answer() instanceof BoatPlan)) {
            throw BadInput.of(
                    "visits",
                    "there is no plan for " + boat.name(),
                    "",
                    "GET /api/boats/" + boat.id() + "/visits says why.");
        }
        return (agreed ? plans.agreed(run, boat.id(), read).map(HandPlan::plan) : AgreedPlans.proposed(run, read))
                .orElseThrow(() -> new OtherVersion("the plan of " + boat.name()));
    }
}
