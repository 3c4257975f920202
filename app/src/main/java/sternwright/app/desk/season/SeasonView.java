package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.season.dated.answer.Binding;
import sternwright.season.dated.answer.CostSplit;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.Load;
import sternwright.season.dated.answer.MovedDate;

/**
 * A planned season for other programs.
 *
 * @param from first day
 * @param to last day
 * @param currency currency of all costs
 * @param cost what it costs
 * @param bound what no plan can cost less than
 * @param gap part of the cost not proved necessary, 0 to 1
 * @param how how plan and bound were found
 * @param binds what is full for how long
 * @param moved promised dates that are others now
 * @param remarks what a person should know
 * @param operations every operation in order of time
 * @param weeks first day of each week
 * @param loads how full everything is, by week
 * @param unsafe where boats are not safe against frost in time: which of them clash and what would be enough; null if all are safe, if a
 *     longer search may make them so, or if nobody has looked
 */
public record SeasonView(
        LocalDate from,
        LocalDate to,
        String currency,
        CostSplit cost,
        double bound,
        double gap,
        String how,
        List<Binding> binds,
        List<MovedDate> moved,
        List<String> remarks,
        List<SeasonLine> operations,
        List<LocalDate> weeks,
        List<Load> loads,
        @Nullable Clash unsafe) {
    /** Copies the lists. */
    public SeasonView {
        binds = List.copyOf(binds);
        moved = List.copyOf(moved);
        remarks = List.copyOf(remarks);
        operations = List.copyOf(operations);
        weeks = List.copyOf(weeks);
        loads = List.copyOf(loads);
    }

    /** The view of a planned season. */
    public static SeasonView of(PlannedSeason planned) {
        return of(planned.dated(), planned.yard().yard().currency().getCurrencyCode(), planned.remarks());
    }

    /**
     * The view of a season in the yard's words.
     *
     * @param d the season
     * @param currency currency of all costs
     * @param remarks what a person should know
     * @return the view
     */
    public static SeasonView of(DatedSeason d, String currency, List<String> remarks) {
        return new SeasonView(
                d.from(),
                d.to(),
                currency,
                d.cost(),
                d.bound(),
                d.gap(),
                d.how(),
                d.binds(),
                d.moved(),
                remarks,
                SeasonLine.all(d),
                d.weeks(),
                d.loads(),
                null);
    }

    /** The same view with some of its operations. */
    public SeasonView with(List<SeasonLine> some) {
        return new SeasonView(
                from, to, currency, cost, bound, gap, how, binds, moved, remarks, some, weeks, loads, unsafe);
    }

    /** The same view with the reason why boats are not safe. */
    public SeasonView unsafe(@Nullable Clash why) {
        return new SeasonView(
                from, to, currency, cost, bound, gap, how, binds, moved, remarks, operations, weeks, loads, why);
    }
}
