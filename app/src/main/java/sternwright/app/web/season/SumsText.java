package sternwright.app.web.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import sternwright.app.paper.Words;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.State;
import sternwright.season.dated.answer.CostSplit;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.Load;
import sternwright.season.dated.answer.MovedDate;

/** Words a season's sums: what it costs, what binds, what to mind. */
final class SumsText {
    private static final int MOST = 12;

    private final Page page;
    private final Currency currency;

    SumsText(Page page, Currency currency) {
        this.page = page;
        this.currency = currency;
    }

    BoardView.Sums of(DatedSeason season, List<String> remarks, @Nullable DatedSeason before) {
        List<DatedOperation> mind = mind(season);
        return new BoardView.Sums(
                mind.stream().limit(MOST).map(this::mind).toList(),
                Math.max(0, mind.size() - MOST),
                season.moved().stream().map(this::moved).toList(),
                binds(season),
                costs(season.cost(), before == null ? null : before.cost()),
                money(season.cost().total()),
                bound(season.cost().total(), season.bound(), season.gap()),
                remarks.stream().map(r -> Words.full(page.figures().dated(r))).toList());
    }

    String money(double amount) {
        return page.figures().about(amount, currency);
    }

    String bound(double cost, double bound, double gap) {
        return cost <= 0
                ? page.say("season.bound.none")
                : Math.round(100 * gap) == 0
                        ? page.say("season.bound.best")
                        : page.say(
                                "season.bound",
                                money(bound),
                                money(Math.max(0, cost - bound)),
                                page.figures().quantity(Math.round(100 * gap), "%"));
    }

    /** The worst operation of each boat that is not as wished, the worst boat first. */
    private static List<DatedOperation> mind(DatedSeason season) {
        Set<String> seen = new HashSet<>();
        return season
                .operations(o -> o.state() == DatedOperation.State.UNSAFE || o.state() == DatedOperation.State.LATE)
                .stream()
                .sorted(Comparator.comparing(DatedOperation::state)
                        .thenComparing(DatedOperation::daysLate)
                        .reversed())
                .filter(o -> seen.add(o.meaning().boatId()))
                .toList();
    }

    private BoardView.Mind mind(DatedOperation o) {
        return new BoardView.Mind(
                o.meaning().boatId(),
                o.meaning().boatName(),
                Words.sentence(o.meaning().operation()),
                page.figures().shortDate(o.from().toLocalDate()),
                state(o.state(), o.daysLate()),
                page.figures().dated(o.reason()));
    }

    /** How an operation stands to its date; {@code days} working days after it, 0 to leave them unsaid. */
    State state(DatedOperation.State state, int days) {
        String key = "season.state."
                + state.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        String word = days > 0 ? page.say(key + ".days", days) : page.say(key);
        return switch (state) {
            case IN_TIME -> new State(word, State.Mark.TICK, State.Tone.SOFT);
            case PROMISED -> new State(word, State.Mark.TICK, State.Tone.PLAIN);
            case LATE, MOVED -> new State(word, State.Mark.TRIANGLE, State.Tone.WATCH);
            case UNSAFE -> new State(word, State.Mark.TRIANGLE, State.Tone.ACT);
        };
    }

    private BoardView.Moved moved(MovedDate m) {
        var is = m.is();
        return new BoardView.Moved(
                m.name().boatId(),
                m.boatName(),
                page.say(
                        "season.what",
                        page.figures().dated(m.name().visit()),
                        m.name().operation()),
                page.figures().shortDate(m.was()),
                is == null ? page.say("season.gone") : page.figures().shortDate(is),
                money(m.price()),
                page.figures().dated(m.reason()));
    }

    /** Hoists, places and overtime that are full, and people; one line for each stretch of weeks. */
    private List<String> binds(DatedSeason season) {
        return season.binds().stream()
                .sorted(Comparator.comparing(b -> b.kind() == Load.Kind.PERSON))
                .map(b -> page.say(
                        "season.binds.one",
                        Words.sentence(b.name()),
                        page.figures().dates(b.from(), b.to())))
                .toList();
    }

    private List<BoardView.Cost> costs(CostSplit split, @Nullable CostSplit before) {
        List<BoardView.Cost> costs = new ArrayList<>();
        add(costs, "frost", split, before, CostSplit::frost);
        add(costs, "promises", split, before, CostSplit::promises);
        add(costs, "late", split, before, CostSplit::late);
        add(costs, "early", split, before, CostSplit::early);
        add(costs, "overtime", split, before, CostSplit::overtime);
        add(costs, "uneven", split, before, CostSplit::uneven);
        return costs;
    }

    private void add(
            List<BoardView.Cost> costs,
            String key,
            CostSplit split,
            @Nullable CostSplit before,
            ToDoubleFunction<CostSplit> part) {
        costs.add(new BoardView.Cost(
                page.say("season.cost." + key),
                before == null ? "" : money(part.applyAsDouble(before)),
                money(part.applyAsDouble(split))));
    }
}
