package sternwright.app.desk.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.paper.Figures;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.relief.NoSeason;

/** Says that there is no season, which demands clash and what would help; never a silent late boat. */
final class ClashWords {
    private ClashWords() {}

    static BadInput of(NoSeason none, SeasonOfYard season) {
        List<Problem> problems = new ArrayList<>();
        problems.add(said("no plan keeps every demand: " + clash(none, season), advice(none, season)));
        enough(none).forEach(relief -> problems.add(said("this is enough: " + words(relief, season), "")));
        return new BadInput(problems);
    }

    /** The same for boats that cannot all be safe against frost in time, as sentences. */
    static List<String> unsafe(NoSeason none, SeasonOfYard season) {
        List<String> lines = new ArrayList<>();
        lines.add("Safe in time: " + clash(none, season) + ". " + advice(none, season));
        enough(none).forEach(relief -> lines.add("This is enough: " + words(relief, season) + "."));
        return lines;
    }

    private static List<NoSeason.Relief> enough(NoSeason none) {
        return none.reliefs().stream().filter(NoSeason.Relief::enough).toList();
    }

    private static String clash(NoSeason none, SeasonOfYard season) {
        return none.sentence() + ", " + season.time().date(none.fromQ()) + " to "
                + season.time().date(none.endQ() - 1)
                + (none.proved()
                        ? none.clash().size() == 1 ? ". Proved" : ". Proved: without any one of them the others can"
                        : ". Found by search, not proved");
    }

    private static String advice(NoSeason none, SeasonOfYard season) {
        int enough = enough(none).size();
        return enough == 0
                ? "None of what was tried is enough alone: " + tried(none, season) + "."
                : enough == 1 ? "The following is enough." : "Any one of the following is enough.";
    }

    private static Problem said(String found, String advice) {
        return new Problem("season", 0, "", found, "", advice);
    }

    private static String tried(NoSeason none, SeasonOfYard season) {
        return none.reliefs().stream().map(r -> words(r, season)).collect(Collectors.joining("; "));
    }

    private static String words(NoSeason.Relief relief, SeasonOfYard season) {
        String weeks = relief.firstWeek() < 0
                ? ""
                : " from " + season.time().weekFrom(relief.firstWeek()) + " to "
                        + season.time().weekTo(relief.lastWeek());
        double price = relief.points() * season.pointValue();
        return relief.sentence()
                + weeks
                + (price > 0
                        ? ", at most "
                                + Figures.of(Locale.getDefault())
                                        .about(price, season.request().yard().currency())
                        : "");
    }
}
