package sternwright.job.estimate;

import java.time.LocalDate;
import java.util.List;
import sternwright.job.CardFacts;
import sternwright.job.CardWork;
import sternwright.job.JobCard;
import sternwright.job.JobCards;
import sternwright.visit.planned.PlannedVisit;

/** Writes estimates from planned visits. */
public final class Estimates {
    private Estimates() {}

    /**
     * The estimate of a visit.
     *
     * @param visit the visit as planned
     * @param facts boat, berth, yard and the day of writing
     * @param validDays days for which the prices hold, at least 1; never past the last day of a visit still to come
     * @return the estimate, every line open; its lines bear the numbers they have on the job card
     * @throws IllegalArgumentException if the visit belongs to another boat or the days are below 1
     */
    public static Estimate of(PlannedVisit visit, CardFacts facts, int validDays) {
        if (validDays < 1) {
            throw new IllegalArgumentException("an estimate holds for at least 1 day, not " + validDays);
        }
        JobCard card = JobCards.of(visit, facts);
        List<EstimateLine> lines = card.works().stream().map(Estimates::line).toList();
        LocalDate until = facts.issuedOn().plusDays(validDays);
        boolean visitFirst = visit.to().isAfter(facts.issuedOn()) && visit.to().isBefore(until);
        return new Estimate(
                card.number(),
                facts.yard().name(),
                facts.yard().invented(),
                facts.issuedOn(),
                visitFirst ? visit.to() : until,
                facts.boat(),
                facts.berth(),
                visit.from(),
                visit.to(),
                visit.place(),
                visit.lifts(),
                lines,
                visit.prices(),
                facts.yard().taxName(),
                facts.yard().taxPercent(),
                visit.savedByBundling(),
                visit.net());
    }

    private static EstimateLine line(CardWork work) {
        return EstimateLine.of(work.number(), work.planned());
    }
}
