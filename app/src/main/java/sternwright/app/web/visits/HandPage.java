package sternwright.app.web.visits;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.UriUtils;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SignedIn;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.proving.AgreedPlans;
import sternwright.app.desk.proving.PlanMark;
import sternwright.app.desk.proving.PlanRun;
import sternwright.app.desk.visits.AgreeVisits;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.boat.Boat;
import sternwright.visit.BoatPlan;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.HandChange;

/** A plan changed by hand: what it costs, which rules it breaks; and accepting it. */
@Controller
public class HandPage {
    private static final int MOST_CHANGES = 100;

    private final OpenYard yard;
    private final AgreedPlans plans;
    private final AuditTrail audit;

    HandPage(OpenYard yard, AgreedPlans plans, AuditTrail audit) {
        this.yard = yard;
        this.plans = plans;
        this.audit = audit;
    }

    /** What an address of this page says. */
    private record Asked(Boat boat, int months, boolean agreed, String looked, List<String> changes) {
        String path() {
            StringBuilder address = new StringBuilder("/visits/")
                    .append(UriUtils.encodePathSegment(boat.id(), StandardCharsets.UTF_8))
                    .append("/change?months=")
                    .append(months)
                    .append(agreed ? "&agreed=true" : "")
                    .append(looked.isEmpty() ? "" : "&plan=" + UriUtils.encode(looked, StandardCharsets.UTF_8));
            changes.forEach(c -> address.append("&c=").append(UriUtils.encode(c, StandardCharsets.UTF_8)));
            return address.toString();
        }

        Asked with(List<String> other) {
            return new Asked(boat, months, agreed, looked, other);
        }

        Asked newest() {
            return new Asked(boat, months, agreed, "", changes);
        }
    }

    @GetMapping("/visits/{boat}/change")
    @ForAll
    ModelAndView show(
            Page page,
            @PathVariable("boat") String boatId,
            @RequestParam(name = "months", defaultValue = "24") String months,
            @RequestParam(name = "agreed", defaultValue = "false") String agreed,
            @RequestParam(name = "plan", defaultValue = "") String looked,
            @RequestParam(name = "c", defaultValue = "") List<String> changes,
            @RequestParam(name = "what", defaultValue = "") String what,
            @RequestParam(name = "to", defaultValue = "") String to) {
        Asked asked = asked(boatId, months, agreed, looked, changes);
        if (!what.isEmpty() && !to.isEmpty() && asked.changes().size() < MOST_CHANGES) {
            List<String> more = new ArrayList<>(asked.changes());
            more.add(what + ":" + to);
            return page.go(asked.with(more).path(), "");
        }
        return shown(page, asked);
    }

    private Asked asked(String boatId, String months, String agreed, String looked, List<String> changes) {
        Boat boat = Optional.ofNullable(yard.files().boats().get(boatId)).orElseThrow(() -> new Missing("visits.one"));
        List<String> kept =
                changes.stream().filter(c -> !c.isBlank()).limit(MOST_CHANGES).toList();
        return new Asked(boat, PlanPage.reach(months), agreed.equals("true"), looked, kept);
    }

    private ModelAndView shown(Page page, Asked asked) {
        PlanRun run = plans.proposed(asked.boat(), asked.months(), page.locale());
        Optional<Base> base = base(asked, run).or(() -> base(asked.newest(), run));
        if (base.isEmpty()) {
            return page.go("/visits/" + asked.boat().id(), "visits.hand.none");
        }
        HandText text = new HandText(
                page,
                asked.boat(),
                run.visits().problem().firstMonth(),
                Integer.toString(asked.months()),
                asked.agreed(),
                PlanMark.of(base.get().plan()));
        Optional<List<HandChange>> changes = HandChanges.read(asked.changes());
        String back = asked.changes().isEmpty()
                ? ""
                : asked.with(asked.changes().subList(0, asked.changes().size() - 1))
                        .path();
        if (changes.isEmpty()) {
            return page.wrong(
                    Section.VISITS,
                    "visits/hand",
                    text.wrong(base.get().plan(), asked.changes(), back, page.say("visits.hand.unread")));
        }
        try {
            HandPlan agreed = base.get().agreed();
            HandPlan hand = agreed != null && changes.get().isEmpty()
                    ? agreed
                    : run.visits().byHand(base.get().plan(), changes.get());
            return page.show(Section.VISITS, "visits/hand", text.view(hand, asked.changes(), back));
        } catch (IllegalArgumentException cannot) {
            return page.wrong(
                    Section.VISITS,
                    "visits/hand",
                    text.wrong(base.get().plan(), asked.changes(), back, String.valueOf(cannot.getMessage())));
        }
    }

    /** What changes begin from, and how it stands beside the proposed plan where it is agreed. */
    private record Base(BoatPlan plan, @Nullable HandPlan agreed) {}

    /** The plan that was looked at: a proof that ends in between must put no other in its place. */
    private Optional<Base> base(Asked asked, PlanRun run) {
        return asked.agreed()
                ? plans.agreed(run, asked.boat().id(), asked.looked()).map(h -> new Base(h.plan(), h))
                : AgreedPlans.proposed(run, asked.looked()).map(p -> new Base(p, null));
    }

    /** Accepts the plan with the changes of the address; a plan that breaks what must not be broken is refused with reasons. */
    @PostMapping("/visits/{boat}/accept")
    @ForOffice
    ModelAndView accept(
            Page page,
            @PathVariable("boat") String boatId,
            @RequestParam(name = "months", defaultValue = "24") String months,
            @RequestParam(name = "agreed", defaultValue = "false") String agreed,
            @RequestParam(name = "plan", defaultValue = "") String looked,
            @RequestParam(name = "c", defaultValue = "") List<String> changes)
            throws IOException {
        Asked asked = asked(boatId, months, agreed, looked, changes);
        PlanRun run = plans.proposed(asked.boat(), asked.months(), page.locale());
        Optional<Base> base = base(asked, run);
        Optional<List<HandChange>> made = HandChanges.read(asked.changes());
        if (base.isEmpty() || made.isEmpty()) {
            return page.conflict(
                    Section.VISITS,
                    "/visits/" + boatId,
                    page.say("visits.hand.plan", asked.boat().name()));
        }
        HandPlan hand;
        try {
            hand = run.visits().byHand(base.get().plan(), made.get());
        } catch (IllegalArgumentException changed) {
            return page.conflict(
                    Section.VISITS,
                    asked.path(),
                    page.say("visits.hand.plan", asked.boat().name()));
        }
        if (!hand.allowed()) {
            return shown(page, asked);
        }
        String who = page.person().map(SignedIn::fullName).orElse("");
        AgreeVisits.write(yard.shelf(who), AgreeVisits.of(hand, List.of(), List.of(), yard.today(), who));
        yard.changed();
        audit.note(
                "visits.agreed", boatId, Integer.toString(hand.plan().visits().size()));
        return page.go("/visits/" + boatId + "/change?months=" + asked.months() + "&agreed=true", "visits.hand.done");
    }
}
