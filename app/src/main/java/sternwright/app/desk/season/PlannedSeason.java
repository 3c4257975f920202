package sternwright.app.desk.season;

import java.util.List;
import java.util.Optional;
import sternwright.app.files.YardFiles;
import sternwright.season.dated.Published;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.make.SeasonOfYard;

/**
 * A season planned and judged.
 *
 * @param yard the yard's files
 * @param season the season that was planned
 * @param dated the plan in the yard's words
 * @param published the plan the yard worked by until now, empty if there is none
 * @param remarks what a person should know
 * @param firstCost cost of the first plan, in the yard's currency
 */
public record PlannedSeason(
        YardFiles yard,
        SeasonOfYard season,
        DatedSeason dated,
        List<Published> published,
        List<String> remarks,
        double firstCost) {
    /** Copies the lists. */
    public PlannedSeason {
        published = List.copyOf(published);
        remarks = List.copyOf(remarks);
    }

    /** The day on which the visits of this plan were planned. */
    public Optional<java.time.LocalDate> visitsOf() {
        return published.stream().map(Published::plannedOn).findFirst();
    }
}
