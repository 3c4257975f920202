package sternwright.app.desk.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.season.Visit;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.relief.NoSeason;
import sternwright.season.replan.Replanner;

/** Says that there is no season, which demands clash and what would help; never a silent late boat. */
final class ClashWords {
    private static final int VISITS_NAMED = 8;

    private ClashWords() {}

    static BadInput of(NoSeason none, SeasonOfYard season) {
        List<Problem> problems = new ArrayList<>();
        problems.add(new Problem(
                "season",
                0,
                "",
                "no plan keeps every demand: " + none.sentence() + " The smallest clash found, "
                        + (none.proved() ? "proved" : "by search") + ": " + visits(none, season),
                "",
                none.reliefs().stream().anyMatch(NoSeason.Relief::enough)
                        ? "Any one of the following is enough."
                        : "None of what was tried is enough alone."));
        for (NoSeason.Relief relief : none.reliefs()) {
            if (relief.enough()) {
                problems.add(new Problem("season", 0, "", "this is enough: " + words(relief, season), "", ""));
            }
        }
        return new BadInput(problems);
    }

    private static String visits(NoSeason none, SeasonOfYard season) {
        List<Integer> clash = none.clash();
        String named = clash.stream()
                .limit(VISITS_NAMED)
                .map(v -> season.problem().visits().get(v))
                .map((Visit v) -> v.boat() + " (" + v.name() + ")")
                .collect(Collectors.joining(", "));
        return clash.size() > VISITS_NAMED ? named + " and " + (clash.size() - VISITS_NAMED) + " more" : named;
    }

    private static String words(NoSeason.Relief relief, SeasonOfYard season) {
        double price = relief.points() * season.pointValue();
        return relief.sentence()
                + (price > 0
                        ? String.format(
                                Locale.ROOT,
                                ", at most %.0f %s",
                                price,
                                season.request().yard().currency().getCurrencyCode())
                        : "");
    }

    static BadInput of(Replanner.NoRoom none) {
        return new BadInput(List.of(new Problem("season", 0, "", String.valueOf(none.getMessage()), "", "")));
    }
}
