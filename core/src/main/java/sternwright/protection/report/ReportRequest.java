package sternwright.protection.report;

import java.time.LocalDate;
import java.util.List;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.history.BoatHistory;
import sternwright.protection.anode.BoatYear;
import sternwright.protection.diagnosis.Observation;
import sternwright.protection.register.CircuitCondition;

/**
 * What a report is made from.
 *
 * @param boat the boat
 * @param berth its berth
 * @param condition month, shore lead, paint, the yard's own figures
 * @param year running hours and months afloat
 * @param history what was done and weighed
 * @param observations readings to diagnose from; may be empty
 * @param wantedYears how long an anode should last to half gone, years
 * @param today the day
 */
public record ReportRequest(
        Boat boat,
        Berth berth,
        CircuitCondition condition,
        BoatYear year,
        BoatHistory history,
        List<Observation> observations,
        double wantedYears,
        LocalDate today) {
    /** Copies the list. */
    public ReportRequest {
        observations = List.copyOf(observations);
    }
}
