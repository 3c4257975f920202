package sternwright.app.web.visits;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.proving.AgreedPlans;
import sternwright.app.desk.proving.LeftQuestion;
import sternwright.app.desk.proving.PlanMark;
import sternwright.app.desk.proving.PlanRun;
import sternwright.app.desk.proving.ProvedPlans;
import sternwright.app.files.YardFiles;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.boat.OneBoat;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;

/** The plan of one boat: shown at once, proved while it is read. */
@Controller
@ForAll
public class PlanPage {
    /** How far a plan may reach, months. */
    private static final List<Integer> REACHES = List.of(12, 24, 36);

    private static final int REACH = 24;

    private final OpenYard yard;
    private final ProvedPlans plans;
    private final AgreedPlans agreed;

    PlanPage(OpenYard yard, ProvedPlans plans, AgreedPlans agreed) {
        this.yard = yard;
        this.plans = plans;
        this.agreed = agreed;
    }

    /** What leaving a work is asked with: installation/part:rule and a day, as they stand in the address. */
    private record LeftAsked(String work, String until) {
        Optional<LeftQuestion> question() {
            int slash = work.indexOf('/');
            int colon = work.indexOf(':');
            LocalDate day = day(until);
            return slash < 1 || colon < slash || day == null
                    ? Optional.empty()
                    : Optional.of(new LeftQuestion(
                            new PartRef(work.substring(0, slash), work.substring(slash + 1, colon)),
                            work.substring(colon + 1),
                            day));
        }

        private static @Nullable LocalDate day(String text) {
            try {
                return text.isBlank() ? null : LocalDate.parse(text.strip());
            } catch (DateTimeParseException e) {
                return null;
            }
        }
    }

    @GetMapping("/visits/{boat}")
    ModelAndView show(
            Page page,
            @PathVariable("boat") String boatId,
            @RequestParam(name = "months", defaultValue = "24") String months,
            @RequestParam(name = "left", defaultValue = "") String left,
            @RequestParam(name = "until", defaultValue = "") String until) {
        return page.show(Section.VISITS, "visits/plan", view(page, boatId, reach(months), new LeftAsked(left, until)));
    }

    /** The part of the page that changes while the proof runs; the page asks for it by itself. */
    @GetMapping("/visits/{boat}/progress")
    ModelAndView progress(
            Page page,
            @PathVariable("boat") String boatId,
            @RequestParam(name = "months", defaultValue = "24") String months,
            @RequestParam(name = "left", defaultValue = "") String left,
            @RequestParam(name = "until", defaultValue = "") String until) {
        return page.show(Section.VISITS, "visits/body", view(page, boatId, reach(months), new LeftAsked(left, until)));
    }

    static int reach(String months) {
        return REACHES.stream()
                .filter(m -> months.equals(Integer.toString(m)))
                .findFirst()
                .orElse(REACH);
    }

    private PlanView view(Page page, String boatId, int months, LeftAsked asked) {
        YardFiles files = yard.files();
        Boat boat = Optional.ofNullable(files.boats().get(boatId)).orElseThrow(() -> new Missing("visits.one"));
        PlanRun run = agreed.proposed(boat, months, page.locale());
        Optional<PlanRun.Left> left = asked.question().map(q -> plans.left(run, q));
        String lead = new OneBoat(files, boat).head(page, "visits").lead();
        BoatAnswer answer = run.answer();
        return answer instanceof BoatPlan plan
                ? view(page, boat, lead, months, run, plan, left(page, plan, asked, left))
                : without(page, boat, lead, months, run, (BoatAnswer.NoPlan) answer);
    }

    private PlanView view(
            Page page, Boat boat, String lead, int months, PlanRun run, BoatPlan plan, PlanView.Left left) {
        PlanText text = new PlanText(page);
        return new PlanView(
                boat.id(),
                boat.name(),
                lead,
                text.agreed(agreed.of(boat.id())),
                PlanMark.of(plan),
                reachField(page, months),
                run.running(),
                text.proof(run, plan),
                List.of(),
                text.visits(plan),
                page.figures().money(plan.net()),
                text.split(plan),
                page.figures().money(plan.planningCost()),
                text.alternatives(plan, run),
                left,
                text.notes(plan));
    }

    private static PlanView without(
            Page page, Boat boat, String lead, int months, PlanRun run, BoatAnswer.NoPlan none) {
        return new PlanView(
                boat.id(),
                boat.name(),
                lead,
                "",
                "",
                reachField(page, months),
                run.running(),
                page.say(
                        !none.minimal()
                                ? "visits.clash.among"
                                : none.clash().size() == 1 ? "visits.clash.one" : "visits.clash.minimal"),
                new PlanText(page).clash(none),
                List.of(),
                "",
                List.of(),
                "",
                List.of(),
                new PlanView.Left(workField(page, "", List.of()), untilField(page, ""), ""),
                List.of());
    }

    private static Field reachField(Page page, int months) {
        return Field.plain("months", page.say("visits.months"), Integer.toString(months))
                .of(REACHES.stream()
                        .map(m -> new Field.Choice(Integer.toString(m), page.say("visits.months.of", m)))
                        .toList());
    }

    private static PlanView.Left left(Page page, BoatPlan plan, LeftAsked asked, Optional<PlanRun.Left> left) {
        List<Field.Choice> works = plan.visits().stream()
                .flatMap(v -> v.works().stream())
                .map(w -> new Field.Choice(
                        w.part() + ":" + w.inForce().rule().id(),
                        page.say("visits.left.one", w.inForce().rule().work(), w.partName())))
                .distinct()
                .toList();
        boolean typed = !asked.work().isEmpty() || !asked.until().isEmpty();
        String answer = !typed
                ? ""
                : left.map(l -> !l.known()
                                ? page.say("visits.left.running")
                                : l.answer()
                                        .map(a -> new PlanText(page).left(a))
                                        .orElse(page.say("visits.left.none")))
                        .orElse(page.say("visits.left.ask"));
        return new PlanView.Left(workField(page, asked.work(), works), untilField(page, asked.until()), answer);
    }

    private static Field workField(Page page, String work, List<Field.Choice> works) {
        return Field.plain("left", page.say("visits.left.work"), work).of(works);
    }

    private static Field untilField(Page page, String until) {
        return Field.plain("until", page.say("visits.left.until"), until).as("date");
    }
}
