package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import sternwright.app.paper.Figures;
import sternwright.season.SeasonProblem;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.relief.NoSeason;

/** Says that there is no season, which demands clash and what would help; never a silent late boat. */
final class ClashWords {
    private final NoSeason none;
    private final SeasonOfYard season;

    private ClashWords(NoSeason none, SeasonOfYard season) {
        this.none = none;
        this.season = season;
    }

    static Clash of(NoSeason none, SeasonOfYard season) {
        return new ClashWords(none, season).clash();
    }

    private Clash clash() {
        LocalDate from = season.time().date(none.fromQ());
        LocalDate until = season.time().date(none.endQ() - 1);
        List<Clash.Relief> reliefs = none.reliefs().stream().map(this::relief).toList();
        String proof = !none.proved()
                ? ". Found by search, not proved"
                : none.clash().size() == 1 ? ". Proved" : ". Proved: without any one of them the others can";
        return new Clash(
                none.sentence() + ", " + from + " to " + until + proof,
                none.clash().stream()
                        .map(v -> season.problem().visits().get(v).boat())
                        .distinct()
                        .toList(),
                from,
                until,
                none.proved(),
                advice(reliefs),
                reliefs);
    }

    private static String advice(List<Clash.Relief> reliefs) {
        long enough = reliefs.stream().filter(Clash.Relief::enough).count();
        return enough == 0
                ? "None of what was tried is enough alone: "
                        + reliefs.stream().map(Clash.Relief::words).collect(Collectors.joining("; ")) + "."
                : enough == 1 ? "The following is enough." : "Any one of the following is enough.";
    }

    private Clash.Relief relief(NoSeason.Relief relief) {
        boolean inWeeks = relief.firstWeek() >= 0;
        LocalDate from = inWeeks ? season.time().weekFrom(relief.firstWeek()) : null;
        LocalDate until = inWeeks ? season.time().weekTo(relief.lastWeek()) : null;
        Double costs = relief.points() > 0 ? (Double) (relief.points() * season.pointValue()) : null;
        double works = works(relief);
        Double lost = works > 0 ? (Double) works : null;
        String weeks = inWeeks ? " from " + from + " to " + until : "";
        return new Clash.Relief(
                relief.sentence(),
                relief.enough(),
                from,
                until,
                costs,
                lost,
                relief.sentence() + weeks + (relief.enough() ? price(costs, lost) : ""));
    }

    private String price(@Nullable Double costs, @Nullable Double lost) {
        if (costs != null) {
            return ", at most " + money(costs);
        }
        return lost != null
                ? ", work of " + money(lost) + " without tax is then not done"
                : " (the yard's files have no price for it)";
    }

    private String money(double amount) {
        return Figures.of(Locale.getDefault())
                .about(amount, season.request().yard().currency());
    }

    /** The works that are not done where boats are not taken. */
    private double works(NoSeason.Relief relief) {
        SeasonProblem problem = season.problem();
        Set<Integer> away = new HashSet<>(relief.visits());
        return IntStream.range(0, season.meanings().size())
                .filter(i -> away.contains(
                        problem.halves().get(problem.operations().get(i).half()).visit()))
                .boxed()
                .flatMap(i -> season.meanings().get(i).works().stream())
                .mapToDouble(w -> w.price().toDouble())
                .sum();
    }
}
