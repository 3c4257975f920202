package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.util.Locale;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.desk.protect.ProtectBoat;
import sternwright.app.desk.protect.ProtectRequest;
import sternwright.app.desk.protect.ProtectionView;
import sternwright.app.desk.visits.AshoreSince;
import sternwright.app.desk.visits.PlanView;
import sternwright.app.desk.visits.PlanVisits;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.protection.metal.ReferenceElectrode;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.solver.SolveLimits;

/** Visits and protection. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class PlansApi {
    private static final int MOST_MONTHS = 60;
    private static final double MOST_SECONDS = 5;

    private final Asked asked;

    PlansApi(Asked asked) {
        this.asked = asked;
    }

    /** The cheapest sound visits of a boat, with their proof as far as it came in the time given. */
    @GetMapping("/api/boats/{id}/visits")
    Object visits(
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
        YardFiles files = asked.yard().files();
        BoatAnswer answer = new PlanVisits(files, AshoreSince.of(asked.shelf()), reader)
                .of(asked.boat(id), asked.yard().today(), months)
                .plan(SolveLimits.ofSeconds(System::nanoTime, seconds));
        return answer instanceof BoatPlan plan ? PlanView.of(plan) : answer;
    }

    /** How a boat's metals are protected, as she lies today. */
    @GetMapping("/api/boats/{id}/protection")
    ProtectionView protection(@PathVariable("id") String id) {
        var report = new ProtectBoat(asked.yard().files())
                .report(asked.boat(id), ProtectRequest.on(asked.yard().today()));
        return ProtectionView.of(report, ReferenceElectrode.SILVER_CHLORIDE_SEAWATER);
    }
}
