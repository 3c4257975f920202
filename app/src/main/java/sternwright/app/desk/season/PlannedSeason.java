package sternwright.app.desk.season;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.Problem;
import sternwright.season.SeasonPlan;
import sternwright.season.dated.Published;
import sternwright.season.dated.PublishedWork;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.relief.WhyUnsafe;
import sternwright.season.relief.WorthOfOneMore;
import sternwright.season.search.Budget;

/**
 * A season planned and judged.
 *
 * @param yard the yard's files
 * @param season the season that was planned
 * @param plan the plan in the lean form
 * @param dated the plan in the yard's words
 * @param published the plan the yard worked by until now, empty if there is none
 * @param remarks what a person should know
 * @param firstCost cost of the first plan, in the yard's currency
 * @param works which works are in which visit, to be written down with the plan
 */
public record PlannedSeason(
        YardFiles yard,
        SeasonOfYard season,
        SeasonPlan plan,
        DatedSeason dated,
        List<Published> published,
        List<String> remarks,
        double firstCost,
        List<PublishedWork> works) {
    /** Copies the lists. */
    public PlannedSeason {
        published = List.copyOf(published);
        remarks = List.copyOf(remarks);
        works = List.copyOf(works);
    }

    /**
     * The same for whoever keeps it, with little more than the plan in memory.
     *
     * @return an equal season whose yard has its histories packed
     */
    public PlannedSeason packed() {
        return new PlannedSeason(yard.packed(), season, plan, dated, published, remarks, firstCost, works);
    }

    /**
     * What one more hoist, place or person would save, in the yard's currency.
     *
     * @param what in words
     * @param saves the plan with it costs so much less; a longer search may find more
     */
    public record OneMoreOf(String what, double saves) {}

    /**
     * What one more of everything would save, the most first.
     *
     * @param secondsEach how long to search for each
     * @param nanoClock a clock of nanoseconds
     */
    public List<OneMoreOf> oneMore(double secondsEach, LongSupplier nanoClock) {
        return WorthOfOneMore.of(season.problem(), plan, () -> Budget.seconds(secondsEach, nanoClock), 1).stream()
                .map(o -> new OneMoreOf(o.what(), o.saves() * season.pointValue()))
                .toList();
    }

    /**
     * Where boats are not safe against frost in time: which of them clash, and what would be enough.
     *
     * @param seed seed of all random draws
     * @param proofSeconds time for each proof
     * @return the clash; empty if every boat is safe, or a longer search may still make it so
     */
    public Optional<Clash> whyUnsafe(long seed, double proofSeconds) {
        return plan.cost().frost() == 0
                ? Optional.empty()
                : WhyUnsafe.of(season.problem(), seed, proofSeconds).map(none -> ClashWords.of(none, season));
    }

    /** The same as problems to be listed; empty if there is nothing to say. */
    public List<Problem> unsafe(long seed, double proofSeconds) {
        return whyUnsafe(seed, proofSeconds).map(NoSuchSeason::told).orElse(List.of());
    }

    /** The day on which the visits of this plan were planned. */
    public Optional<java.time.LocalDate> visitsOf() {
        return published.stream().map(Published::plannedOn).findFirst();
    }
}
