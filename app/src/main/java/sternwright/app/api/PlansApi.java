package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.desk.protect.KeptReports;
import sternwright.app.desk.protect.ProtectRequest;
import sternwright.app.desk.protect.ProtectionView;
import sternwright.app.desk.proving.AgreedPlans;
import sternwright.app.desk.proving.PlanMark;
import sternwright.app.desk.proving.PlanRun;
import sternwright.app.desk.visits.PlanView;
import sternwright.app.files.problem.BadInput;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.protection.report.ProtectionReport;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;

/** Visits and protection. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class PlansApi {
    private static final int MOST_MONTHS = 60;
    private static final double MOST_SECONDS = 5;

    private static final long LOOK_EVERY_MS = 20;

    private final Asked asked;
    private final AgreedPlans plans;
    private final KeptReports reports;

    PlansApi(Asked asked, AgreedPlans plans, KeptReports reports) {
        this.asked = asked;
        this.plans = plans;
        this.reports = reports;
    }

    /**
     * The visits of a boat as the pages propose them, with their proof as far as it came in the time given. The entity tag of a plan
     * says which one it is: sent back as If-Match, this very plan is changed or agreed.
     */
    @GetMapping("/api/boats/{id}/visits")
    ResponseEntity<Object> visits(
            @PathVariable("id") String id,
            @RequestParam(name = "months", defaultValue = "24") int months,
            @RequestParam(name = "seconds", defaultValue = "1") double seconds,
            Locale reader) {
        if (months < 1 || months > MOST_MONTHS) {
            throw BadInput.of("months", "found " + months, "1 to " + MOST_MONTHS, "");
        }
        if (!(seconds > 0 && seconds <= MOST_SECONDS)) {
            throw BadInput.of("seconds", "found " + seconds, "more than 0, at most " + MOST_SECONDS, "");
        }
        PlanRun run = plans.proposed(asked.boat(id), months, reader);
        await(run, seconds);
        BoatAnswer answer = run.answer();
        return answer instanceof BoatPlan plan
                ? ResponseEntity.ok().eTag(EntityTag.of(PlanMark.of(plan))).body(PlanView.of(plan))
                : ResponseEntity.ok(answer);
    }

    /** The plan is proved by the program itself and kept; whoever asks waits for it as long as he likes. */
    private static void await(PlanRun run, double seconds) {
        long end = System.nanoTime() + Math.round(seconds * 1e9);
        try {
            while (!run.proofDone() && System.nanoTime() < end) {
                TimeUnit.MILLISECONDS.sleep(LOOK_EVERY_MS);
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** How a boat's metals are protected, as she lies today. */
    @GetMapping("/api/boats/{id}/protection")
    ProtectionView protection(@PathVariable("id") String id) {
        KeptReports.Answer answer = reports.of(
                asked.yard().files(),
                asked.boat(id),
                ProtectRequest.on(asked.yard().today()));
        ProtectionReport report = answer.report();
        if (report == null) {
            throw new BadInput(answer.problems());
        }
        return ProtectionView.of(report, ReferenceElectrode.SILVER_CHLORIDE_SEAWATER);
    }
}
